package dev.ringout.standards;

import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.standards.Tables.Entry;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which crimp tool, positioner and selector position belong to a contact and a wire. */
public final class CrimpTools {
  private final List<Entry> rows;

  /**
   * How a tool is set.
   *
   * @param positioner the locator for the contact; empty where the tables have none
   * @param selector the selector position for the wire; empty where the tables have none
   * @param fromMemory whether a row that says so is from memory: the data plate on the tool decides
   */
  public record Setting(String tool, String positioner, String selector, boolean fromMemory) {
    /** All three in a line. */
    public String text() {
      return Stream.of(
              tool,
              positioner.isEmpty() ? "" : "positioner " + positioner,
              selector.isEmpty() ? "" : "selector " + selector)
          .filter(word -> !word.isEmpty())
          .collect(Collectors.joining(", "));
    }

    private Setting and(Entry row) {
      return new Setting(
          tool,
          positioner.isEmpty() ? row.get("positioner") : positioner,
          selector.isEmpty() ? row.get("selector") : selector,
          fromMemory || row.isFromMemory());
    }

    private int known() {
      return (positioner.isEmpty() ? 0 : 1) + (selector.isEmpty() ? 0 : 1);
    }
  }

  private CrimpTools(List<Entry> rows) {
    this.rows = rows;
  }

  /** The table of crimp tools, a user's rows laid over the published. */
  public static CrimpTools of(Tables tables) {
    return new CrimpTools(tables.rows("crimp-tools"));
  }

  /**
   * The rows that hold for a contact and a wire.
   *
   * @param contact its part number, or empty
   * @param size its size, or empty
   * @param awg the gauge of the wire, or empty
   */
  public List<Entry> rows(String contact, String size, String awg) {
    String part = ContactSizes.asPart(contact);
    return rows.stream()
        .filter(row -> row.get("contact").isEmpty() || names(row, part, size))
        .filter(row -> row.get("awg").isEmpty() || row.get("awg").equals(awg))
        .toList();
  }

  private static boolean names(Entry row, String part, String size) {
    return row.get("contact").equals(part)
        || (!size.isEmpty() && row.get("contact").equalsIgnoreCase(size));
  }

  /**
   * The tool to take: one whose rows name the contact before one for any contact of the size, the
   * one of which most is known first.
   */
  public Optional<Setting> find(String contact, ContactSize size, String awg) {
    Map<String, Setting> settings = new LinkedHashMap<>();
    for (Entry row : rows(contact, size.size(), awg)) {
      boolean holds =
          !row.get("contact").isEmpty()
              || Arrays.asList(row.get("sizes").split(" ")).contains(size.size());
      if (holds) {
        String tool = row.get("tool");
        settings.put(tool, settings.getOrDefault(tool, new Setting(tool, "", "", false)).and(row));
      }
    }
    return settings.values().stream().max(Comparator.comparingInt(Setting::known));
  }
}
