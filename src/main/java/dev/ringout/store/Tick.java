package dev.ringout.store;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A tick on the wiring sheet.
 *
 * @param wire its name
 * @param item where the end is
 * @param pin where the end is
 */
public record Tick(What what, String wire, String item, String pin) {

  /** What is ticked. */
  public enum What {
    /** The end is crimped and home. */
    MADE,
    /** A second person looked at it. */
    CHECKED,
    /** It was taken apart again, or ticked by mistake. */
    UNDONE;

    /** As it is kept and shown. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** Of a word; absent where it is none. */
    public static Optional<What> of(String word) {
      return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }
  }

  /** As the body of an entry. */
  public String body() {
    return Fields.line(what.word(), wire, item, pin);
  }

  /** Of an entry; absent where it is another kind of entry. */
  public static Optional<Tick> in(Entry entry) {
    return entry.is(EntryKind.TICK) ? of(entry.body()) : Optional.empty();
  }

  /** Of an entry's body; absent where it is none. */
  public static Optional<Tick> of(String body) {
    List<String> fields = Fields.of(body).get(0);
    return fields.size() == 4
        ? What.of(fields.get(0))
            .map(what -> new Tick(what, fields.get(1), fields.get(2), fields.get(3)))
        : Optional.empty();
  }
}
