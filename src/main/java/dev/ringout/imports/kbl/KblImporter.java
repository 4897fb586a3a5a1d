package dev.ringout.imports.kbl;

import dev.ringout.harness.Item;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wiring;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.RowCounts;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.imports.list.KblOddity;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.SheetOddity;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads a harness file in KBL (VDA 4964, editions 2.3 to 2.5). */
public final class KblImporter {
  private static final int NAMED = 4;

  private final KblXml.Content content;
  private final Modules modules;
  private final References references;
  private final Findings findings;
  private final Contacts contacts;
  private final WireFacts facts;

  private KblImporter(KblXml.Content content, String shownName, Set<String> asked) {
    this.content = content;
    this.modules = new Modules(content.root(), asked);
    this.references = new References(content);
    this.findings = new Findings(shownName);
    this.contacts = new Contacts(references, findings);
    this.facts = new WireFacts(content.root(), references, findings);
  }

  /**
   * Whether a file is for this reader: by its outermost element, whatever the file is called; and
   * any other that is called like one, which is refused with a word rather than taken for a table.
   *
   * @throws IOException where it can't be looked into
   */
  public static boolean is(Path file) throws IOException {
    String called = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    boolean calledSo = called.endsWith(".kbl") || called.endsWith(".xml");
    return (calledSo && Files.isRegularFile(file))
        || KblXml.outermost(file).filter(KblXml.ROOT::equals).isPresent();
  }

  /**
   * Reads a file.
   *
   * @param modules modules by part number or id, whose connections are read; none for all
   * @throws UnusableInput where the file is no harness file, is damaged, or has no such module
   */
  public static ImportResult read(Path file, String shownName, Set<String> modules)
      throws UnusableInput {
    KblImporter importer = new KblImporter(KblXml.read(file, shownName), shownName, modules);
    importer.refuseUnknownModules(shownName);
    return importer.read();
  }

  private void refuseUnknownModules(String shownName) throws UnusableInput {
    if (!modules.notThere().isEmpty()) {
      throw new UnusableInput(
          shownName,
          Reason.NOT_UNDERSTOOD,
          "holds no module "
              + String.join(", ", modules.notThere())
              + (modules.count() == 0
                  ? "; it has none at all"
                  : "; it has " + String.join(", ", modules.names())));
    }
  }

  private ImportResult read() {
    Connections connections =
        new Connections(content, modules, references, contacts, facts, findings);
    connections.readAll();
    facts.report();
    sayOfTheWhole(connections);
    List<Holder> holders = holders(connections.used());
    Wiring wiring =
        new Wiring(
            connections.wires(),
            items(holders),
            unusedPins(holders, connections),
            connections.links());
    int skipped = connections.skipped().size();
    SheetReport report =
        new SheetReport(
            title(),
            "",
            0,
            Layout.CONNECTIONS,
            List.of(),
            new RowCounts(connections.read() + skipped, connections.read(), 0, 0, 0, 0, skipped),
            connections.read(),
            connections.skipped());
    return new ImportResult(
        List.of(report),
        wiring,
        findings.list(),
        ImportResult.EndsFound.NONE,
        List.of(),
        List.of(),
        List.of());
  }

  private String title() {
    return content
        .root()
        .child("Harness")
        .map(one -> (one.said("Part_number") + " " + one.said("Description")).strip())
        .filter(title -> !title.isEmpty())
        .orElse("Harness");
  }

  private void sayOfTheWhole(Connections connections) {
    Element root = content.root();
    if (!content.edition().isEmpty() && !content.edition().matches("2\\.[345]\\b.*")) {
      findings.note(root, new KblOddity.EditionNotKnown(content.edition()));
    }
    if (connections.wires().isEmpty()) {
      findings.warning(root, new SheetOddity.NoWires());
    }
    sayModules(connections);
    sayDangling();
    sayUnconnected();
    int boxes = inHarness(Holder.BOX).size();
    int components = inHarness("Component_occurrence").size();
    if (boxes + components > 0) {
      findings.note(root, new KblOddity.PartsNotRead(boxes, components));
    }
  }

