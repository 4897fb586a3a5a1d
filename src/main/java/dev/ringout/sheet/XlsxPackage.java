package dev.ringout.sheet;

import com.fasterxml.aalto.sax.SAXParserFactoryImpl;
import java.io.Closeable;
import java.io.FileNotFoundException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.xml.sax.Attributes;
import org.xml.sax.ContentHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The parts of a workbook file: XML in a zip, each part with a list of those it refers to (ECMA-376
 * part 2, Open Packaging Conventions). Read here rather than through the workbook library, which
 * takes a third of a short check to open its own.
 */
final class XlsxPackage implements Closeable {
  /** What refers to the workbook itself: the package as a whole. */
  static final String WHOLE = "";

  /** A part of less than this may be packed as tightly as it likes. */
  private static final long GRACE_BYTES = 100 * 1024;

  private static final long MOST_UNPACKED_OF_A_PACKED_BYTE = 100;

  private final ZipFile zip;
  private final Map<String, ZipEntry> parts = new HashMap<>();
  private final Map<String, List<Reference>> references = new HashMap<>();

  /**
   * A part that another refers to.
   *
   * @param kind the last word of the reference's type, the same in both editions of the standard
   */
  private record Reference(String id, String kind, String part) {}

  /** A part unpacks to far more than a wire list would. */
  static final class Bomb extends IOException {
    private static final long serialVersionUID = 1L;

    Bomb(String part) {
      super(part + " unpacks to far too much");
    }
  }

  XlsxPackage(Path file) throws IOException {
    zip = new ZipFile(file.toFile());
    for (ZipEntry entry : Collections.list(zip.entries())) {
      parts.putIfAbsent(key(entry.getName()), entry);
    }
  }

  /** Names of parts are one whatever their case. */
  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
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
    return parts.containsKey(key(part));
  }

  /** Reads a part's XML to its end. */
  void parse(String part, ContentHandler handler) throws IOException, SAXException {
    ZipEntry entry = parts.get(key(part));
    if (entry == null) {
      throw new FileNotFoundException("its part " + part + " is not there");
    }
    try (Unpacked in = new Unpacked(zip.getInputStream(entry), entry)) {
      // Half the time of Java's own parser; it resolves no external entities at all.
      XMLReader xml = new SAXParserFactoryImpl().newSAXParser().getXMLReader();
      xml.setContentHandler(handler);
      try {
        xml.parse(new InputSource(in));
      } catch (SAXException e) {
        // The parser wraps what the stream throws.
        if (in.isTooMuch()) {
          throw new Bomb(part);
        }
        throw e;
      }
    }
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }

  /** A part as it is unpacked, with an eye on how much that is. */
  private static final class Unpacked extends FilterInputStream {
    private final ZipEntry entry;
    private long bytes;

    Unpacked(InputStream in, ZipEntry entry) {
      super(in);
      this.entry = entry;
    }

    @Override
    public int read() throws IOException {
      int read = super.read();
      count(read < 0 ? 0 : 1);
      return read;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
      int read = super.read(into, offset, length);
      count(Math.max(0, read));
      return read;
    }

    private void count(int more) throws IOException {
      bytes += more;
      if (isTooMuch()) {
        throw new Bomb(entry.getName());
      }
    }

    boolean isTooMuch() {
      return bytes > GRACE_BYTES
          && bytes > MOST_UNPACKED_OF_A_PACKED_BYTE * Math.max(1, entry.getCompressedSize());
    }
  }
}
