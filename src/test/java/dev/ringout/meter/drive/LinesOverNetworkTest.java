package dev.ringout.meter.drive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.support.RealMeter;
import dev.ringout.support.ScriptedMeter;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A meter that only talks, behind a box that puts its serial line on the network. */
@Timeout(30)
class LinesOverNetworkTest {
  private final CountDownLatch all = new CountDownLatch(1);

  /** Ten minutes of lines that nobody read, and from then on what the probes touch now. */
  private void talk(ServerSocket server) {
    try (Socket client = server.accept()) {
      OutputStream out = client.getOutputStream();
      ScriptedMeter.say(out, "9.99 Ohm\r\n".repeat(60_000));
      all.countDown();
      Thread.sleep(200);
      while (true) {
        ScriptedMeter.say(out, "0.42 Ohm\r\n");
        Thread.sleep(20);
      }
    } catch (IOException e) {
      // The reader left.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void what_lay_unread_for_minutes_is_never_the_value_of_now() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      Thread thread = new Thread(() -> talk(server));
      thread.setDaemon(true);
      thread.start();
      try (Meter meter =
          RealMeter.open(
              "127.0.0.1:" + server.getLocalPort(), "speaks: lines\nanswer-ms: 1000\n")) {
        all.await();
        Thread.sleep(100);
        assertEquals("0.42 Ohm", meter.read(meter.byKey(), 3000).raw());
      }
    }
  }
}
