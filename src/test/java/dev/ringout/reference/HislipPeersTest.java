package dev.ringout.reference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.meter.drive.Meter;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.meter.practice.PracticeInstrument;
import dev.ringout.meter.practice.PracticeProbes;
import dev.ringout.meter.practice.PracticeServer;
import dev.ringout.support.RealMeter;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * A HiSLIP client and a HiSLIP server written for this test from the tables of IVI-6.1 alone, byte
 * by byte: they share no code and no constant with the program, on whose other side they stand.
 */
@Timeout(30)
class HislipPeersTest {

  /** One message: "HS", its type, its control code, its parameter, a length of eight bytes. */
  private record Wire(int type, int control, long parameter, String text) {
    static Wire of(int type, int control, long parameter) {
      return new Wire(type, control, parameter, "");
    }

    static Wire read(Socket from) throws IOException {
      DataInputStream in = new DataInputStream(from.getInputStream());
      assertEquals('H', in.readUnsignedByte());
      assertEquals('S', in.readUnsignedByte());
      int type = in.readUnsignedByte();
      int control = in.readUnsignedByte();
      long parameter = in.readInt() & 0xffffffffL;
      byte[] payload = new byte[(int) in.readLong()];
      in.readFully(payload);
      return new Wire(type, control, parameter, new String(payload, StandardCharsets.ISO_8859_1));
    }

    void send(Socket to) throws IOException {
      DataOutputStream out = new DataOutputStream(to.getOutputStream());
      out.write('H');
      out.write('S');
      out.write(type);
      out.write(control);
      out.writeInt((int) parameter);
      out.writeLong(text.length());
      out.write(text.getBytes(StandardCharsets.ISO_8859_1));
      out.flush();
    }
  }

  private static Socket connect(int port) throws IOException {
    Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
    socket.setSoTimeout(5000);
    return socket;
  }

  private static PracticeServer practice() throws IOException {
    PracticeProbes probes = new PracticeProbes(new SystemTicks(), 1);
    PracticeInstrument instrument = new PracticeInstrument(probes, (from, to) -> Optional.of(0.31));
    return new PracticeServer(instrument, 0, 0);
  }

  /** Both connections of a session: initialised as 6.1 has it. */
  private static long session(Socket sync, Socket async) throws IOException {
    new Wire(0, 0, 0x0100_5858L, "hislip0").send(sync);
    Wire begun = Wire.read(sync);
    assertEquals(1, begun.type(), "InitializeResponse");
    assertEquals(0, begun.control() & 1, "synchronised mode is preferred");
    assertEquals(1, begun.parameter() >> 24, "version 1");
    long session = begun.parameter() & 0xffff;
    Wire.of(17, 0, session).send(async);
    assertEquals(18, Wire.read(async).type(), "AsyncInitializeResponse");
    new Wire(15, 0, 0, "\0\0\0\0\0\0\20\0").send(async);
    Wire most = Wire.read(async);
    assertEquals(16, most.type(), "AsyncMaximumMessageSizeResponse");
    assertEquals(8, most.text().length());
    return session;
  }

  @Test
  void the_practice_meter_answers_each_query_with_its_number() throws Exception {
    try (PracticeServer meter = practice();
        Socket sync = connect(meter.hislipPort());
        Socket async = connect(meter.hislipPort())) {
      session(sync, async);
      long id = 0xffffff00L;
      for (String query : new String[] {"*IDN?\n", "READ?\n", "SYST:ERR?\n"}) {
        new Wire(7, id == 0xffffff00L ? 0 : 1, id, query).send(sync);
        Wire answer = Wire.read(sync);
        assertEquals(7, answer.type(), "DataEnd");
        assertEquals(id, answer.parameter(), "the number of what it answers");
        assertTrue(answer.text().endsWith("\n"));
        id = (id + 2) & 0xffffffffL;
      }
    }
  }

  @Test
  void a_command_in_pieces_is_one_and_a_device_clear_forgets_half_of_one() throws Exception {
    try (PracticeServer meter = practice();
        Socket sync = connect(meter.hislipPort());
        Socket async = connect(meter.hislipPort())) {
      session(sync, async);
      new Wire(6, 0, 0xffffff00L, "*ES").send(sync);
      new Wire(7, 0, 0xffffff02L, "E?\n").send(sync);
      assertEquals("0\n", Wire.read(sync).text());
      new Wire(6, 1, 0xffffff04L, "*ESE 3;*RS").send(sync);
      Wire.of(19, 0, 0).send(async);
      assertEquals(23, Wire.read(async).type(), "AsyncDeviceClearAcknowledge");
      Wire.of(8, 0, 0).send(sync);
      assertEquals(9, Wire.read(sync).type(), "DeviceClearAcknowledge");
      new Wire(7, 0, 0xffffff00L, "*ESE?\n").send(sync);
      Wire answer = Wire.read(sync);
      assertEquals("0\n", answer.text());
      assertEquals(0xffffff00L, answer.parameter(), "numbers begin again");
    }
  }

