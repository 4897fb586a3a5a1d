package dev.ringout.imports.kbl;

import dev.ringout.cells.CellText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** An element of the file, as far as it is needed. Names are those of the schema. */
final class Element {
  /** How files of some origins write that there is none. */
  private static final String NULL = "/NULL";

  private final String name;
  private final String id;
  private final int line;
  private final Optional<Element> parent;
  private final List<Element> children = new ArrayList<>(4);
  private String text = "";

  Element(String name, String id, int line, Optional<Element> parent) {
    this.name = name;
    this.id = id;
    this.line = line;
    this.parent = parent;
    parent.ifPresent(one -> one.children.add(this));
  }

  void say(String said) {
    text = said;
  }

  String name() {
    return name;
  }

  /** Its id; empty where it has none. */
  String id() {
    return id;
  }

  /** The line in which its start tag ends. */
  int line() {
    return line;
  }

  String text() {
    return text;
  }

  boolean is(String other) {
    return name.equals(other);
  }

  /** What it is in. */
  Optional<Element> parent() {
    return parent;
  }

  /** The nearest of these kinds that it is in. */
  Optional<Element> in(String... kinds) {
    List<String> wanted = List.of(kinds);
    Optional<Element> up = parent;
    while (up.isPresent() && !wanted.contains(up.get().name)) {
      up = up.get().parent;
    }
    return up;
  }

  List<Element> children(String kind) {
    return children.stream().filter(child -> child.is(kind)).toList();
  }

  Optional<Element> child(String kind) {
    return children.stream().filter(child -> child.is(kind)).findFirst();
  }

  /** The text of a child; empty where it is not there, empty, or said to be none. */
  String said(String kind) {
    String said = child(kind).map(child -> CellText.clean(child.text)).orElse("");
    return said.equals(NULL) ? "" : said;
  }

  /** The ids that its children of a kind refer to, in their order. */
  List<String> references(String role) {
    return children(role).stream()
        .flatMap(child -> Stream.of(child.text.strip().split("\\s+", -1)))
        .filter(id -> !id.isEmpty())
        .toList();
  }

  /** Everything of these kinds within it, in the order of the file. */
  List<Element> within(String... kinds) {
    List<Element> found = new ArrayList<>();
    within(List.of(kinds), found);
    return found;
  }

  private void within(List<String> kinds, List<Element> found) {
    for (Element child : children) {
      if (kinds.contains(child.name)) {
        found.add(child);
      }
      child.within(kinds, found);
    }
  }
}
