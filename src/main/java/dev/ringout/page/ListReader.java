package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.Bench;
import dev.ringout.bench.ListPage;
import dev.ringout.bench.ListPage.State;
import dev.ringout.bench.ListPage.Title;
import dev.ringout.bench.ListPage.Understood;
import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.bench.UnderstoodList;
import dev.ringout.harness.Harness;
import dev.ringout.imports.list.HeaderFact;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.Weighed;
import dev.ringout.imports.list.Words;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.ImportJob;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.ReviewJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.print.ImportedSheets;
import dev.ringout.review.Remark;
import dev.ringout.sheet.OutFile;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads a list that was handed in as {@code import} does, and what it then is as a harness. */
final class ListReader {
  private final Ringout door;
  private final Bench bench;

  ListReader(Ringout door, Bench bench) {
    this.door = door;
    this.bench = bench;
  }

  /**
   * A list as it was read.
   *
   * @param file as it was handed in
   * @param harness the harness file to take; absent where it can't be taken
   */
  record Read(Path file, ListPage page, Optional<Path> harness) {
    Read taken(String list) {
      return new Read(file, page.taken(list), harness);
    }
  }

  /**
   * Reads a list.
   *
   * @throws Refused where the options can't be understood
   * @throws IOException where nothing can be written
   */
  Read read(String id, Path file, List<String> options) throws Refused, IOException {
    ImportOptions said = ListOptions.of(options);
    Answer<ImportJob.Result> answer =
        door.importList(new ImportJob.Request(file, Words.standard(), said));
    Draft draft = new Draft(id, file, options);
    return answer.result().isPresent()
        ? imported(draft, answer.result().get(), answer.problems())
        : ours(draft, answer.problems());
  }

  /** What is known before the list is. */
  private record Draft(String id, Path file, List<String> options) {
    String name() {
      return String.valueOf(file.getFileName());
    }

    Read read(
        Title title,
        Understood understood,
        State state,
        List<Problem> problems,
        List<Remark> remarks,
        Optional<Path> harness) {
      return new Read(
          file,
          new ListPage(
              id, name(), title, understood, state, options, problems, remarks, Optional.empty()),
          harness);
    }
  }

  /** What no import reads is one of our own files, or no list. */
  private Read ours(Draft draft, List<Problem> whyNot) throws Refused {
    Answer<ListAtHand> own = bench.tests().list(draft.file());
    if (own.result().isEmpty()) {
      Set<Problem> all = new LinkedHashSet<>(whyNot);
      own.problems().stream().filter(one -> one.severity() == Severity.ERROR).forEach(all::add);
      return draft.read(
          Title.NONE,
          Understood.NOTHING,
          State.REFUSED,
          List.copyOf(all),
          List.of(),
          Optional.empty());
    }
    if (!draft.options().isEmpty()) {
      throw new Refused(
          Reason.NOT_UNDERSTOOD,
          "This is a harness file already: it says itself how it is to be read.");
    }
    Harness harness = own.result().get().harness();
    return draft.read(
        title(harness),
        UnderstoodList.of(harness),
        State.SURE,
        own.problems(),
        remarks(draft.file()),
        Optional.of(draft.file()));
  }

  private Read imported(Draft draft, ImportJob.Result result, List<Problem> problems)
      throws Refused, IOException {
    ImportResult list = result.list();
    Understood understood = UnderstoodList.of(list, draft.options());
    if (!result.isUnderstood()) {
      return draft.read(
          title(list.header()),
          understood,
          isToBeChosen(list) ? State.UNSURE : State.REFUSED,
          withReason(problems, draft.name()),
          List.of(),
          Optional.empty());
    }
    Path harness = write(list, draft);
    Answer<ListAtHand> own = bench.tests().list(harness);
    if (own.result().isEmpty()) {
      List<Problem> all = new ArrayList<>(problems);
      all.addAll(own.problems());
      return draft.read(
          title(list.header()), understood, State.REFUSED, all, List.of(), Optional.empty());
    }
    return draft.read(
        title(own.result().get().harness()),
        understood,
        State.SURE,
        problems,
        remarks(harness),
        Optional.of(harness));
  }

  private static boolean isToBeChosen(ImportResult list) {
    return list.weighed().stream()
        .anyMatch(
            table -> table.standing() != Weighed.Standing.CERTAIN && !table.offered(1).isEmpty());
  }

  /** Nothing is refused without a reason. */
  private static List<Problem> withReason(List<Problem> problems, String file) {
    if (problems.stream().anyMatch(one -> one.severity() == Severity.ERROR)) {
      return problems;
    }
    List<Problem> all = new ArrayList<>(problems);
    all.add(new Problem(Place.of(file), "", Severity.ERROR, "it joins no two points", ""));
    return all;
  }

  /** As {@code import -o} writes it. */
  private static Path write(ImportResult list, Draft draft) throws IOException {
    // No list that is handed in has a name with a dot in front.
    Path folder = draft.file().resolveSibling(".harness");
    Files.createDirectories(folder);
    Path harness = folder.resolve(draft.name().replaceFirst("\\.[^.]*$", "") + ".xlsx");
    OutFile.workbook(harness, ImportedSheets.of(list, draft.name()));
    return harness;
  }

  private static Title title(Harness harness) {
    return new Title(
        harness.headerValue("title"),
        harness.headerValue("drawing"),
        harness.headerValue("revision"));
  }

  private static Title title(List<HeaderFact> header) {
    return new Title(fact(header, "title"), fact(header, "drawing"), fact(header, "revision"));
  }

  private static String fact(List<HeaderFact> header, String name) {
    return header.stream()
        .filter(fact -> fact.name().word().equals(name))
        .map(HeaderFact::value)
        .findFirst()
        .orElse("");
  }

  private List<Remark> remarks(Path harness) throws Refused {
    LocalDate today = bench.setup().ticks().now().atZone(bench.setup().zone()).toLocalDate();
    try {
      return Refused.given(
              door.review(
                  new ReviewJob.Request(harness, Optional.empty(), today, Optional.empty())))
          .review()
          .remarks();
    } catch (WrongRequest e) {
      throw Refused.by(e);
    }
  }
}
