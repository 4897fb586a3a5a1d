package dev.ringout.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** When each kind of doubt is raised, and that what settles it does settle it. */
class EachDoubtTest {
  /**
   * A test that raises a doubt, and one that differs from it by what settles that doubt.
   *
   * @param kind the doubt
   * @param waits whether the verdict waits for it
   */
  private record Case(
      String kind,
      boolean waits,
      UnaryOperator<UnitUnderTest> raising,
      UnaryOperator<UnitUnderTest> settled) {
    @Override
    public String toString() {
      return kind + (waits ? ", which the verdict waits for" : "");
    }
  }

  /** Nothing is left to doubt about it. */
  private static UnitUnderTest sound(UnitUnderTest unit) {
    return unit.job("serial number,0150").job("date,2027-03-02").job("calibration due,2027-03-31");
  }

  private static Stream<Case> cases() {
    return Stream.of(
        new Case(
            "LeadsNotNulled",
            false,
            unit -> five(sound(unit), "0.35"),
            unit -> five(sound(unit), "0.04")),
        new Case(
            "CalibrationExpired",
            true,
            unit -> unit.job("date,2027-04-01").job("calibration due,2027-03-31"),
            unit -> unit.job("date,2027-03-31").job("calibration due,2027-03-31")),
        new Case(
            "CalibrationNotStated",
            true,
            unit -> unit.limit("calibration,required").job("date,2027-03-02"),
            unit ->
                unit.limit("calibration,required")
                    .job("date,2027-03-02")
                    .job("calibration due,2027-03-31")),
        new Case(
            "CalibrationNotADay",
            true,
            unit -> unit.job("date,2027-03-02").job("calibration due,next spring"),
            unit -> unit.job("date,2027-03-02").job("calibration due,2027-03-31 08:00")),
        new Case(
            "TestDayNotStated",
            true,
            unit -> unit.limit("test day,required"),
            unit -> unit.limit("test day,required").job("date,2027-03-02")),
        new Case(
            "TestDayNotADay",
            true,
            unit -> unit.limit("test day,required").job("date,Tuesday"),
            unit -> unit.limit("test day,required").job("date of test,2027-03-02")),
        new Case(
            "SerialNumberNotStated",
            true,
            unit -> unit.limit("serial number,required").job("serial number,n/a"),
            unit -> unit.limit("serial number,required").job("serial number,0150")),
        new Case(
            "NotEffective",
            true,
            unit -> sound(unit).header("effectivity,0201 to 0300"),
            unit -> sound(unit).header("effectivity,0100 to 0200")),
        new Case(
            "EffectivityNotUnderstood",
            true,
            unit -> sound(unit).header("effectivity,see sheet 2"),
            unit -> sound(unit).header("effectivity,all")),
        new Case(
            "TesterIsInspector",
            true,
            unit -> inspected(unit).job("operator,A. Ruiz").job("inspector,a ruiz"),
            unit -> inspected(unit).job("operator,A. Ruiz").job("inspector,B. Weir")),
        new Case(
            "NoInspector",
            true,
            unit -> inspected(unit).job("operator,A. Ruiz"),
            unit -> inspected(unit).job("operator,A. Ruiz").job("inspector,B. Weir")),
        new Case(
            "NoTester",
            true,
            unit -> inspected(unit).job("inspector,B. Weir"),
            unit -> inspected(unit).job("operator,A. Ruiz").job("inspector,B. Weir")),
        new Case(
            "BeyondRange",
            false,
            unit -> sound(unit).job("insulation range,1,GΩ"),
            unit -> sound(unit).job("insulation range,2,GΩ")),
        new Case(
            "WithinADigit",
            false,
            unit -> sound(unit).limit("closed max,50 mΩ").reads("J1-A", "P1-1", "0.2"),
            unit -> sound(unit).limit("closed max,50 mΩ").reads("J1-A", "P1-1", "0.04")));
  }

  private static UnitUnderTest inspected(UnitUnderTest unit) {
    return unit.limit("independent inspector,required");
  }

  /** Five joins of one metre, read alike: 20 AWG has some 0.04 Ω of it. */
  private static UnitUnderTest five(UnitUnderTest unit, String ohms) {
    for (int pin = 3; pin <= 7; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P1-" + pin + ",20,1 m");
      unit.reads("J1-" + pin, "P1-" + pin, ohms);
    }
    return unit;
  }

  private static CheckResult checked(Path folder, UnaryOperator<UnitUnderTest> how) {
    UnitUnderTest unit =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,P1-1,20,1 m")
            .reads("J1-A", "P1-1", "0.04")
            .insulation("J1-A", "REST", "2000 MΩ");
    return how.apply(unit).check();
  }

  private static List<Doubt.Raised> raised(CheckResult result, String kind) {
    return result.doubts().stream()
        .filter(one -> one.doubt().getClass().getSimpleName().equals(kind))
        .toList();
  }

  @Test
  void every_kind_has_its_case() {
    assertEquals(
        new TreeSet<>(
            Stream.of(Doubt.class.getPermittedSubclasses()).map(Class::getSimpleName).toList()),
        new TreeSet<>(cases().map(Case::kind).toList()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void each_is_raised_once_and_is_gone_once_it_is_settled(Case one, @TempDir Path folder) {
    List<Doubt.Raised> doubts =
        raised(checked(folder.resolve("raising"), one.raising()), one.kind());
    assertEquals(1, doubts.size(), doubts.toString());
    assertEquals(one.waits(), doubts.get(0).withholds());
    assertEquals(List.of(), raised(checked(folder.resolve("settled"), one.settled()), one.kind()));
  }

  @Test
  void a_unit_of_which_everything_is_said_is_in_no_doubt(@TempDir Path folder) {
    CheckResult result = checked(folder, EachDoubtTest::sound);
    assertEquals(List.of(), result.doubts());
    assertFalse(result.leadDoubt().isPresent());
    assertTrue(result.isProven(), result.coverage().toString());
  }
}
