package dev.ringout.support;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;

/** A line between a client and a meter that does to its packets what lines do, and worse. */
public final class UnrulyProxy implements AutoCloseable {
  /** What it does. */
  public enum Habit {
    /** Nothing. */
    HONEST,
    /** Each packet comes later, some after the client has given up. */
    DELAYS,
    /** The connection breaks in the middle of a packet. */
    CUTS,
    /** Packets come together. */
    MERGES,
    /** Packets come in pieces of a byte or two. */
    SPLITS,
    /** Packets come twice, at once or much later. */
    REPEATS,
    /** Some bytes of a packet's end never come. */
    CLIPS,
    /** All of these. */
    ALL
  }

  private final ServerSocket server;
  private final int port;
  private final Habit habit;
  private final Random random;
  private final int lateMillis;
  private final List<Socket> sockets = new CopyOnWriteArrayList<>();
  private volatile byte[] old = {};

  /**
   * Listens on a free port, and leads to another of this machine.
   *
   * @param lateMillis how late a late packet is
   */
  public UnrulyProxy(int port, Habit habit, long seed, int lateMillis) throws IOException {
    this.port = port;
    this.habit = habit;
    this.random = new Random(seed);
    this.lateMillis = lateMillis;
    this.server = new ServerSocket(0, 8, InetAddress.getLoopbackAddress());
    start(this::accept);
  }

  /** Its port. */
  public int port() {
    return server.getLocalPort();
  }

  private static void start(Runnable run) {
    Thread thread = new Thread(run, "unruly-proxy");
    thread.setDaemon(true);
    thread.start();
  }

  private void accept() {
    while (!server.isClosed()) {
      try {
        Socket client = server.accept();
        Socket meter = new Socket(InetAddress.getLoopbackAddress(), port);
        client.setTcpNoDelay(true);
        meter.setTcpNoDelay(true);
        sockets.add(client);
        sockets.add(meter);
        start(() -> pump(client, meter, Habit.HONEST));
        start(() -> pump(meter, client, habit));
      } catch (IOException e) {
        // Closed, or the meter is away: the client sees that its connection ends.
      }
    }
  }

  private void pump(Socket from, Socket to, Habit how) {
    byte[] buffer = new byte[4096];
    try (from;
        to) {
      InputStream in = from.getInputStream();
      OutputStream out = to.getOutputStream();
      for (int length = in.read(buffer); length >= 0; length = in.read(buffer)) {
        byte[] packet = Arrays.copyOf(buffer, length);
        if (!pass(packet, in, out, how)) {
          return;
        }
      }
    } catch (IOException e) {
      // One side left.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private boolean happens(int oneOf) {
    synchronized (random) {
      return random.nextInt(oneOf) == 0;
    }
  }

  private int any(int below) {
    synchronized (random) {
      return random.nextInt(below);
    }
  }

  private boolean pass(byte[] packet, InputStream in, OutputStream out, Habit how)
      throws IOException, InterruptedException {
    Habit[] each = {
      Habit.DELAYS, Habit.CUTS, Habit.MERGES, Habit.SPLITS, Habit.REPEATS, Habit.CLIPS
    };
    switch (how == Habit.ALL ? each[any(each.length)] : how) {
      case DELAYS -> {
        Thread.sleep(happens(12) ? lateMillis + any(lateMillis) : any(20));
        out.write(packet);
      }
      case CUTS -> {
        if (happens(25)) {
          out.write(packet, 0, any(packet.length));
          return false;
        }
        out.write(packet);
      }
      case MERGES -> out.write(merged(packet, in));
      case SPLITS -> split(packet, out);
      case REPEATS -> repeat(packet, out);
      case CLIPS -> out.write(packet, 0, happens(15) ? any(packet.length) : packet.length);
      default -> out.write(packet);
    }
    old = packet;
    return true;
  }

  private static byte[] merged(byte[] packet, InputStream in)
      throws IOException, InterruptedException {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.write(packet);
    Thread.sleep(15);
    while (in.available() > 0) {
      all.write(in.readNBytes(in.available()));
    }
    return all.toByteArray();
  }

  private void split(byte[] packet, OutputStream out) throws IOException, InterruptedException {
    for (int at = 0; at < packet.length; ) {
      int length = Math.min(packet.length - at, 1 + any(2));
      out.write(packet, at, length);
      at += length;
      Thread.sleep(any(2));
    }
  }

  private void repeat(byte[] packet, OutputStream out) throws IOException, InterruptedException {
    byte[] before = old;
    if (happens(10)) {
      // What was said before comes again first.
      out.write(before);
    }
    out.write(packet);
    if (happens(10)) {
      Thread.sleep(any(30));
      out.write(packet);
    }
  }

  @Override
  public void close() throws IOException {
    server.close();
    for (Socket socket : sockets) {
      socket.close();
    }
  }
}
