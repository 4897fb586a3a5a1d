package dev.ringout.imports.kbl;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The modules of a harness, what each controls, and which of them are asked for. */
final class Modules {
  private final List<Element> all;
  private final Set<Element> chosen = new LinkedHashSet<>();
  private final Map<String, Set<Element>> controlling = new HashMap<>();
  private final List<String> notThere = new ArrayList<>();

  /**
   * The modules of a file.
   *
   * @param asked by part number, by id, or by what their configuration is called; none for all
   */
  Modules(Element root, Set<String> asked) {
    all = root.within("Module");
    for (Element module : all) {
      for (Element configuration : module.children("Module_configuration")) {
        for (String id : configuration.references("Controlled_components")) {
          controlling.computeIfAbsent(id, one -> new LinkedHashSet<>()).add(module);
        }
      }
    }
    for (String name : asked) {
      List<Element> meant = all.stream().filter(module -> isCalled(module, name)).toList();
      if (meant.isEmpty()) {
        notThere.add(name);
      }
      chosen.addAll(meant);
    }
  }

  private static boolean isCalled(Element module, String name) {
    return module.id().equals(name)
        || module.said("Part_number").equalsIgnoreCase(name)
        || module.children("Module_configuration").stream()
            .anyMatch(one -> one.said("Logistic_control_information").equalsIgnoreCase(name));
  }

  /** What was asked for and is not there. */
  List<String> notThere() {
    return List.copyOf(notThere);
  }

  int count() {
    return all.size();
  }

  /** The modules of the file, by part number where they have one. */
  List<String> names() {
    return all.stream().map(Modules::name).toList();
  }

  List<String> chosenNames() {
    return chosen.stream().map(Modules::name).toList();
  }

  private static String name(Element module) {
    String number = module.said("Part_number");
    return number.isEmpty() ? module.id() : number;
  }

  boolean anyChosen() {
    return !chosen.isEmpty();
  }

  List<Element> all() {
    return all;
  }

  /** Whether an element is in one of the chosen modules; in any, where none is chosen. */
  boolean takes(String id) {
    return chosen.isEmpty() || of(id).stream().anyMatch(chosen::contains);
  }

  /** The modules that control an element. */
  Set<Element> of(String id) {
    return controlling.getOrDefault(id, Set.of());
  }

  /**
   * The modules of a connection: those that control it, else those that control its wire, or the
   * cable of its wire.
   */
  Set<Element> ofConnection(Element connection, KblXml.Content content) {
    Set<Element> own = of(connection.id());
    if (!own.isEmpty()) {
      return own;
    }
    for (String wire : connection.references("Wire")) {
      Set<Element> ofWire = of(wire);
      if (!ofWire.isEmpty()) {
        return ofWire;
      }
      Element core = content.byId().get(wire);
      if (core != null) {
        return core.in("General_wire_occurrence").map(cable -> of(cable.id())).orElse(Set.of());
      }
    }
    return Set.of();
  }

  boolean takesAny(Set<Element> modules) {
    return chosen.isEmpty() || modules.stream().anyMatch(chosen::contains);
  }
}
