package dev.ringout.imports.kbl;

import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads the XML of a harness file as a stream: it keeps what wires need, and of all else the ids
 * alone. No DTD, so no entities; bounded in size, depth and number of elements.
 */
final class KblXml {
  /** The outermost element of every edition, whatever its namespace and prefix. */
  static final String ROOT = "KBL_container";

  static final long MOST_BYTES = 256L * 1024 * 1024;
  static final int MOST_DEEP = 64;
  private static final int MOST_ELEMENTS = 4_000_000;

  /** Where things lie and run, what they weigh, who changed them: most of a file. */
  private static final Set<String> NOT_NEEDED =
      Set.of(
          "Alias_id",
          "Approval",
          "Cartesian_point",
          "Change",
          "Change_description",
          "Creation",
          "Dimension_specification",
          "Default_dimension_specification",
          "External_reference",
          "Fixing",
          "Fixing_occurrence",
          "Installation_information",
          "Localized_description",
          "Mass_information",
          "Material_information",
          "Node",
          "Placement",
          "Processing_information",
          "Routing",
          "Segment",
          "Wire_protection",
          "Wire_protection_occurrence");

  private final String shownName;
  private final Map<String, Element> byId = new HashMap<>();
  private final Map<String, String> otherIds = new HashMap<>();
  private final List<Element> idsUsedAgain = new ArrayList<>();
  private int elements;

  private KblXml(String shownName) {
    this.shownName = shownName;
  }

  /**
   * A file.
   *
   * @param edition what it says of its edition, or empty
   * @param byId the elements that were kept
   * @param otherIds of all others the ids, and the elements' names
   * @param idsUsedAgain elements with an id that one before has
   */
  record Content(
      Element root,
      String edition,
      Map<String, Element> byId,
      Map<String, String> otherIds,
      List<Element> idsUsedAgain) {}

