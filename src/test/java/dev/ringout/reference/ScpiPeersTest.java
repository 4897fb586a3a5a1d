package dev.ringout.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.ringout.meter.link.SystemTicks;
import dev.ringout.meter.practice.PracticeInstrument;
import dev.ringout.meter.practice.PracticeProbes;
import dev.ringout.meter.practice.PracticeServer;
import dev.ringout.support.Installed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The practice meter is a true peer: clients that others wrote talk with it. */
@Timeout(60)
class ScpiPeersTest {
  private static final String ASK =
      """
      import pyvisa, sys
      meter = pyvisa.ResourceManager('@py').open_resource(sys.argv[1])
      meter.timeout = 3000
      meter.read_termination = '\\n'
      meter.write_termination = '\\n'
      print(meter.query('*IDN?'))
      meter.write('PRAC:OHMS 47')
      meter.write('CONF:FRES')
      import time
      time.sleep(0.4)
      print('%.0f' % float(meter.query('READ?')))
      meter.write('PRAC:LIFT')
      print('%.1e' % float(meter.query('READ?')))
      meter.write('NOT:A:COMMAND')
      print(meter.query('SYST:ERR?'))
      print(meter.query('SYST:ERR?'))
      print(meter.query('*ESE 17;*ESE?'))
      """;

  private static final String ANSWERS =
      """
      ringout,PRACTICE METER,0,1
      47
      9.9e+37
      -113,"Undefined header;NOT:A:COMMAND"
      +0,"No error"
      17
      """;

  /** Debian's packages are seen by Debian's own interpreter. */
  private static final String PYTHON =
      Files.isExecutable(Path.of("/usr/bin/python3")) ? "/usr/bin/python3" : "python3";

  private PracticeServer server;

  @BeforeEach
  void serve() throws IOException {
    PracticeProbes probes = new PracticeProbes(new SystemTicks(), 1);
    server =
        new PracticeServer(new PracticeInstrument(probes, (from, to) -> Optional.empty()), 0, 0);
  }

  @AfterEach
  void stop() throws IOException {
    server.close();
  }

  private static void needs(boolean there, String what) {
    if (!there) {
      System.out.println("[NOT RUN] a peer of the practice meter: no " + what);
    }
    assumeTrue(there, what + " is not installed");
  }

  private String lxi(String command) throws Exception {
    return Installed.run(
            "lxi", "scpi", "-a", "127.0.0.1", "-p", "" + server.rawPort(), "-r", command)
        .strip();
  }

  @Test
  void lxi_tools_talk_with_it() throws Exception {
    needs(Installed.isThere("lxi", "--version"), "lxi-tools");
    assertEquals("ringout,PRACTICE METER,0,1", lxi("*IDN?"));
    assertEquals("1", lxi("*OPC?"));
    lxi("PRAC:OHMS 47");
    Thread.sleep(400);
    assertTrue(lxi("MEAS:FRES?").startsWith("+4.7") || lxi("MEAS:FRES?").startsWith("+4.69"));
    assertEquals("+0,\"No error\"", lxi("SYST:ERR?"));
  }

  @Test
  void pyvisa_py_talks_with_it_over_a_plain_socket() throws Exception {
    needs(Installed.isThere(PYTHON, "-c", "import pyvisa, pyvisa_py"), "python3-pyvisa-py");
    assertEquals(
        ANSWERS,
        Installed.run(PYTHON, "-c", ASK, "TCPIP::127.0.0.1::" + server.rawPort() + "::SOCKET"));
  }

  /** Debian's version has no HiSLIP yet; a later one has. */
  @Test
  void pyvisa_py_talks_with_it_over_hislip() throws Exception {
    needs(
        Installed.isThere(PYTHON, "-c", "import pyvisa, pyvisa_py.protocols.hislip"),
        "python3-pyvisa-py with HiSLIP");
    assertEquals(
        ANSWERS,
        Installed.run(
            PYTHON, "-c", ASK, "TCPIP::127.0.0.1::hislip0," + server.hislipPort() + "::INSTR"));
  }
}
