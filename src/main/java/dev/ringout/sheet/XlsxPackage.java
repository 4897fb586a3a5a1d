package dev.ringout.sheet;

import dev.ringout.source.FileBytes;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.xml.sax.Attributes;
import org.xml.sax.ContentHandler;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The parts of a workbook file: XML in a zip, each part with a list of those it refers to (ECMA-376
 * part 2, Open Packaging Conventions). Read here rather than through the workbook library, which
 * takes a third of a short check to open its own.
 */
final class XlsxPackage {
  /** What refers to the workbook itself: the package as a whole. */
  static final String WHOLE = "";

  private final ZipParts zip;
  private final Map<String, List<Reference>> references = new HashMap<>();

  /**
   * A part that another refers to.
   *
   * @param kind the last word of the reference's type, the same in both editions of the standard
   */
  private record Reference(String id, String kind, String part) {}

  XlsxPackage(FileBytes file) throws IOException {
    zip = new ZipParts(file);
  }

  /** The first part of a kind that a part refers to. */
  Optional<String> first(String from, String kind) throws IOException, SAXException {
    return all(from, kind).stream().findFirst();
  }

  /** Every part of a kind that a part refers to. */
  List<String> all(String from, String kind) throws IOException, SAXException {
    return references(from).stream()
        .filter(one -> one.kind().equals(kind))
        .map(Reference::part)
        .toList();
  }

  /** The part that a part refers to by this name. */
  Optional<String> byId(String from, String id) throws IOException, SAXException {
    return references(from).stream()
        .filter(one -> one.id().equals(id))
        .map(Reference::part)
        .findFirst();
  }

  private List<Reference> references(String from) throws IOException, SAXException {
    List<Reference> known = references.get(from);
    if (known == null) {
      known = new ArrayList<>();
      int name = from.lastIndexOf('/') + 1;
      String list = from.substring(0, name) + "_rels/" + from.substring(name) + ".rels";
      if (has(list)) {
        parse(list, new References(from, known));
      }
      references.put(from, known);
    }
    return known;
  }

  private static final class References extends DefaultHandler {
    private final String from;
    private final List<Reference> into;

    References(String from, List<Reference> into) {
      this.from = from;
      this.into = into;
    }

    @Override
    public void startElement(String uri, String local, String qualified, Attributes attributes) {
      String type = attributes.getValue("Type");
      String target = attributes.getValue("Target");
      String id = attributes.getValue("Id");
      if (local.equals("Relationship")
          && type != null
          && target != null
          && !"External".equals(attributes.getValue("TargetMode"))) {
        into.add(
            new Reference(
                id == null ? "" : id,
                type.substring(type.lastIndexOf('/') + 1),
                resolved(from, target)));
      }
    }
  }

  /** A target by the name of its part; it can't lead out of the package. */
  private static String resolved(String from, String target) {
    Deque<String> path = new ArrayDeque<>();
    String whole =
        target.startsWith("/") ? target : from.substring(0, from.lastIndexOf('/') + 1) + target;
    for (String step : whole.split("/", -1)) {
      if (step.equals("..")) {
        path.pollLast();
      } else if (!step.isEmpty() && !step.equals(".")) {
        path.addLast(step);
      }
    }
    return String.join("/", path);
  }

  boolean has(String part) {
    return zip.has(part);
  }

  /** Reads a part's XML to its end. */
  void parse(String part, ContentHandler handler) throws IOException, SAXException {
    XmlPart.parse(zip, part, handler);
  }
}
