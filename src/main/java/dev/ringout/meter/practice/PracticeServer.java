package dev.ringout.meter.practice;

import dev.ringout.meter.link.HislipMessage;
import dev.ringout.meter.link.HislipType;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A practice meter on this machine's own network: plain commands on one port, HiSLIP on another.
 */
public final class PracticeServer implements AutoCloseable {
  private static final int MOST_LINE = 4096;
  private static final int MOST_CLIENTS = 16;
  private static final int VERSION = 0x0100_0000;
  private static final int VENDOR = 0x7878;

  private final PracticeInstrument instrument;
  private final ServerSocket raw;
  private final ServerSocket hislip;
  private final Set<Socket> clients = ConcurrentHashMap.newKeySet();
  private final Map<Integer, Socket> sessions = new ConcurrentHashMap<>();
  private final AtomicInteger lastSession = new AtomicInteger();

  /**
   * Serves.
   *
   * @param rawPort of plain commands; 0 for any that is free
   * @param hislipPort of HiSLIP; 0 for any that is free
   */
  public PracticeServer(PracticeInstrument instrument, int rawPort, int hislipPort)
      throws IOException {
    this.instrument = instrument;
    this.raw = listen(rawPort);
    try {
      this.hislip = listen(hislipPort);
    } catch (IOException e) {
      raw.close();
      throw e;
    }
    start("practice-raw", () -> accept(raw, this::rawClient));
    start("practice-hislip", () -> accept(hislip, this::hislipClient));
  }

  private static ServerSocket listen(int port) throws IOException {
    ServerSocket server = new ServerSocket();
    server.setReuseAddress(true);
    server.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
    return server;
  }

  /** The port of plain commands. */
  public int rawPort() {
    return raw.getLocalPort();
  }

  /** The port of HiSLIP. */
  public int hislipPort() {
    return hislip.getLocalPort();
  }

  /** Talks with one client until it leaves. */
  private interface Client {
    void talk(Socket socket) throws IOException, InterruptedException;
  }

  private static void start(String name, Runnable run) {
    Thread thread = new Thread(run, name);
    thread.setDaemon(true);
    thread.start();
  }

  private void accept(ServerSocket server, Client client) {
    while (!server.isClosed()) {
      try {
        Socket socket = server.accept();
        socket.setTcpNoDelay(true);
        if (clients.size() >= MOST_CLIENTS) {
          socket.close();
          continue;
        }
        clients.add(socket);
        start("practice-client", () -> serve(socket, client));
      } catch (IOException e) {
        // Closed, or a client that left before it was taken.
      }
    }
  }

  private void serve(Socket socket, Client client) {
    try (socket) {
      client.talk(socket);
    } catch (IOException e) {
      // It left.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      clients.remove(socket);
    }
  }

  private void rawClient(Socket socket) throws IOException, InterruptedException {
    OutputStream out = socket.getOutputStream();
    while (true) {
      Optional<String> line = line(socket.getInputStream());
      if (line.isEmpty()) {
        return;
      }
      Optional<String> answer = instrument.execute(line.get());
      if (answer.isPresent()) {
        out.write((answer.get() + "\n").getBytes(StandardCharsets.US_ASCII));
      }
    }
  }

