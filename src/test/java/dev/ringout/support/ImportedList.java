package dev.ringout.support;

import dev.ringout.harness.Link;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Wire;
import dev.ringout.imports.ListImporter;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.RowCounts;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.imports.list.Words;
import dev.ringout.intake.HarnessReader;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.words.ImportWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** A list that was imported, with what a test wants to know of it. */
public record ImportedList(ImportResult result, List<Problem> fileProblems) {

  /** Reads a list without options. */
  public static ImportedList of(Path file) throws Exception {
    return of(file, ImportOptions.none());
  }

  /** Reads a list. */
  public static ImportedList of(Path file, ImportOptions options) throws Exception {
    Problems problems = new Problems();
    String name = String.valueOf(file.getFileName());
    try (TabularFile table = TabularFile.open(file, name, problems)) {
      ImportResult result =
          ListImporter.read(table, name, Words.standard(), options, HarnessReader::noteHeading);
      return new ImportedList(result, problems.list());
    }
  }

  public List<Wire> wires() {
    return result.wiring().wires();
  }

  /** Wires as {@code J1-A > P2-3}. */
  public List<String> ends() {
    return wires().stream().map(wire -> wire.from() + " > " + wire.to()).toList();
  }

  public List<String> pins() {
    return result.wiring().pins().stream().map(PinDetail::point).map(Object::toString).toList();
  }

  public List<Link> links() {
    return result.wiring().links();
  }

  /** The tables of a sheet. */
  public List<SheetReport> sheet(String name) {
    return result.sheets().stream().filter(sheet -> sheet.sheet().strip().equals(name)).toList();
  }

  /** The rows of the first table. */
  public RowCounts rows() {
    return result.sheets().get(0).rows();
  }

  /** Findings as {@code error date A3: text; maybe …}. */
  public List<String> findings() {
    return result.findings().stream()
        .map(
            finding ->
                finding.severity().word()
                    + " "
                    + finding.kind().word()
                    + " "
                    + finding.place().cell()
                    + ": "
                    + ImportWords.problem(finding).sentence())
        .toList();
  }

  public boolean finds(String words) {
    return findings().stream().anyMatch(finding -> finding.contains(words));
  }

  /** Every point with everything that is joined to it, in natural order. */
  public Map<String, Set<String>> nets() {
    Map<String, String> parent = new HashMap<>();
    for (Wire wire : wires()) {
      union(parent, wire.from().toString(), wire.to().toString());
    }
    for (Link link : links()) {
      union(parent, link.from().toString(), link.to().toString());
    }
    Map<String, Set<String>> members = new LinkedHashMap<>();
    for (String point : parent.keySet()) {
      members.computeIfAbsent(root(parent, point), key -> new TreeSet<>()).add(point);
    }
    Map<String, Set<String>> nets = new HashMap<>();
    members.values().forEach(net -> net.forEach(point -> nets.put(point, net)));
    return nets;
  }

  /** Everything that is joined to a point; empty where it is joined to nothing. */
  public Set<String> net(String point) {
    return nets().getOrDefault(point, Set.of());
  }

  /** How many nets there are. */
  public int netCount() {
    return new ArrayList<>(new java.util.HashSet<>(nets().values())).size();
  }

  private static String root(Map<String, String> parent, String point) {
    String at = point;
    String up = parent.getOrDefault(at, at);
    while (!up.equals(at)) {
      at = up;
      up = parent.getOrDefault(at, at);
    }
    return at;
  }

  private static void union(Map<String, String> parent, String one, String other) {
    parent.putIfAbsent(one, one);
    parent.putIfAbsent(other, other);
    parent.put(root(parent, one), root(parent, other));
  }
}