  private void sayModules(Connections connections) {
    Element root = content.root();
    if (modules.anyChosen()) {
      findings.note(
          root,
          new KblOddity.ModulesChosen(
              modules.chosenNames(),
              connections.read(),
              (int) connections.skipped().stream().filter(row -> !row.lost()).count()));
      if (connections.ofNoModule() > 0) {
        findings.warning(root, new KblOddity.OfNoModule(connections.ofNoModule()));
      }
    } else if (modules.count() > 1) {
      findings.warning(
          root,
          new KblOddity.AllModules(
              modules.count(), modules.names().stream().limit(NAMED).toList()));
    }
  }

  private List<Element> inHarness(String kind) {
    return content.root().within(kind).stream()
        .filter(one -> one.in("Harness").isPresent())
        .toList();
  }

  /** What a module controls and is not there may have been a wire. */
  private void sayDangling() {
    String role = "Controlled_components";
    for (Element module : modules.all()) {
      for (Element configuration : module.children("Module_configuration")) {
        List<String> gone =
            configuration.references(role).stream().filter(id -> !references.isThere(id)).toList();
        if (!gone.isEmpty()) {
          findings.warning(
              configuration,
              new KblOddity.ReferencesNotThere(
                  configuration.name(),
                  configuration.id(),
                  role,
                  gone.size(),
                  gone.stream().limit(NAMED).toList()));
        }
      }
    }
  }

  /** Wires and cores that no connection has, and that are not said to be spare. */
  private void sayUnconnected() {
    Set<String> connected =
        content.root().within("Connection").stream()
            .flatMap(one -> one.references("Wire").stream())
            .collect(Collectors.toSet());
    List<String> idle = new ArrayList<>();
    for (Element wire : inHarness(WireFacts.WIRE)) {
      List<Element> cores = wire.children(WireFacts.CORE);
      for (Element one : cores.isEmpty() ? List.of(wire) : cores) {
        if (!connected.contains(one.id())
            && !connected.contains(wire.id())
            && !one.said("Unconnected").equals("true")
            && modules.takes(wire.id())) {
          String name = WireFacts.name(one, one);
          idle.add(name.isEmpty() ? one.id() : name);
        }
      }
    }
    if (!idle.isEmpty()) {
      findings.warning(
          content.root(),
          new KblOddity.NotConnected(idle.size(), idle.stream().limit(NAMED).toList()));
    }
  }

  /** Those with wires first, then those without that the chosen modules have. */
  private List<Holder> holders(Set<Holder> used) {
    Map<String, Holder> byName = new LinkedHashMap<>();
    used.forEach(holder -> byName.putIfAbsent(holder.key(), holder));
    for (Element occurrence : inHarness(Holder.CONNECTOR)) {
      Holder holder = contacts.holder(occurrence);
      if (!holder.name().isEmpty() && modules.takes(occurrence.id())) {
        byName.putIfAbsent(holder.key(), holder);
      }
    }
    return List.copyOf(byName.values());
  }

  private List<Item> items(List<Holder> holders) {
    return holders.stream().map(one -> one.item(findings.of(one.occurrence()))).toList();
  }

  /** Cavities of connectors that no wire reaches: they are points of the unit all the same. */
  private List<PinDetail> unusedPins(List<Holder> holders, Connections connections) {
    Set<Point> wired = new HashSet<>();
    connections.wires().forEach(wire -> wired.addAll(List.of(wire.from(), wire.to())));
    connections.links().forEach(link -> wired.addAll(List.of(link.from(), link.to())));
    List<PinDetail> unused = new ArrayList<>();
    for (Holder holder : holders) {
      for (String pin :
          holder.occurrence().is(Holder.CONNECTOR) ? holder.pins() : List.<String>of()) {
        Point point = new Point(holder.name(), pin);
        if (!wired.contains(point)) {
          unused.add(
              new PinDetail(
                  point,
                  "",
                  "",
                  OptionalDouble.empty(),
                  OptionalDouble.empty(),
                  "",
                  findings.of(holder.occurrence())));
        }
      }
    }
    return List.copyOf(unused);
  }
}
