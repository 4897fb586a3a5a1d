package dev.ringout.benchmarks.damage;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** A file of any kind, damaged as its kind is made. */
final class FileDamage {
  private static final List<Charset> CHARSETS =
      List.of(
          StandardCharsets.UTF_8,
          StandardCharsets.UTF_16,
          StandardCharsets.UTF_16LE,
          StandardCharsets.ISO_8859_1,
          Charset.forName("IBM850"));

  private final Chance chance;
  private final XmlDamage xml;

  FileDamage(Chance chance) {
    this.chance = chance;
    this.xml = new XmlDamage(chance);
  }

  /** Damages a file, or a table of a folder, where it lies. */
  void damage(Path path) throws IOException {
    if (Files.isDirectory(path)) {
      try (Stream<Path> files = Files.list(path)) {
        damage(chance.of(files.sorted().toList()));
      }
      return;
    }
    byte[] whole = Files.readAllBytes(path);
    Files.write(path, damaged(path.toString(), whole));
  }

  private byte[] damaged(String name, byte[] whole) throws IOException {
    if (chance.oneIn(8)) {
      return chance.bytes(whole);
    }
    if (name.endsWith(".xlsx") || name.endsWith(".ods")) {
      return zipped(whole);
    }
    if (name.endsWith(".xls")) {
      return records(whole);
    }
    return name.endsWith(".csv") ? cells(whole) : chance.bytes(whole);
  }

  private byte[] zipped(byte[] whole) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(whole))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), zip.readAllBytes());
      }
    }
    for (int i = 1 + chance.below(2); i > 0; i--) {
      String victim = chance.of(List.copyOf(parts.keySet()));
      byte[] part = parts.getOrDefault(victim, new byte[0]);
      parts.put(victim, chance.oneIn(8) ? chance.bytes(part) : xml.damaged(part));
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        if (!chance.oneIn(80)) {
          String name =
              chance.oneIn(200) ? part.getKey().toUpperCase(java.util.Locale.ROOT) : part.getKey();
          zip.putNextEntry(new ZipEntry(name));
          zip.write(part.getValue());
          zip.closeEntry();
        }
      }
    }
    byte[] packed = out.toByteArray();
    return chance.oneIn(15) ? chance.bytes(packed) : packed;
  }

  /** Records of an older workbook ([MS-XLS] 2.1.4): two bytes what, two how long, and so many. */
  private byte[] records(byte[] whole) throws IOException {
    try (POIFSFileSystem file = new POIFSFileSystem(new ByteArrayInputStream(whole))) {
      List<byte[]> records = new ArrayList<>();
      ByteBuffer stream;
      try (var in = file.createDocumentInputStream("Workbook")) {
        stream = ByteBuffer.wrap(in.readAllBytes()).order(ByteOrder.LITTLE_ENDIAN);
      }
      while (stream.remaining() >= 4) {
        int length = stream.getShort(stream.position() + 2) & 0xffff;
        byte[] record = new byte[Math.min(4 + length, stream.remaining())];
        stream.get(record);
        records.add(record);
      }
      for (int i = 1 + chance.below(4); i > 0; i--) {
        record(records);
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      records.forEach(out::writeBytes);
      file.getRoot().getEntry("Workbook").delete();
      file.createDocument(new ByteArrayInputStream(out.toByteArray()), "Workbook");
      ByteArrayOutputStream packed = new ByteArrayOutputStream();
      file.writeFilesystem(packed);
      return packed.toByteArray();
    }
  }

  private void record(List<byte[]> records) {
    int at = chance.below(records.size());
    byte[] record = records.get(at);
    switch (chance.below(8)) {
      case 0 -> records.remove(at);
      case 1 -> records.add(at, record);
      case 2 -> Collections.swap(records, at, chance.below(records.size()));
      case 3 -> record[2 + chance.below(2)] = (byte) chance.below(256);
      case 4 -> record[chance.below(2)] = (byte) chance.below(256);
      default -> {
        for (int i = 1 + chance.below(3); i > 0 && record.length > 4; i--) {
          int spot = 4 + chance.below(record.length - 4);
          record[spot] = (byte) (chance.oneIn(3) ? 0xff : chance.below(256));
        }
      }
    }
  }

  private byte[] cells(byte[] whole) {
    List<String> rows =
        new ArrayList<>(List.of(new String(whole, StandardCharsets.UTF_8).split("\n", -1)));
    for (int i = 1 + chance.below(5); i > 0 && !rows.isEmpty(); i--) {
      int row = chance.below(rows.size());
      switch (chance.below(6)) {
        case 0 -> rows.remove(row);
        case 1 -> rows.add(row, chance.of(rows));
        case 2 -> Collections.swap(rows, row, chance.below(rows.size()));
        case 3 ->
            rows.set(
                row,
                new String(
                    chance.bytes(rows.get(row).getBytes(StandardCharsets.UTF_8)),
                    StandardCharsets.ISO_8859_1));
        default -> {
          String[] cells = rows.get(row).split(",", -1);
          cells[chance.below(cells.length)] = chance.word();
          rows.set(row, String.join(",", cells));
        }
      }
    }
    String separator = chance.oneIn(4) ? chance.of(List.of(";", "\t")) : ",";
    String text = String.join("\n", rows).replace(",", separator);
    return text.getBytes(chance.oneIn(4) ? chance.of(CHARSETS) : StandardCharsets.UTF_8);
  }
}