  private static Optional<String> line(InputStream in) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int one = in.read(); one >= 0; one = in.read()) {
      if (one == '\n') {
        return Optional.of(line.toString(StandardCharsets.US_ASCII));
      }
      if (line.size() == MOST_LINE) {
        return Optional.empty();
      }
      line.write(one);
    }
    return Optional.empty();
  }

  private void hislipClient(Socket socket) throws IOException, InterruptedException {
    DataInputStream in = new DataInputStream(socket.getInputStream());
    HislipMessage first = message(in);
    if (first.type() == HislipType.INITIALIZE) {
      int session = lastSession.incrementAndGet() & 0xffff;
      sessions.put(session, socket);
      send(socket, HislipMessage.of(HislipType.INITIALIZE_RESPONSE, 0, VERSION | session));
      try {
        synchronous(socket, in);
      } finally {
        sessions.remove(session);
      }
    } else if (first.type() == HislipType.ASYNC_INITIALIZE
        && sessions.containsKey(first.parameter())) {
      send(socket, HislipMessage.of(HislipType.ASYNC_INITIALIZE_RESPONSE, 0, VENDOR));
      asynchronous(socket, in);
    } else {
      // IVI-6.1: invalid initialization sequence.
      send(socket, HislipMessage.of(HislipType.FATAL_ERROR, 3, 0));
    }
  }

  private void synchronous(Socket socket, DataInputStream in)
      throws IOException, InterruptedException {
    StringBuilder command = new StringBuilder();
    while (true) {
      HislipMessage message = message(in);
      switch (message.type()) {
        case DATA -> command.append(message.payload());
        case DATA_END -> {
          command.append(message.payload());
          answer(socket, command.toString(), message.parameter());
          command.setLength(0);
        }
        case DEVICE_CLEAR_COMPLETE -> {
          command.setLength(0);
          send(socket, HislipMessage.of(HislipType.DEVICE_CLEAR_ACKNOWLEDGE, 0, 0));
        }
        case TRIGGER -> {
          // There is nothing that waits for it.
        }
        // IVI-6.1: unrecognized message type.
        default -> send(socket, HislipMessage.of(HislipType.ERROR, 1, 0));
      }
    }
  }

  private void answer(Socket socket, String commands, int id)
      throws IOException, InterruptedException {
    for (String line : commands.split("\n", -1)) {
      Optional<String> answer = instrument.execute(line);
      if (answer.isPresent()) {
        send(socket, new HislipMessage(HislipType.DATA_END, 0, id, answer.get() + "\n"));
      }
    }
  }

  private static void asynchronous(Socket socket, DataInputStream in) throws IOException {
    while (true) {
      HislipMessage message = message(in);
      HislipMessage answer =
          switch (message.type()) {
            case ASYNC_MAXIMUM_MESSAGE_SIZE ->
                new HislipMessage(
                    HislipType.ASYNC_MAXIMUM_MESSAGE_SIZE_RESPONSE,
                    0,
                    0,
                    HislipMessage.size(MOST_LINE));
            case ASYNC_DEVICE_CLEAR ->
                HislipMessage.of(HislipType.ASYNC_DEVICE_CLEAR_ACKNOWLEDGE, 0, 0);
            case ASYNC_STATUS_QUERY -> HislipMessage.of(HislipType.ASYNC_STATUS_RESPONSE, 0, 0);
            // Each may lock: nobody else is waited for.
            case ASYNC_LOCK -> HislipMessage.of(HislipType.ASYNC_LOCK_RESPONSE, 1, 0);
            case ASYNC_LOCK_INFO -> HislipMessage.of(HislipType.ASYNC_LOCK_INFO_RESPONSE, 0, 0);
            case ASYNC_REMOTE_LOCAL_CONTROL ->
                HislipMessage.of(HislipType.ASYNC_REMOTE_LOCAL_RESPONSE, 0, 0);
            default -> HislipMessage.of(HislipType.ERROR, 1, 0);
          };
      send(socket, answer);
    }
  }

  private static HislipMessage message(DataInputStream in) throws IOException {
    byte[] header = new byte[HislipMessage.HEADER];
    in.readFully(header);
    long length = HislipMessage.payloadLength(header);
    if (!HislipMessage.isHeader(header) || length < 0 || length > MOST_LINE) {
      throw new IOException("no message");
    }
    byte[] payload = new byte[(int) length];
    in.readFully(payload);
    return HislipMessage.of(header, payload);
  }

  private static void send(Socket socket, HislipMessage message) throws IOException {
    socket.getOutputStream().write(message.bytes());
  }

  @Override
  public void close() throws IOException {
    raw.close();
    hislip.close();
    for (Socket client : clients) {
      client.close();
    }
  }
}
