package dev.ringout.support;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The network between a bench and its server, which is cut and mended. */
public final class CutLine implements AutoCloseable {
  private static final Pattern PORT = Pattern.compile(":(\\d+)/");
  private static final int ARRIVES_MILLIS = 300;

  private final ServerSocket here;
  private final int port;
  private final List<Socket> sockets = new CopyOnWriteArrayList<>();
  private volatile boolean cut;
  private volatile boolean swallows;
  private volatile String losesCommitOf = "";

  private CutLine(int port) throws IOException {
    this.port = port;
    this.here = new ServerSocket(0, 200, InetAddress.getLoopbackAddress());
    start(this::accept);
  }

  /** To the server of an address, on this machine. */
  public static CutLine to(String address) throws IOException {
    Matcher port = PORT.matcher(address);
    if (!port.find()) {
      throw new IllegalArgumentException(address);
    }
    return new CutLine(Integer.parseInt(port.group(1)));
  }

  /** The same address by way of this line. */
  public String address(String direct) {
    return PORT.matcher(direct).replaceFirst(":" + here.getLocalPort() + "/");
  }

  /** Nothing goes through any more. */
  public void cut() {
    cut = true;
    sockets.forEach(CutLine::close);
    sockets.clear();
  }

  /** Connections stand, and nothing comes through them: no reset, no end, silence. */
  public void swallow() {
    swallows = true;
  }

  /** Who asks anew comes through; a connection in which something was swallowed stays silent. */
  public void mend() {
    cut = false;
    swallows = false;
  }

  /** The commit of what holds that text arrives at the server; then the line is cut. */
  public void cutAtCommitOf(String text) {
    losesCommitOf = text;
  }

  /** Whether nothing goes through. */
  public boolean isCut() {
    return cut;
  }

  private void accept() {
    while (!here.isClosed()) {
      try {
        Socket client = here.accept();
        if (cut) {
          close(client);
        } else {
          connect(client);
        }
      } catch (IOException e) {
        // It is closed, or the server is not there.
      }
    }
  }

  private void connect(Socket client) throws IOException {
    try {
      Socket server = new Socket(InetAddress.getLoopbackAddress(), port);
      server.setTcpNoDelay(true);
      client.setTcpNoDelay(true);
      sockets.add(client);
      sockets.add(server);
      start(() -> pump(client, server, true));
      start(() -> pump(server, client, false));
    } catch (IOException e) {
      close(client);
      throw e;
    }
  }

  private void pump(Socket from, Socket to, boolean toServer) {
    byte[] buffer = new byte[65536];
    int behind = 0;
    boolean silent = false;
    try {
      InputStream in = from.getInputStream();
      OutputStream out = to.getOutputStream();
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        String text = new String(buffer, 0, n, StandardCharsets.ISO_8859_1);
        // Behind what is kept it is counted, and then comes its commit, whose own words the driver
        // says once only.
        boolean last = behind == 1;
        boolean holds = toServer && !losesCommitOf.isEmpty() && text.contains(losesCommitOf);
        behind = holds ? 2 : Math.max(0, behind - 1);
        cut |= last;
        silent |= swallows;
        if (!silent && (toServer || !cut)) {
          out.write(buffer, 0, n);
          out.flush();
        }
        if (last) {
          losesCommitOf = "";
          Thread.sleep(ARRIVES_MILLIS);
          cut();
        }
      }
    } catch (IOException e) {
      // One side has closed: so does the other.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      close(from);
      close(to);
      sockets.remove(from);
      sockets.remove(to);
    }
  }

  private static void close(Socket socket) {
    try {
      socket.close();
    } catch (IOException e) {
      // It is closed already.
    }
  }

  private static void start(Runnable what) {
    Thread thread = new Thread(what, "line");
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public void close() throws IOException {
    here.close();
    cut();
  }
}
