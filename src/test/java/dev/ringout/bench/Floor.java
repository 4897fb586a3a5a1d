package dev.ringout.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The least that reading a file takes: a bare scan of its sheets, or of its lines and fields. */
public final class Floor {
  private Floor() {}

  /** Arguments: files; {@code hello} for a start and no more. */
  public static void main(String[] args) throws IOException, XMLStreamException {
    if (args[0].equals("hello")) {
      System.out.println("hello");
      return;
    }
    long count = 0;
    for (String file : args) {
      count += file.endsWith(".csv") ? fields(Path.of(file)) : events(Path.of(file));
    }
    System.out.println(count);
  }

  private static long events(Path file) throws IOException, XMLStreamException {
    long events = 0;
    XMLInputFactory factory = XMLInputFactory.newFactory();
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
    try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      String line = lines.readLine();
      while (line != null) {
        int from = 0;
        while (from >= 0) {
          fields++;
          int comma = line.indexOf(',', from);
          from = comma < 0 ? -1 : comma + 1;
        }
        line = lines.readLine();
      }
    }
    return fields;
  }
}
