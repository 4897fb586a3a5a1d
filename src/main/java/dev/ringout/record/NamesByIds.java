package dev.ringout.record;

import dev.ringout.readings.Job;
import dev.ringout.readings.Person;
import dev.ringout.readings.Reading;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Names of people, and by which ids they stand in a record that leaves the shop.
 *
 * @param ids by the names as they are written
 */
public record NamesByIds(Map<String, String> ids) {
  /** Names stay names. */
  public static final NamesByIds NONE = new NamesByIds(Map.of());

  /** What is given can't be changed afterwards. */
  public NamesByIds {
    Map<String, String> longestFirst = new LinkedHashMap<>();
    ids.entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<String, String> one) -> -one.getKey().length())
                .thenComparing(Map.Entry::getKey))
        .forEach(one -> longestFirst.put(one.getKey(), one.getValue()));
    ids = Collections.unmodifiableMap(longestFirst);
  }

  /** Whether names stay names. */
  public boolean isEmpty() {
    return ids.isEmpty();
  }

  /** People of a record who have no id, as their names are written. */
  public List<String> missing(TestRecord record) {
    Set<String> written = new LinkedHashSet<>();
    for (Job job : record.result().readings().jobs()) {
      written.add(job.value("operator"));
      written.add(job.value("inspector"));
    }
    record.result().readings().readings().stream().map(Reading::by).forEach(written::add);
    record.history().noted().forEach(noted -> written.add(noted.who()));
    record.review().waived().forEach(waived -> written.add(waived.waiver().who()));
    // A cell may name two people, and one of them have no id.
    return written.stream().filter(names -> Person.isNamed(replaced(names, id -> " "))).toList();
  }

  /** A text with the id of each person where the name stood as a whole, in whichever case. */
  public String in(String text) {
    return replaced(text, id -> id);
  }

  /** In one go, so that no id is looked through for names. */
  private String replaced(String text, UnaryOperator<String> by) {
    if (ids.isEmpty()) {
      return text;
    }
    String names = ids.keySet().stream().map(Pattern::quote).collect(Collectors.joining("|"));
    return Pattern.compile(
            "(?<![\\p{L}\\p{N}])(?:" + names + ")(?![\\p{L}\\p{N}])",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
        .matcher(text)
        .replaceAll(found -> Matcher.quoteReplacement(by.apply(id(found.group()))));
  }

  private String id(String name) {
    return ids.entrySet().stream()
        .filter(one -> one.getKey().equalsIgnoreCase(name))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("");
  }

  private List<List<String>> rows(List<List<String>> rows) {
    return rows.stream().map(row -> row.stream().map(this::in).toList()).toList();
  }

  /** Pieces of a record with ids, and a sentence that says so. */
  List<RecordBlock> in(List<RecordBlock> blocks) {
    if (ids.isEmpty()) {
      return blocks;
    }
    List<RecordBlock> now = new ArrayList<>();
    blocks.forEach(block -> now.add(block.match(new Replaced())));
    now.add(
        new RecordBlock.Words(
            "People stand here by ids. Their names are in the store and in what was signed there.",
            false));
    return now;
  }

  /** Each piece with ids where it has words. */
  private final class Replaced implements RecordBlock.Cases<RecordBlock> {
    @Override
    public RecordBlock verdict(RecordBlock.Verdict one) {
      return new RecordBlock.Verdict(in(one.words()), one.good());
    }

    @Override
    public RecordBlock heading(RecordBlock.Heading one) {
      return new RecordBlock.Heading(one.level(), in(one.text()));
    }

    @Override
    public RecordBlock words(RecordBlock.Words one) {
      return new RecordBlock.Words(in(one.text()), one.warns());
    }

    @Override
    public RecordBlock pairs(RecordBlock.Pairs one) {
      return new RecordBlock.Pairs(rows(one.rows()));
    }

    @Override
    public RecordBlock table(RecordBlock.Table one) {
      return new RecordBlock.Table(
          one.name(),
          one.headings(),
          rows(one.rows()),
          one.stateColumn(),
          one.numbers(),
          one.reckoned());
    }

    @Override
    public RecordBlock picture(RecordBlock.Picture one) {
      return new RecordBlock.Picture(one.svg(), in(one.caption()));
    }

    @Override
    public RecordBlock photograph(RecordBlock.Photograph one) {
      return new RecordBlock.Photograph(
          one.base64(),
          one.width(),
          one.height(),
          one.sha256(),
          in(one.shows()),
          in(one.caption()));
    }

    @Override
    public RecordBlock signatures(RecordBlock.Signatures one) {
      return new RecordBlock.Signatures(one.who().stream().map(NamesByIds.this::in).toList());
    }

    @Override
    public RecordBlock newPage(RecordBlock.NewPage one) {
      return one;
    }
  }
}
