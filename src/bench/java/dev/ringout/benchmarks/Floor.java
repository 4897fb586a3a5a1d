package dev.ringout.benchmarks;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The least that reading a file takes: a bare scan of its sheets, or of its records. */
public final class Floor {
  private Floor() {}

  /**
   * Arguments: {@code hello} for a start and no more; else {@code own} for Java's own XML reader or
   * {@code fast} for the one that ringout uses, and files.
   */
  public static void main(String[] args) throws IOException, XMLStreamException {
    if (args[0].equals("hello")) {
      System.out.println("hello");
      return;
    }
    XMLInputFactory factory =
        args[0].equals("own") ? XMLInputFactory.newDefaultFactory() : XMLInputFactory.newFactory();
    long count = 0;
    for (int i = 1; i < args.length; i++) {
      Path file = Path.of(args[i]);
      count += args[i].endsWith(".csv") ? fields(file) : events(file, factory);
    }
    System.out.println(count);
  }

  private static long events(Path file, XMLInputFactory factory)
      throws IOException, XMLStreamException {
    long events = 0;
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        if (entry.getName().startsWith("xl/worksheets/sheet")) {
          try (InputStream in = zip.getInputStream(entry)) {
            XMLStreamReader xml = factory.createXMLStreamReader(in);
            while (xml.hasNext()) {
              xml.next();
              events++;
            }
          }
        }
      }
    }
    return events;
  }

  private static long fields(Path file) throws IOException {
    long fields = 0;
    try (CsvReader<CsvRecord> records = CsvReader.builder().ofCsvRecord(file)) {
      for (CsvRecord one : records) {
        fields += one.getFieldCount();
      }
    }
    return fields;
  }
}
