package dev.ringout.meter.drive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.meter.Exchange;
import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.link.HislipMessage;
import dev.ringout.meter.link.HislipType;
import dev.ringout.support.RealMeter;
import java.io.DataInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** HiSLIP as IVI-6.1 has it: answers have numbers, and a device clear makes the meter forget. */
@Timeout(30)
class HislipMeterTest {
  private volatile String ese = "0";
  private final List<HislipType> received = new CopyOnWriteArrayList<>();
  private final List<Exchange> talk = new CopyOnWriteArrayList<>();

  /** What a server says to a command, given the number of its message. */
  private interface Answers {
    void to(String command, int id, Socket out) throws IOException;
  }

  private static void say(Socket out, String text, int id) throws IOException {
    send(out, new HislipMessage(HislipType.DATA_END, 0, id, text + "\n"));
  }

  private static void send(Socket out, HislipMessage message) throws IOException {
    out.getOutputStream().write(message.bytes());
  }

  private static HislipMessage message(Socket from) throws IOException {
    DataInputStream in = new DataInputStream(from.getInputStream());
    byte[] header = new byte[HislipMessage.HEADER];
    in.readFully(header);
    byte[] payload = new byte[(int) HislipMessage.payloadLength(header)];
    in.readFully(payload);
    return HislipMessage.of(header, payload);
  }

  private ServerSocket serve(Answers answers) throws IOException {
    ServerSocket server = new ServerSocket(0, 8, InetAddress.getLoopbackAddress());
    start(
        () -> {
          while (true) {
            Socket client = server.accept();
            start(() -> talk(client, answers));
          }
        });
    return server;
  }

  private interface Work {
    void run() throws IOException;
  }

  private static void start(Work work) {
    Thread thread =
        new Thread(
            () -> {
              try {
                work.run();
              } catch (IOException e) {
                // The other side left.
              }
            });
    thread.setDaemon(true);
    thread.start();
  }

  private void talk(Socket client, Answers answers) throws IOException {
    while (true) {
      HislipMessage message = message(client);
      received.add(message.type());
      switch (message.type()) {
        case INITIALIZE ->
            send(client, HislipMessage.of(HislipType.INITIALIZE_RESPONSE, 0, 0x0100_0007));
        case ASYNC_INITIALIZE ->
            send(client, HislipMessage.of(HislipType.ASYNC_INITIALIZE_RESPONSE, 0, 0));
        case ASYNC_MAXIMUM_MESSAGE_SIZE ->
            send(
                client,
                new HislipMessage(
                    HislipType.ASYNC_MAXIMUM_MESSAGE_SIZE_RESPONSE,
                    0,
                    0,
                    HislipMessage.size(4096)));
        case ASYNC_DEVICE_CLEAR ->
            send(client, HislipMessage.of(HislipType.ASYNC_DEVICE_CLEAR_ACKNOWLEDGE, 0, 0));
        case DEVICE_CLEAR_COMPLETE ->
            send(client, HislipMessage.of(HislipType.DEVICE_CLEAR_ACKNOWLEDGE, 0, 0));
        default -> answers.to(message.payload().strip(), message.parameter(), client);
      }
    }
  }

  private Meter open(ServerSocket server) throws MeterTrouble {
    return open(server, "none");
  }

  private Meter open(ServerSocket server, String fence) throws MeterTrouble {
    return RealMeter.open(
        "TCPIP::127.0.0.1::hislip0," + server.getLocalPort() + "::INSTR",
        "speaks: scpi\nanswer-ms: 300\nfence: " + fence + "\nnoise-ohms: 0.01\n",
        talk::add);
  }

  private static void sound(String command, String value, int id, Socket out) throws IOException {
    switch (command) {
      case "*IDN?" -> say(out, "Works,Meter,17,1.0", id);
      case "SYST:ERR?" -> say(out, "+0,\"No error\"", id);
      case "READ?" -> say(out, value, id);
      default -> {
        // A command has no answer.
      }
    }
  }

