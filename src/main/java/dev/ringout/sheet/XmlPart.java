package dev.ringout.sheet;

import com.fasterxml.aalto.sax.SAXParserFactoryImpl;
import java.io.IOException;
import org.xml.sax.ContentHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;

/** A part of a packed file that is XML. */
final class XmlPart {
  private XmlPart() {}

  /** Reads it to its end. */
  static void parse(ZipParts zip, String part, ContentHandler handler)
      throws IOException, SAXException {
    try (ZipParts.Unpacked in = zip.open(part)) {
      XMLReader xml = reader();
      xml.setContentHandler(handler);
      try {
        xml.parse(new InputSource(in.kept()));
        in.finish();
      } catch (SAXException e) {
        // The parser wraps what the stream throws.
        if (in.isTooMuch()) {
          throw new ZipParts.Bomb(part);
        }
        throw e;
      }
    }
  }

  /** Half the time of Java's own parser; it resolves no external entities at all. */
  private static XMLReader reader() throws SAXException {
    return new SAXParserFactoryImpl().newSAXParser().getXMLReader();
  }
}