  private static XMLStreamReader reader(Reader in) throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("nothing outside the file is read");
        });
    return factory.createXMLStreamReader(in);
  }

  /** The name of the outermost element; empty where the file is no XML. */
  static Optional<String> outermost(Path file) throws IOException {
    if (!Files.isRegularFile(file) || !Files.isReadable(file) || !XmlText.beginsLikeXml(file)) {
      return Optional.empty();
    }
    try (Reader in = XmlText.openToLookInto(file)) {
      XMLStreamReader xml = reader(in);
      while (xml.hasNext()) {
        if (xml.next() == XMLStreamConstants.START_ELEMENT) {
          return Optional.of(xml.getLocalName());
        }
      }
      return Optional.empty();
    } catch (XMLStreamException | RuntimeException e) {
      // A table, a picture, anything: not for this reader.
      return Optional.empty();
    }
  }

  /**
   * Reads a file to its end.
   *
   * @throws UnusableInput where it is damaged, or holds what no harness file does
   */
  static Content read(Path file, String shownName) throws UnusableInput {
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw refused(shownName, "is larger than any harness file (256 MiB); not read");
      }
      try (Reader in = XmlText.open(file)) {
        return new KblXml(shownName).content(reader(in));
      }
    } catch (XMLStreamException e) {
      throw e.getNestedException() instanceof CharacterCodingException
          ? notInItsEncoding(shownName)
          : damaged(shownName, e);
    } catch (CharacterCodingException e) {
      throw notInItsEncoding(shownName);
    } catch (AccessDeniedException e) {
      throw new UnusableInput(shownName, Reason.MISSING, "may not be read: permission denied");
    } catch (IOException e) {
      throw new UnusableInput(shownName, Reason.MISSING, "can't be read: " + e.getMessage());
    } catch (RuntimeException e) {
      throw refused(shownName, "is damaged XML: " + e.getMessage());
    }
  }

  private static UnusableInput refused(String shownName, String text) {
    return new UnusableInput(shownName, Reason.NOT_UNDERSTOOD, text);
  }

  private static UnusableInput notInItsEncoding(String shownName) {
    return refused(
        shownName, "holds bytes that are no letters in the encoding that it names (else UTF-8)");
  }

  private static UnusableInput damaged(String shownName, XMLStreamException e) {
    String message = String.valueOf(e.getMessage());
    int said = message.indexOf("Message: ");
    int line = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
    return refused(
        shownName,
        "is damaged XML"
            + (line > 0 ? " in line " + line : "")
            + ": "
            + (said < 0 ? message : message.substring(said + "Message: ".length())).strip());
  }

  private Content content(XMLStreamReader xml) throws XMLStreamException, UnusableInput {
    Optional<Element> root = Optional.empty();
    String edition = "";
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
        throw refused(
            shownName, "declares or uses entities (a DTD), as no harness file does; not read");
      }
      if (event == XMLStreamConstants.START_ELEMENT) {
        if (!xml.getLocalName().equals(ROOT)) {
          throw refused(
              shownName,
              "is XML, but no harness file: its outermost element is "
                  + xml.getLocalName()
                  + ", not "
                  + ROOT);
        }
        edition = attribute(xml, "version_id");
        root = Optional.of(element(xml, Optional.empty()));
        whole(xml, root.get());
      }
    }
    return new Content(
        root.orElseThrow(() -> refused(shownName, "is XML without an element")),
        edition,
        byId,
        otherIds,
        idsUsedAgain);
  }

  /** All that is in the outermost element. */
  private void whole(XMLStreamReader xml, Element root) throws XMLStreamException, UnusableInput {
    Element at = root;
    StringBuilder text = new StringBuilder();
    int deep = 1;
    while (deep > 0) {
      switch (xml.next()) {
        case XMLStreamConstants.START_ELEMENT -> {
          text.setLength(0);
          if (NOT_NEEDED.contains(xml.getLocalName())) {
            pass(xml, deep);
          } else {
            at = element(xml, Optional.of(at));
            bound(++deep);
          }
        }
        case XMLStreamConstants.END_ELEMENT -> {
          at.say(text.toString().strip());
          text.setLength(0);
          at = at.parent().orElse(root);
          deep--;
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text.append(xml.getText());
        case XMLStreamConstants.ENTITY_REFERENCE ->
            throw refused(shownName, "uses entities, as no harness file does; not read");
        default -> {}
      }
    }
  }

  /** An element that is not needed: its ids alone. */
  private void pass(XMLStreamReader xml, int outside) throws XMLStreamException, UnusableInput {
    otherId(xml);
    int deep = 1;
    while (deep > 0) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        otherId(xml);
        bound(outside + ++deep);
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        deep--;
      }
    }
  }

  private void otherId(XMLStreamReader xml) throws UnusableInput {
    String id = attribute(xml, "id");
    if (!id.isEmpty()) {
      count();
      otherIds.putIfAbsent(id, xml.getLocalName());
    }
  }

  private void bound(int deep) throws UnusableInput {
    if (deep > MOST_DEEP) {
      throw refused(
          shownName, "holds elements in each other more than " + MOST_DEEP + " deep; not read");
    }
  }

  private void count() throws UnusableInput {
    if (++elements > MOST_ELEMENTS) {
      throw refused(shownName, "holds more elements than any harness; not read");
    }
  }

  private Element element(XMLStreamReader xml, Optional<Element> in) throws UnusableInput {
    count();
    String id = attribute(xml, "id");
    Element element = new Element(xml.getLocalName(), id, xml.getLocation().getLineNumber(), in);
    if (!id.isEmpty() && byId.putIfAbsent(id, element) != null) {
      idsUsedAgain.add(element);
    }
    return element;
  }

  private static String attribute(XMLStreamReader xml, String name) {
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      if (xml.getAttributeLocalName(i).equals(name)) {
        return xml.getAttributeValue(i).strip();
      }
    }
    return "";
  }
}