  @Test
  void an_answer_with_the_number_of_an_earlier_message_is_dropped() throws Exception {
    try (ServerSocket server =
            serve(
                (command, id, out) -> {
                  if (command.equals("READ?")) {
                    say(out, "7.0", id - 4);
                  }
                  sound(command, "0.31", id, out);
                });
        Meter meter = open(server)) {
      assertEquals("0.31", meter.read(meter.byKey(), 3000).raw());
      assertTrue(
          talk.stream()
              .anyMatch(one -> one.kind() == Exchange.Kind.DROPPED && one.text().contains("7.0")));
    }
  }

  @Test
  void two_answers_to_one_message_that_differ_are_both_dropped() throws Exception {
    AtomicInteger reads = new AtomicInteger();
    try (ServerSocket server =
            serve(
                (command, id, out) -> {
                  if (command.equals("READ?") && reads.incrementAndGet() <= 2) {
                    say(out, "7.0", id);
                  }
                  ese = command.startsWith("*ESE ") ? command.substring(5) : ese;
                  if (command.equals("*ESE?")) {
                    say(out, ese, id);
                  }
                  sound(command, "0.31", id, out);
                });
        Meter meter = open(server, "number")) {
      assertEquals("0.31", meter.sample(1000).raw());
      assertTrue(!received.contains(HislipType.ASYNC_DEVICE_CLEAR), "and it is asked again");
      assertEquals("0.31", meter.read(meter.byKey(), 3000).raw());
    }
  }

  @Test
  void answers_without_their_number_are_told_and_not_silence() throws Exception {
    try (ServerSocket server = serve((command, id, out) -> say(out, "Works,Meter,17,1.0", 0))) {
      MeterTrouble trouble = assertThrows(MeterTrouble.class, () -> open(server));
      assertEquals(new Failure.Garbage("*IDN?", "Works,Meter,17,1.0"), trouble.failure());
    }
  }

  @Test
  void a_meter_that_falls_silent_is_cleared_and_not_opened_anew() throws Exception {
    try (ServerSocket server =
            serve(
                (command, id, out) -> {
                  if (!command.equals("READ?")
                      || received.contains(HislipType.ASYNC_DEVICE_CLEAR)) {
                    sound(command, "0.31", id, out);
                  }
                });
        Meter meter = open(server)) {
      assertEquals("0.31", meter.read(meter.byKey(), 3000).raw());
      assertEquals(1, received.stream().filter(HislipType.INITIALIZE::equals).count());
      assertTrue(received.contains(HislipType.DEVICE_CLEAR_COMPLETE));
    }
  }

  @Test
  void an_answer_in_pieces_is_one_line() throws Exception {
    try (ServerSocket server =
            serve(
                (command, id, out) -> {
                  if (command.equals("READ?")) {
                    // Its number is not known before its end.
                    send(out, new HislipMessage(HislipType.DATA, 0, 0xffffffff, "0."));
                    send(out, new HislipMessage(HislipType.DATA, 0, id, "3"));
                    send(out, new HislipMessage(HislipType.DATA_END, 0, id, "1\n"));
                  } else {
                    sound(command, "", id, out);
                  }
                });
        Meter meter = open(server)) {
      assertEquals("0.31", meter.read(meter.byKey(), 3000).raw());
    }
  }

  @Test
  void a_server_of_something_else_is_no_meter() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 8, InetAddress.getLoopbackAddress())) {
      start(
          () -> {
            Socket client = server.accept();
            client
                .getOutputStream()
                .write("220 ready\r\n".repeat(4).getBytes(StandardCharsets.US_ASCII));
          });
      MeterTrouble trouble = assertThrows(MeterTrouble.class, () -> open(server));
      assertTrue(trouble.failure() instanceof Failure.Garbage, trouble.failure().toString());
    }
  }
}
