package dev.ringout.benchmarks;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The least that any check of a {@link BigUnit} in {@code .csv} takes in Java: points numbered,
 * nets joined, each reading kept and its value held against one limit. It understands no units, no
 * headings but the unit's own, reports nothing and explains nothing: no tool, but a measure of what
 * a time for {@code check} can be held against.
 */
public final class BarestCheck {
  private static final double JOINED_OHMS = 5;
  private static final int REST = -1;

  private record Read(int from, int to, double ohms) {}

  private final Map<String, Integer> numbers = new HashMap<>();
  private int[] above = new int[1024];

  private BarestCheck() {}

  /** Arguments: the wires' file, the readings' files. */
  public static void main(String[] args) throws IOException {
    BarestCheck check = new BarestCheck();
    check.join(Path.of(args[0]));
    List<Read> all = new ArrayList<>();
    for (String file : Arrays.asList(args).subList(1, args.length)) {
      check.read(Path.of(file), all);
    }
    System.out.println(all.stream().filter(check::isOdd).count());
  }

  private void join(Path file) throws IOException {
    try (CsvReader<CsvRecord> records = CsvReader.builder().ofCsvRecord(file)) {
      int from = -1;
      int to = -1;
      for (CsvRecord one : records) {
        if (from < 0) {
          from = one.getFields().indexOf("From");
          to = one.getFields().indexOf("To");
        } else {
          int here = number(one.getField(from));
          int there = number(one.getField(to));
          above[root(here)] = root(there);
        }
      }
    }
  }

  private void read(Path file, List<Read> all) throws IOException {
    try (CsvReader<CsvRecord> records = CsvReader.builder().ofCsvRecord(file)) {
      int from = -1;
      int to = -1;
      int reading = -1;
      for (CsvRecord one : records) {
        if (from < 0) {
          from = one.getFields().indexOf("From");
          to = one.getFields().indexOf("To");
          reading = one.getFields().indexOf("Reading");
        } else {
          String other = one.getField(to);
          all.add(
              new Read(
                  number(one.getField(from)),
                  other.equals("REST") ? REST : number(other),
                  ohms(one.getField(reading))));
        }
      }
    }
  }

  private static double ohms(String text) {
    return text.equals("OL") ? Double.POSITIVE_INFINITY : Double.parseDouble(text);
  }

  private int number(String point) {
    Integer known = numbers.get(point);
    if (known != null) {
      return known;
    }
    int next = numbers.size();
    if (next == above.length) {
      above = Arrays.copyOf(above, 2 * next);
    }
    above[next] = next;
    numbers.put(point, next);
    return next;
  }

  private int root(int point) {
    int root = point;
    while (above[root] != root) {
      above[root] = above[above[root]];
      root = above[root];
    }
    return root;
  }

  private boolean isOdd(Read one) {
    boolean joined = one.to != REST && root(one.from) == root(one.to);
    return joined != one.ohms < JOINED_OHMS;
  }
}
