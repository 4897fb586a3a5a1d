package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.Bench;
import dev.ringout.bench.ListPage;
import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.DiffJob;
import dev.ringout.jobs.InputName;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.BenchListJson;
import dev.ringout.json.DiffJson;
import dev.ringout.people.Act;
import dev.ringout.serve.Ask;
import dev.ringout.serve.BodyRule;
import dev.ringout.serve.Reply;
import dev.ringout.store.StoredUnit;
import java.util.List;

/** Wire lists: handed in by a page, understood, taken; and what changes towards another. */
final class ListRoutes {
  private final Ringout door;
  private final Bench bench;
  private final UnitsOfPage units;
  private final ListsOfPage lists;

  ListRoutes(Ringout door, Bench bench, UnitsOfPage units) {
    this.door = door;
    this.bench = bench;
    this.units = units;
    this.lists = new ListsOfPage(door, bench, units);
  }

  void in(Routes routes) {
    routes
        .post(
            Act.LIST,
            "/api/lists",
            BodyRule.FILE,
            (ask, names) -> list(lists.receive(ask.query().getOrDefault("name", ""), ask.bytes())))
        .get(Act.LIST, "/api/lists/*", (ask, names) -> list(lists.list(names.get(0))))
        .post(
            Act.LIST,
            "/api/lists/*/read",
            (ask, names) -> list(lists.read(names.get(0), Body.of(ask).texts("options"))))
        .post(Act.LIST, "/api/lists/*/take", (ask, names) -> list(lists.take(names.get(0))))
        .post(Act.LOOK, "/api/units/*/diff", this::diff);
  }

  private static Reply list(ListPage list) {
    return Reply.json(200, BenchListJson.write(list));
  }

  private Reply diff(Ask ask, List<String> names) throws Refused {
    StoredUnit unit = units.unit(names.get(0));
    ListAtHand list = units.list(Body.of(ask).text("list"));
    ListAtHand now = Refused.given(bench.tests().list(list.named()));
    if (!now.file().digest().equals(list.file().digest())) {
      throw new Refused(
          Reason.MEANWHILE,
          list.file().file() + " was changed since the bench has read it: open the bench anew.");
    }
    try {
      Answer<DiffJob.Result> answer =
          door.diff(
              DiffJob.Request.of(InputName.ofUnit(unit.serial(), unit.harness()), list.named()));
      return Reply.json(200, DiffJson.write(Refused.given(answer).paper(), answer.problems()));
    } catch (WrongRequest e) {
      throw Refused.by(e);
    }
  }
}
