package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written is the same wherever the machine stands and whatever language it speaks. */
class LocaleTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");

  private final Locale locale = Locale.getDefault();
  private final TimeZone zone = TimeZone.getDefault();

  @TempDir Path folder;

  @AfterEach
  void asItWas() {
    Locale.setDefault(locale);
    TimeZone.setDefault(zone);
  }

  private List<byte[]> everything(String name) throws IOException {
    Path box = SAMPLE.resolve("junction-box.xlsx");
    Path readings = SAMPLE.resolve("point-to-point.xlsx");
    Path to = Files.createDirectories(folder.resolve(name));
    List<byte[]> all = new ArrayList<>();
    for (Object[] command :
        new Object[][] {
          {"check", box, readings},
          {"check", box, readings, "--json"},
          {"plan", box},
          {"work", box},
          {"review", box},
          {"trace", box, "J1-A", "J2-13"},
          {"diff", box, SAMPLE.resolve("junction-box-c.xlsx")},
          {"import", SAMPLE.resolve("as-received/net-table.csv")},
          {"import", Path.of("src/test/resources/kbl/swing-bridge.kbl")},
          {"asfound", readings},
          {"lot", box, readings, SAMPLE.resolve("point-to-point-clean.xlsx")},
          {"lot", box, readings, SAMPLE.resolve("point-to-point-clean.xlsx"), "--json"}
        }) {
      all.add(Run.of(command).out().getBytes(StandardCharsets.UTF_8));
    }
    for (String form : new String[] {"plan.xlsx", "record.html", "record.pdf", "record.xlsx"}) {
      Path file = to.resolve(form);
      if (form.startsWith("plan")) {
        Run.of("plan", box, "-o", file);
      } else {
        Run.of("report", box, readings, "-o", file);
      }
      all.add(Files.readAllBytes(file));
    }
    return all;
  }

  @Test
  void no_language_and_no_time_zone_changes_a_byte() throws IOException {
    Locale.setDefault(Locale.ROOT);
    TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
    List<byte[]> expected = everything("root");
    String[][] machines = {
      {"tr-TR", "Asia/Istanbul"},
      {"de-DE", "Pacific/Kiritimati"},
      {"th-TH-u-ca-buddhist-nu-thai", "America/Adak"}
    };
    for (String[] machine : machines) {
      Locale.setDefault(Locale.forLanguageTag(machine[0]));
      TimeZone.setDefault(TimeZone.getTimeZone(machine[1]));
      List<byte[]> there = everything(machine[0]);
      assertEquals(expected.size(), there.size());
      for (int i = 0; i < expected.size(); i++) {
        assertArrayEquals(expected.get(i), there.get(i), machine[0] + ", output " + i);
      }
    }
  }
}
