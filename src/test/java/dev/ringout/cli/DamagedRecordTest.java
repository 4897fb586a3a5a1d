package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody sends instead of a record that was sealed. */
class DamagedRecordTest {
  @TempDir Path folder;

  /** It is told by its bytes; what a library would stumble over in it is never opened. */
  @ParameterizedTest
  @ValueSource(strings = {"record.html", "record.pdf", "record.xlsx"})
  void a_record_whose_bytes_differ_is_not_looked_into(String name) throws IOException {
    SmallUnit unit = new SmallUnit(folder);
    Path record = folder.resolve(name);
    Run written = Run.of("report", unit.list(), unit.sheet("sheet"), "-o", record);
    assertTrue(written.code() <= ExitCode.INCOMPLETE, written.err());
    byte[] whole = Files.readAllBytes(record);
    Files.write(record, Arrays.copyOf(whole, whole.length / 2));
    Run verified = Run.of("report", "--verify", record);
    assertEquals(ExitCode.FAULTS, verified.code(), verified.err());
    assertTrue(verified.out().contains("DIFFERS     record " + name), verified.out());
    assertFalse(verified.out().contains("content digest"), verified.out());
    assertFalse(verified.out().contains("can't be read"), verified.out());
  }

  @Test
  void what_a_key_is_called_steers_no_terminal() {
    Run made = Run.of("report", "--new-key", folder.resolve("k\u001b[2J\u202e"));
    assertEquals(ExitCode.DONE, made.code(), made.err());
    assertFalse(made.out().contains("\u001b") || made.out().contains("\u202e"), made.out());
    assertTrue(made.out().contains("k\ufffd[2J"), made.out());
  }
}
