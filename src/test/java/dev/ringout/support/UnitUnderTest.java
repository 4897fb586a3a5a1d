package dev.ringout.support;

import dev.ringout.check.CheckResult;
import dev.ringout.harness.Harness;
import dev.ringout.intake.HarnessReader;
import dev.ringout.intake.LostCase;
import dev.ringout.intake.ReadingsReader;
import dev.ringout.readings.ReadingSet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A unit and its test sheet as a test writes them down: rows of text, read through real files. */
public final class UnitUnderTest {
  private static final Map<String, String> HEADINGS =
      Map.of(
          "wires", "Wire,From,To,Gauge,Length,From Contact,To Contact,Group,Cable,Wire Type",
          "pins", "Ref,Pin,Size",
          "links", "Ref,Pin,To Pin",
          "switches", "Ref,State,Pin,To Pin",
          "parts", "Ref,Pin,To Pin,Kind,Ohms,Tolerance %,Max Test Volts",
          "limits", "Name,Value,Unit,Net",
          "header", "Name,Value",
          "continuity", "From,To,State,Reading,Time,Reverse",
          "insulation", "From,To,State,Volts,Reading,Unit",
          "job", "Name,Value,Unit");

  private final Path folder;
  private final Map<String, List<String>> sheets = new LinkedHashMap<>();

  /** A unit whose files go into a temporary folder. */
  public UnitUnderTest(Path folder) {
    this.folder = folder;
  }

  private UnitUnderTest row(String sheet, String row) {
    sheets.computeIfAbsent(sheet, name -> new ArrayList<>()).add(row);
    return this;
  }

  /** {@code W1,J1-A,P2-1,20,4 ft}. */
  public UnitUnderTest wire(String row) {
    return row("wires", row);
  }

  /** {@code W1,J1-A,P2-1,20,4 ft} of a cable. */
  public UnitUnderTest wireInCable(String row, String cable) {
    return row("wires", row + ",,,," + cable);
  }

  /** {@code W1,J1-A,P2-1,20,4 ft} of a type, {@code 19/32 tinned}. */
  public UnitUnderTest wireOfType(String row, String type) {
    return row("wires", row + ",,,,," + type);
  }

  /** {@code TB1,4,5}. */
  public UnitUnderTest link(String row) {
    return row("links", row);
  }

  /** {@code J1,9,20}. */
  public UnitUnderTest pin(String row) {
    return row("pins", row);
  }

  /** {@code S1,CLEAR,1,2}. */
  public UnitUnderTest contact(String row) {
    return row("switches", row);
  }

  /** {@code DS1,1,2,lamp,40}. */
  public UnitUnderTest part(String row) {
    return row("parts", row);
  }

  /** {@code effectivity,0100 to 0200}. */
  public UnitUnderTest header(String row) {
    return row("header", row);
  }

  /** {@code insulation min,100,MΩ}. */
  public UnitUnderTest limit(String row) {
    return row("limits", row);
  }

  /** {@code insulation min,20,MΩ,J1-A}. */
  public UnitUnderTest netLimit(String row) {
    return row("limits", row);
  }

  /** A list that asks for no insulation test. */
  public UnitUnderTest withoutInsulationTest() {
    return limit("insulation test,none");
  }

  /** An insulation reading at other volts. */
  public UnitUnderTest insulationAt(String volts, String from, String to, String reading) {
    return row("insulation", from + "," + to + ",," + volts + "," + reading + ",");
  }

  /** {@code insulation range,20,MΩ}. */
  public UnitUnderTest job(String row) {
    return row("job", row);
  }

  /** A continuity reading in the normal state. */
  public UnitUnderTest reads(String from, String to, String reading) {
    return row("continuity", from + "," + to + ",," + reading);
  }

  /** A continuity reading and what was read with the leads exchanged. */
  public UnitUnderTest readsBothWays(String from, String to, String reading, String reverse) {
    return row("continuity", from + "," + to + ",," + reading + ",," + reverse);
  }

  /** A continuity reading in a state of the switches. */
  public UnitUnderTest readsIn(String state, String from, String to, String reading) {
    return row("continuity", from + "," + to + "," + state + "," + reading);
  }

  /** A continuity reading with its time. */
  public UnitUnderTest readsAt(String time, String from, String to, String reading) {
    return row("continuity", from + "," + to + ",," + reading + "," + time);
  }

  /** An insulation reading at 500 V. */
  public UnitUnderTest insulation(String from, String to, String reading) {
    return row("insulation", from + "," + to + ",,500," + reading + ",");
  }

  private boolean isOfTheTestSheet(String sheet) {
    return List.of("continuity", "insulation", "job").contains(sheet);
  }

  private void write() {
    try {
      for (Map.Entry<String, List<String>> sheet : sheets.entrySet()) {
        Path parent = folder.resolve(isOfTheTestSheet(sheet.getKey()) ? "readings" : "harness");
        Files.createDirectories(parent);
        List<String> lines = new ArrayList<>();
        lines.add(HEADINGS.getOrDefault(sheet.getKey(), ""));
        lines.addAll(sheet.getValue());
        Files.write(parent.resolve(sheet.getKey() + ".csv"), lines);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads both files and checks the unit; the files must hold no error. */
  public CheckResult check() {
    Problems problems = new Problems();
    CheckResult result = check(problems);
    if (problems.hasErrors()) {
      throw new AssertionError("problems in the files: " + problems.list());
    }
    return result;
  }

  /** Reads both files and gives what is wrong in them. */
  public List<Problem> problems() {
    Problems problems = new Problems();
    check(problems);
    return problems.list();
  }

  private CheckResult check(Problems problems) {
    write();
    Harness harness = harness(problems);
    ReadingsReader reader = new ReadingsReader(harness, problems);
    try (TabularFile file = TabularFile.open(folder.resolve("readings"), "readings", problems)) {
      reader.read(file, "readings");
    } catch (UnusableInput | IOException e) {
      throw new AssertionError(e);
    }
    ReadingSet readings = reader.readings();
    LostCase.report(harness, readings, problems);
    return CheckResult.of(harness, readings, problems.list());
  }

  private Harness harness(Problems problems) {
    try (TabularFile file = TabularFile.open(folder.resolve("harness"), "harness", problems)) {
      return HarnessReader.read(file, "harness", problems);
    } catch (UnusableInput | IOException e) {
      throw new AssertionError(e);
    }
  }

  /** The harness alone. */
  public Harness harness() {
    write();
    return harness(new Problems());
  }
}
