package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.Bench;
import dev.ringout.bench.ListPage;
import dev.ringout.bench.ListPage.State;
import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.page.ListReader.Read;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** The lists that pages have handed in: one is read at a time, and only the newest are kept. */
final class ListsOfPage {
  private static final int MOST_KEPT = 20;

  private final Bench bench;
  private final UnitsOfPage units;
  private final ListReader reader;
  private final ListFolder folder;
  private final Map<String, Read> received = new LinkedHashMap<>();

  ListsOfPage(Ringout door, Bench bench, UnitsOfPage units) {
    this.bench = bench;
    this.units = units;
    this.reader = new ListReader(door, bench);
    this.folder = new ListFolder(bench.setup().data());
  }

  /** Keeps a file that was handed in, and reads it. */
  synchronized ListPage receive(String name, byte[] bytes) throws Refused {
    String id = UUID.randomUUID().toString();
    boolean read = false;
    try {
      Path file = folder.receive(id, ListName.of(name), bytes);
      ListPage page = keep(reader.read(id, file, List.of()));
      read = true;
      return page;
    } catch (IOException e) {
      throw notWritten(e);
    } finally {
      if (!read) {
        folder.drop(id);
      }
    }
  }

  private ListPage keep(Read list) {
    // What was asked for last is the newest.
    received.remove(list.page().id());
    received.put(list.page().id(), list);
    if (received.size() > MOST_KEPT) {
      String oldest = received.keySet().iterator().next();
      received.remove(oldest);
      folder.drop(oldest);
    }
    return list.page();
  }

  private static Refused notWritten(IOException e) {
    return new Refused(Reason.NOT_WRITTEN, "The list can't be kept: " + e.getMessage());
  }

  private Read known(String id) throws Refused {
    return Optional.ofNullable(received.get(id))
        .orElseThrow(
            () -> new Refused(Reason.MISSING, "There is no such list here: give its file again."));
  }

  /** A list that was handed in, as it was read last. */
  synchronized ListPage list(String id) throws Refused {
    return known(id).page();
  }

  /** Reads the same file by other options. */
  synchronized ListPage read(String id, List<String> options) throws Refused {
    try {
      return keep(reader.read(id, known(id).file(), options));
    } catch (IOException e) {
      throw notWritten(e);
    }
  }

  /** Takes a list: from now on units can be made to it. */
  synchronized ListPage take(String id) throws Refused {
    Read read = known(id);
    if (read.page().state() != State.SURE || read.harness().isEmpty()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, whyNot(read.page()));
    }
    ListAtHand list = Refused.given(bench.tests().list(read.harness().get()));
    String digest = list.file().digest();
    if (!units.lists().containsKey(digest)) {
      try {
        Path kept = folder.take(read.harness().get());
        units.take(Refused.given(bench.tests().list(kept)));
      } catch (IOException e) {
        throw notWritten(e);
      }
    }
    return keep(read.taken(digest));
  }

  private static List<Problem> whyNot(ListPage page) {
    List<Problem> why = new ArrayList<>();
    why.add(
        new Problem(
            Place.of(page.file()),
            "",
            Severity.ERROR,
            page.state() == State.UNSURE
                ? "is not taken: say first how it is meant"
                : "is not taken: it can't be understood",
            ""));
    page.problems().stream().filter(one -> one.severity() == Severity.ERROR).forEach(why::add);
    return why;
  }
}
