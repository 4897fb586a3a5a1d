package dev.ringout.sheet;

import java.util.Map;
import org.xml.sax.Attributes;

/**
 * Names of OpenDocument, whatever prefixes a file has for them: here they are called by those of
 * the standard's own text.
 */
final class OdsNames {
  private static final String ODF = "urn:oasis:names:tc:opendocument:xmlns:";

  private static final Map<String, String> PREFIXES =
      Map.of(
          ODF + "office:1.0",
          "office:",
          ODF + "table:1.0",
          "table:",
          ODF + "text:1.0",
          "text:",
          ODF + "style:1.0",
          "style:",
          ODF + "drawing:1.0",
          "draw:",
          ODF + "xsl-fo-compatible:1.0",
          "fo:",
          "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0",
          "calcext:");

  private OdsNames() {}

  /** An element's name; of another vocabulary the bare name. */
  static String of(String uri, String local) {
    return PREFIXES.getOrDefault(uri, "") + local;
  }

  /** The value of an attribute by its name, or empty. */
  static String value(Attributes attributes, String name) {
    for (int i = 0; i < attributes.getLength(); i++) {
      if (name.endsWith(attributes.getLocalName(i))
          && name.equals(of(attributes.getURI(i), attributes.getLocalName(i)))) {
        return attributes.getValue(i);
      }
    }
    return "";
  }
}
