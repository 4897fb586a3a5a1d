package dev.ringout.page;

import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.text.ProfileText;
import java.util.Iterator;
import java.util.List;
import java.util.Set;

/** Options of {@code import} as a page says them: those alone that speak of the list. */
final class ListOptions {
  private static final int MOST = 400;

  /** What names a file of this machine is none of a page's business. */
  private static final Set<String> OF_LISTS =
      Set.of(
          "column",
          "heading-row",
          "sheet",
          "rows",
          "layout",
          "separator",
          "item",
          "read-as",
          "leave-out",
          "marks",
          "join-by",
          "one-point",
          "module",
          "length-unit",
          "gauge-unit",
          "title",
          "revision");

  private ListOptions() {}

  /**
   * What the options say.
   *
   * @param options option and value in turn
   * @throws Refused where one can't be understood, or is not a page's to say
   */
  static ImportOptions of(List<String> options) throws Refused {
    if (options.size() > MOST) {
      throw notUnderstood("These are too many options.");
    }
    ProfileText said = new ProfileText();
    for (Iterator<String> words = options.iterator(); words.hasNext(); ) {
      String option = words.next();
      String name = option.startsWith("--") ? option.substring(2) : "";
      if (!OF_LISTS.contains(name)) {
        throw notUnderstood("\"" + option + "\" is not an option for reading a list.");
      }
      if (!words.hasNext()) {
        throw notUnderstood(option + " has no value.");
      }
      try {
        said.say(name, words.next());
      } catch (ProfileText.Unreadable e) {
        throw notUnderstood(option + " " + e.getMessage());
      }
    }
    return said.options();
  }

  private static Refused notUnderstood(String text) {
    return new Refused(Reason.NOT_UNDERSTOOD, text);
  }
}
