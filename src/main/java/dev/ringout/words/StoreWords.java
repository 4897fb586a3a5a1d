package dev.ringout.words;

import dev.ringout.store.StoreFinding;
import dev.ringout.store.StoreState;
import dev.ringout.store.StoredUnit;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;

/** What a store holds, and what is not as it was written, as sentences. */
public final class StoreWords {
  private static final int DIGEST_SHOWN = 8;

  private StoreWords() {}

  /** How much there is. */
  public static String size(StoreState state) {
    return Text.of(
        "%s of %s, %s, %s",
        Numbers.count(state.units(), "unit"),
        Numbers.count(state.lists(), "list"),
        Numbers.count(state.sessions(), "test"),
        state.entries() == 1 ? "1 entry" : state.entries() + " entries");
  }

  /** A unit's list, told from others of its name by the beginning of its digest. */
  public static String list(StoredUnit unit) {
    return Sentences.named(
            unit.title().isEmpty() ? "a list without a title" : unit.title(),
            unit.drawing(),
            unit.revision().isEmpty() ? "" : "revision " + unit.revision())
        + Text.of(" (%s)", unit.harness().substring(0, DIGEST_SHOWN));
  }

  /** What is not as it was written, and why that is known. */
  public static String finding(StoreFinding finding) {
    String where =
        finding.unit().isEmpty()
            ? ofStore(finding.kind()) + finding.file()
            : Text.of("unit %s, %s (%s)", finding.unit(), finding.file(), finding.session());
    return where + ": " + what(finding);
  }

  private static String ofStore(StoreFinding.Kind kind) {
    return switch (kind) {
      case WITHOUT_OWNER -> "table ";
      case DAMAGED -> "damaged: ";
      case ENTRY_CHANGED, ENTRY_MISSING, CHAIN_BROKEN, TWO_HISTORIES, DECIDED_ELSEWHERE -> "";
      default -> "list ";
    };
  }

  /** The same without the place. */
  public static String what(StoreFinding finding) {
    return switch (finding.kind()) {
      case ENTRY_CHANGED ->
          Text.of("entry %d was changed: its fields do not give its hash", finding.seq());
      case ENTRY_MISSING -> Text.of("entry %d is not there", finding.seq());
      case CHAIN_BROKEN ->
          Text.of(
              finding.seq() == 1
                  ? "the test as a whole was changed: entry %d does not follow from it"
                  : "entry %d does not follow from the one before: one of the two was exchanged",
              finding.seq());
      case END_MISSING -> "its last entries are not there: it does not end with a verdict";
      case SESSION_MISSING -> "a test before it is not there";
      case SIGNATURE_WRONG ->
          Text.of("the signature in entry %d does not match the entries before it", finding.seq());
      case NOT_UNDERSTOOD -> Text.of("entry %d can't be understood", finding.seq());
      case DAMAGED -> "keep it, and take the last backup";
      case WITHOUT_OWNER ->
          Text.of("%d rows belong to something that is no longer there", finding.seq());
      case TWO_HISTORIES ->
          finding.seq() == 0
              ? "it can't follow on what TO has of this unit; nothing of it was copied"
              : Text.of(
                  "entry %d is one thing in FROM and another in TO; nothing of it was copied",
                  finding.seq());
      case DECIDED_ELSEWHERE ->
          Text.of(
              "entry %d was decided in FROM, where nobody of TO may have seen it; it was not taken."
                  + " Say it in TO, or take it with --people",
              finding.seq());
      case CLOCK_WRONG ->
          "it was read by a clock that ran behind its tests before, or is ahead of now; nothing of"
              + " the unit was copied, read it again in TO";
      case LIST_CHANGED -> "it was changed since it was written";
      case LIST_RENAMED -> "its tests have another name for it, or for its file";
    };
  }
}
