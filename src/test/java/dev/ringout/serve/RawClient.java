package dev.ringout.serve;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** A client that sends what no browser would. */
final class RawClient implements AutoCloseable {
  private final Socket socket;

  RawClient(int port) throws IOException {
    this.socket = new Socket(InetAddress.getLoopbackAddress(), port);
    socket.setSoTimeout(5000);
  }

  /** Sends lines, each ended as the standard wants it, and the empty one. */
  RawClient lines(String... lines) throws IOException {
    return bytes(String.join("\r\n", lines) + "\r\n\r\n");
  }

  RawClient bytes(String bytes) throws IOException {
    socket.getOutputStream().write(bytes.getBytes(StandardCharsets.ISO_8859_1));
    return this;
  }

  /** The next answer: its lines, and its body where it says how long that is. */
  String answer() throws IOException {
    InputStream in = socket.getInputStream();
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    while (!ascii(head).endsWith("\r\n\r\n")) {
      int next = in.read();
      if (next < 0) {
        return ascii(head);
      }
      head.write(next);
    }
    return ascii(head) + new String(in.readNBytes(length(ascii(head))), StandardCharsets.UTF_8);
  }

  /** Everything until the server closes the connection. */
  String rest() throws IOException {
    return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }

  /** The next piece of a stream of pieces; nothing at its end. */
  String piece() throws IOException {
    InputStream in = socket.getInputStream();
    String length = line(in);
    if (length.isEmpty()) {
      return "";
    }
    String piece = new String(in.readNBytes(Integer.parseInt(length, 16)), StandardCharsets.UTF_8);
    line(in);
    return piece;
  }

  private static String line(InputStream in) throws IOException {
    StringBuilder line = new StringBuilder();
    for (int c = in.read(); c >= 0 && c != '\n'; c = in.read()) {
      line.append((char) c);
    }
    return line.toString().strip();
  }

  private static int length(String head) {
    for (String line : head.split("\r\n", -1)) {
      if (line.startsWith("Content-length: ")) {
        return Integer.parseInt(line.substring("Content-length: ".length()));
      }
    }
    return 0;
  }

  private static String ascii(ByteArrayOutputStream bytes) {
    return bytes.toString(StandardCharsets.ISO_8859_1);
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }
}