  @Test
  void what_is_no_message_of_the_protocol_is_an_error() throws Exception {
    try (PracticeServer meter = practice();
        Socket sync = connect(meter.hislipPort());
        Socket async = connect(meter.hislipPort());
        Socket stranger = connect(meter.hislipPort())) {
      session(sync, async);
      Wire.of(99, 0, 0).send(sync);
      Wire error = Wire.read(sync);
      assertArrayEquals(new int[] {3, 1}, new int[] {error.type(), error.control()});
      Wire.of(17, 0, 4711).send(stranger);
      Wire fatal = Wire.read(stranger);
      assertArrayEquals(new int[] {2, 3}, new int[] {fatal.type(), fatal.control()});
    }
  }

  /** What a server heard on its synchronous connection. */
  private final List<Wire> heard = new CopyOnWriteArrayList<>();

  private final List<Integer> heardAsync = new CopyOnWriteArrayList<>();

  private void serve(ServerSocket server) {
    try (Socket sync = server.accept()) {
      heard.add(Wire.read(sync));
      // Control 1: this server would rather overlap.
      Wire.of(1, 1, 0x0100_0000L | 0x1234).send(sync);
      try (Socket async = server.accept()) {
        Thread second = new Thread(() -> answerAsync(async));
        second.setDaemon(true);
        second.start();
        while (true) {
          answerSync(sync, async);
        }
      }
    } catch (IOException e) {
      // The client left.
    }
  }

  private void answerAsync(Socket async) {
    try {
      while (true) {
        Wire asked = Wire.read(async);
        heardAsync.add(asked.type());
        switch (asked.type()) {
          case 17 -> {
            assertEquals(0x1234, asked.parameter(), "the session that it was given");
            Wire.of(18, 0, 0x5858).send(async);
          }
          case 15 -> new Wire(16, 0, 0, "\0\0\0\0\0\20\0\0").send(async);
          case 19 -> Wire.of(23, 1, 0).send(async);
          default -> Wire.of(3, 1, 0).send(async);
        }
      }
    } catch (IOException e) {
      // The client left.
    }
  }

  private void answerSync(Socket sync, Socket async) throws IOException {
    Wire asked = Wire.read(sync);
    heard.add(asked);
    if (asked.type() == 8) {
      Wire.of(9, asked.control(), 0).send(sync);
      return;
    }
    switch (asked.text().strip()) {
      case "*IDN?" -> new Wire(7, 0, asked.parameter(), "Works,Meter,9,1.0\n").send(sync);
      case "SYST:ERR?" -> new Wire(7, 0, asked.parameter(), "0,\"No error\"\n").send(sync);
      case "*ESE?" -> new Wire(7, 0, asked.parameter(), ese + "\n").send(sync);
      case "READ?" -> {
        // An answer to what nobody waits for any more, a request for service, and the value.
        new Wire(7, 0, asked.parameter() - 6, "9.9E37\n").send(sync);
        Wire.of(20, 0x40, 0).send(async);
        new Wire(6, 0, asked.parameter(), "+3.1").send(sync);
        new Wire(7, 0, asked.parameter(), "0000E-01\n").send(sync);
      }
      default -> {
        if (asked.text().startsWith("*ESE ")) {
          ese = asked.text().substring(5).strip();
        }
      }
    }
  }

  private volatile String ese = "0";

  @Test
  void a_server_of_another_hand_is_read_and_hears_what_the_standard_says() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 4, InetAddress.getLoopbackAddress())) {
      Thread thread = new Thread(() -> serve(server));
      thread.setDaemon(true);
      thread.start();
      try (Meter meter =
          RealMeter.open(
              "TCPIP::127.0.0.1::hislip0," + server.getLocalPort() + "::INSTR",
              "speaks: scpi\nanswer-ms: 1000\nnoise-ohms: 0.01\n")) {
        assertEquals("+3.10000E-01", meter.read(meter.byKey(), 5000).raw());
      }
    }
    Wire first = heard.get(0);
    assertEquals(0, first.type());
    assertEquals("hislip0", first.text());
    assertEquals(1, first.parameter() >> 24, "version 1");
    assertTrue(heardAsync.contains(19), "a device clear agrees on the synchronised mode");
    Wire clear = heard.get(1);
    assertEquals(8, clear.type());
    assertEquals(0, clear.control() & 1, "which it asks for");
    List<Wire> sent = heard.stream().filter(one -> one.type() == 7).toList();
    for (int i = 0; i < sent.size(); i++) {
      assertEquals((0xffffff00L + 2L * i) & 0xffffffffL, sent.get(i).parameter());
    }
    boolean delivered = false;
    for (Wire one : sent) {
      assertEquals(delivered ? 1 : 0, one.control(), "whether an answer was taken whole");
      delivered = one.text().contains("?");
    }
  }
}
