package dev.ringout.meter.link;

import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterTrouble;
import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;

/** A TCP connection. */
final class TcpLink implements ByteLink {
  private final Socket socket;

  private TcpLink(Socket socket) {
    this.socket = socket;
  }

  /**
   * Connects, looking the name up among it, which by itself may take very long.
   *
   * @param shown the address, for what is said where it fails
   */
  static TcpLink connect(String host, int port, int millis, String shown, Transcript transcript)
      throws MeterTrouble {
    try {
      return Bounded.call(() -> connected(host, port, millis), millis + 500L, TcpLink::close);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw transcript.trouble(new Failure.Interrupted());
    } catch (TimeoutException e) {
      throw transcript.trouble(new Failure.NotFound(shown, "no answer in " + millis + " ms"));
    } catch (ExecutionException e) {
      throw transcript.trouble(failure(e.getCause(), shown, millis));
    }
  }

  private static Failure failure(@Nullable Throwable cause, String shown, int millis) {
    if (cause instanceof SocketTimeoutException) {
      return new Failure.NotFound(shown, "no answer in " + millis + " ms");
    }
    if (cause instanceof UnknownHostException) {
      return new Failure.NotFound(shown, "no such host");
    }
    if (cause instanceof ConnectException) {
      return new Failure.Refused(shown);
    }
    return new Failure.NotFound(shown, cause == null ? "" : String.valueOf(cause.getMessage()));
  }

  @SuppressWarnings("AddressSelection") // A meter has one address; its name is the user's.
  private static TcpLink connected(String host, int port, int millis) throws IOException {
    Socket socket = new Socket();
    try {
      socket.connect(new InetSocketAddress(InetAddress.getByName(host), port), millis);
      socket.setTcpNoDelay(true);
      socket.setKeepAlive(true);
      return new TcpLink(socket);
    } catch (IOException e) {
      socket.close();
      throw e;
    }
  }

  @Override
  public void write(byte[] bytes) throws IOException {
    socket.getOutputStream().write(bytes);
  }

  @Override
  public int read(byte[] into, int waitMillis) throws IOException {
    socket.setSoTimeout(Math.max(1, waitMillis));
    try {
      return socket.getInputStream().read(into);
    } catch (SocketTimeoutException e) {
      return 0;
    }
  }

  @Override
  public void close() {
    try {
      socket.close();
    } catch (IOException e) {
      // It is closed as far as this program goes.
    }
  }
}
