package dev.ringout.support;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** A meter on a socket of this machine that does what a test says, one client after the other. */
public final class ScriptedMeter implements AutoCloseable {
  private final ServerSocket server;
  private final Script script;
  private final List<String> received = new CopyOnWriteArrayList<>();
  private final List<Socket> clients = new CopyOnWriteArrayList<>();

  /** What it does with a line. */
  public interface Script {
    /**
     * Answers.
     *
     * @param connection the number of the client, from 1
     * @param line as it came, without its end
     * @param out to the client
     */
    void take(int connection, String line, OutputStream out)
        throws IOException, InterruptedException;
  }

  /** Listens on a free port. */
  public ScriptedMeter(Script script) throws IOException {
    this.script = script;
    this.server = new ServerSocket(0, 8, InetAddress.getLoopbackAddress());
    Thread thread = new Thread(this::accept, "scripted-meter");
    thread.setDaemon(true);
    thread.start();
  }

  /** A meter that answers as SCPI has it, and to READ? so. */
  public static ScriptedMeter sound(String answer) throws IOException {
    return new ScriptedMeter((connection, line, out) -> sound(line, answer, out));
  }

  private static int enabled(String line) {
    return Integer.parseInt(line.substring(line.indexOf(' ') + 1).strip());
  }

  /** Answers as a sound meter does, whose register holds what was last written by anyone. */
  public static void sound(String line, String answer, OutputStream out) throws IOException {
    switch (line) {
      case "*IDN?" -> say(out, "Works,Meter,17,1.0\n");
      case "SYST:ERR?" -> say(out, "+0,\"No error\"\n");
      case "FUNC?" -> say(out, "\"RES\"\n");
      case "RES:RANG:AUTO?" -> say(out, "1\n");
      case "READ?" -> say(out, answer + "\n");
      default -> {
        // A command has no answer.
      }
    }
  }

  /** Sends. */
  public static void say(OutputStream out, String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.ISO_8859_1));
    out.flush();
  }

  private void accept() {
    int number = 0;
    while (!server.isClosed()) {
      try {
        Socket client = server.accept();
        client.setTcpNoDelay(true);
        clients.add(client);
        int connection = ++number;
        Thread thread = new Thread(() -> serve(connection, client), "scripted-client");
        thread.setDaemon(true);
        thread.start();
      } catch (IOException e) {
        return;
      }
    }
  }

  private void serve(int connection, Socket client) {
    int enable = 0;
    try (client;
        BufferedReader in =
            new BufferedReader(
                new InputStreamReader(client.getInputStream(), StandardCharsets.ISO_8859_1))) {
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        received.add(line);
        if (line.startsWith("*ESE ")) {
          enable = enabled(line);
        } else if (line.equals("*ESE?")) {
          say(client.getOutputStream(), enable + "\n");
        } else {
          script.take(connection, line, client.getOutputStream());
        }
      }
    } catch (IOException e) {
      // The client left.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Its port. */
  public int port() {
    return server.getLocalPort();
  }

  /** As an address. */
  public String address() {
    return "127.0.0.1:" + port();
  }

  /** Every line that came. */
  public List<String> received() {
    return List.copyOf(received);
  }

  /** Hangs up on everybody. */
  public void hangUp() throws IOException {
    for (Socket client : clients) {
      client.close();
    }
    clients.clear();
  }

  @Override
  public void close() throws IOException {
    server.close();
    hangUp();
  }
}
