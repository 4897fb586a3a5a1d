package dev.ringout.intake;

import dev.ringout.harness.Crimp;
import dev.ringout.source.UnusableInput;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The sheet {@code Crimps}: what was crimped with which tool, and what samples held. */
final class CrimpRows {
  private static final Column WIRE = Column.of("Wire");
  private static final Column CONTACT = Column.of("Contact");
  private static final Column TOOL = Column.of("Tool");
  private static final Column POSITIONER = Column.of("Positioner");
  private static final Column SETTING = Column.of("Setting", "Selector");
  private static final Column STRIP_MM = Column.of("Strip mm");
  private static final Column STRIP_IN = Column.of("Strip in");
  private static final Column PULL_LBF = Column.of("Pull lbf");
  private static final Column PULL_N = Column.of("Pull N");
  private static final Column STANDARD = Column.of("Standard");

  private static final double MILLIMETRES_PER_INCH = 25.4;

  /** One pound-force, by definition of the pound and of standard gravity. */
  private static final double NEWTONS_PER_POUND_FORCE = 4.4482216152605;

  private CrimpRows() {}

  static List<Crimp> read(SheetsOfHarness sheets) throws UnusableInput {
    List<Crimp> crimps = new ArrayList<>();
    sheets.each(
        "Crimps",
        List.of(
            WIRE,
            CONTACT,
            TOOL,
            POSITIONER,
            SETTING,
            STRIP_MM,
            STRIP_IN,
            PULL_LBF,
            PULL_N,
            STANDARD,
            SheetsOfHarness.NOTE),
        List.of(WIRE),
        entry -> crimps.add(crimp(entry)));
    return List.copyOf(crimps);
  }

  private static Crimp crimp(Entry entry) {
    return new Crimp(
        entry.text(WIRE.name()),
        entry.text(CONTACT.name()),
        entry.text(TOOL.name()),
        entry.text(POSITIONER.name()),
        entry.text(SETTING.name()),
        eitherOf(entry, STRIP_MM, STRIP_IN, MILLIMETRES_PER_INCH),
        eitherOf(entry, PULL_N, PULL_LBF, NEWTONS_PER_POUND_FORCE),
        entry.text(STANDARD.name()),
        entry.place());
  }

  /** One quantity that may be given in either of two units; in the first where it is. */
  private static OptionalDouble eitherOf(
      Entry entry, Column first, Column second, double perSecond) {
    OptionalDouble inFirst = SheetsOfHarness.number(entry, first);
    OptionalDouble inSecond = SheetsOfHarness.number(entry, second);
    if (inFirst.isPresent() && inSecond.isPresent()) {
      entry.error(
          first.name(), first.name() + " and " + second.name() + " are both given; keep one", "");
    }
    return inSecond.isPresent() && inFirst.isEmpty()
        ? OptionalDouble.of(inSecond.getAsDouble() * perSecond)
        : inFirst;
  }
}
