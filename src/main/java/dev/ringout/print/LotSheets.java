package dev.ringout.print;

import dev.ringout.lot.ByFactor;
import dev.ringout.lot.Counted;
import dev.ringout.lot.JoinSpread;
import dev.ringout.lot.Lot;
import dev.ringout.lot.LotUnit;
import dev.ringout.lot.Origin;
import dev.ringout.lot.SharedFault;
import dev.ringout.pictures.LotPicture;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.OutSheet.Look;
import dev.ringout.standards.Cautions;
import dev.ringout.units.Numbers;
import dev.ringout.words.FaultSentences;
import dev.ringout.words.LotWords;
import dev.ringout.words.UnitTitle;
import java.util.ArrayList;
import java.util.List;

/** Many units side by side as sheets: for a workbook, a page or a PDF. */
public final class LotSheets {
  private final Lot lot;
  private final String title;

  private LotSheets(Lot lot) {
    this.lot = lot;
    this.title = UnitTitle.of(lot.harness());
  }

  /** Every sheet that has something to say. */
  public static List<OutSheet> of(Lot lot) {
    LotSheets of = new LotSheets(lot);
    List<OutSheet> sheets = new ArrayList<>();
    sheets.add(of.first());
    sheets.add(of.outstanding());
    sheets.add(of.units());
    sheets.add(of.shared());
    sheets.add(of.levels());
    sheets.add(of.counted("Kinds", "Kind of fault", lot.kinds()));
    sheets.add(of.counted("Places", "Item", lot.places()));
    sheets.add(of.joins());
    sheets.removeIf(sheet -> sheet.rows().isEmpty());
    return sheets;
  }

  private OutSheet first() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("units", LotWords.verdict(lot)));
    rows.add(List.of("passed at once", LotWords.firstPass(lot)));
    LotWords.limits(lot).forEach(limit -> rows.add(List.of("few units", limit)));
    lot.sameValues().forEach(units -> rows.add(List.of("copied!", LotWords.sameValues(units))));
    lot.outstanding().stream()
        .limit(5)
        .forEach(one -> rows.add(List.of("stands out", LotWords.outstanding(one))));
    for (SharedFault shared : lot.shared()) {
      if (shared.isMoreThanChance()) {
        rows.add(List.of("shared", LotWords.shared(shared) + " " + LotWords.suspect(shared)));
      }
    }
    lot.drift().ifPresent(drift -> rows.add(List.of("from day to day", LotWords.drift(drift))));
    lot.factors().stream()
        .filter(ByFactor::differs)
        .forEach(by -> rows.add(List.of("by " + by.factor().word(), LotWords.factor(by))));
    Cautions.published(true).forEach(one -> rows.add(List.of("caution", one.text())));
    String pictures =
        LotPicture.faults(lot).orElse("")
            + LotPicture.counted("Kinds of fault", lot.kinds(), true).orElse("");
    return new OutSheet(
        "Lot", List.of("About", "What to know"), rows, Look.printed(title).withPicture(pictures));
  }

  private OutSheet units() {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < lot.units().size(); i++) {
      LotUnit unit = lot.units().get(i);
      rows.add(
          List.of(
              unit.name(),
              LotWords.verdict(unit),
              LotWords.what(unit),
              LotWords.milliohms(lot.levelsOhms().get(i)),
              unit.origin().day().map(Object::toString).orElse(""),
              unit.origin().of(Origin.Factor.STATION),
              unit.origin().of(Origin.Factor.METER),
              unit.origin().of(Origin.Factor.PERSON),
              unit.origin().of(Origin.Factor.CRIMP_TOOL),
              String.join(", ", unit.files())));
    }
    for (Lot.Refused refused : lot.refused()) {
      rows.add(
          List.of(
              refused.name(),
              "can't be checked",
              Numbers.count(refused.problems().size(), "problem") + " in its files",
              "",
              "",
              "",
              "",
              "",
              "",
              String.join(", ", refused.files())));
    }
    return new OutSheet(
        "Units",
        List.of(
            "Unit",
            "Verdict",
            "What",
            "Level mΩ",
            "Day",
            "Station",
            "Meter",
            "By",
            "Crimp tool",
            "Files"),
        rows,
        Look.printed(title).withNumbers(3).withFilter());
  }

  private OutSheet shared() {
    List<List<String>> rows = new ArrayList<>();
    for (SharedFault shared : lot.shared()) {
      rows.add(
          List.of(
              Integer.toString(shared.units().size()),
              shared.sort().word(),
              FaultSentences.summary(shared.fault()),
              String.join(", ", shared.units()),
              LotWords.suspect(shared)));
    }
    return new OutSheet(
        "Shared",
        List.of("Units", "Kind", "Fault", "Which", "Suspect"),
        rows,
        Look.printed(title).withNumbers(0));
  }

  private OutSheet outstanding() {
    List<List<String>> rows = new ArrayList<>();
    for (Lot.Outstanding one : lot.outstanding()) {
      rows.add(
          List.of(
              one.of().unit(),
              one.spread().join().toString(),
              LotWords.milliohms(one.of().ohms()),
              Numbers.rounded(one.of().score(), 3),
              Integer.toString(one.spread().units()),
              LotWords.byItself(one),
              one.of().value().judged().reading().place().toString()));
    }
    return new OutSheet(
        "Stand out",
        List.of("Unit", "Join", "Above mΩ", "Spreads", "Units", "Reading", "Cell"),
        rows,
        Look.printed(title).withNumbers(2, 3, 4).withPicture(LotPicture.joins(lot).orElse("")));
  }

  private OutSheet levels() {
    List<List<String>> rows = new ArrayList<>();
    for (ByFactor by : lot.factors()) {
      for (ByFactor.Group group : by.groups()) {
        rows.add(
            List.of(
                by.factor().word(),
                group.name(),
                Integer.toString(group.units()),
                Integer.toString(group.faulty()),
                LotWords.milliohms(group.levelOhms()),
                LotWords.factor(by)));
      }
    }
    return new OutSheet(
        "Levels",
        List.of("By", "Which", "Units", "With faults", "Level mΩ", "What it says"),
        rows,
        Look.printed(title).withNumbers(2, 3, 4).withPicture(LotPicture.levels(lot).orElse("")));
  }

  private OutSheet counted(String name, String heading, List<Counted> counted) {
    List<List<String>> rows = new ArrayList<>();
    for (Counted one : counted) {
      rows.add(List.of(one.name(), Integer.toString(one.faults()), Integer.toString(one.units())));
    }
    return new OutSheet(
        name, List.of(heading, "Faults", "Units"), rows, Look.printed(title).withNumbers(1, 2));
  }

  private OutSheet joins() {
    List<List<String>> rows = new ArrayList<>();
    for (JoinSpread spread : lot.joins()) {
      rows.add(
          List.of(
              spread.join().toString(),
              Integer.toString(spread.units()),
              LotWords.milliohms(spread.middleOhms()),
              LotWords.milliohms(spread.spreadOhms()),
              LotWords.milliohms(spread.lowOhms()),
              LotWords.milliohms(spread.highOhms()),
              spread.accounted() ? "" : "not known",
              String.join(
                  ", ", spread.outstanding().stream().map(JoinSpread.OfUnit::unit).toList())));
    }
    return new OutSheet(
        "Joins",
        List.of(
            "Join",
            "Units",
            "Middle mΩ",
            "Spread mΩ",
            "Least mΩ",
            "Most mΩ",
            "Wires",
            "Stands out"),
        rows,
        Look.printed(title).withNumbers(1, 2, 3, 4, 5).withFilter());
  }
}
