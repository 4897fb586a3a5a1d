package dev.ringout.page;

import dev.ringout.bench.Bench;
import dev.ringout.bench.BenchState;
import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.json.BenchJson;
import dev.ringout.people.Act;
import dev.ringout.serve.Ask;
import dev.ringout.serve.BodyRule;
import dev.ringout.serve.Reply;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The test that is led: whatever is asked here is done one after the other. */
final class SessionRoutes {
  /** A name, and no file of the machine. */
  private static final Pattern PROFILE = Pattern.compile("[A-Za-z0-9._-]{0,80}");

  private final Bench bench;
  private final UnitsOfPage units;
  private final Callers callers;

  SessionRoutes(Bench bench, UnitsOfPage units, Callers callers) {
    this.bench = bench;
    this.units = units;
    this.callers = callers;
  }

  private interface Done {
    BenchState by(Body body) throws Refused;
  }

  void in(Routes routes) {
    routes
        .get(Act.LOOK, "/api/state", (ask, names) -> state(bench.state()))
        .get(
            Act.LOOK,
            "/api/session/named",
            (ask, names) -> named(ask.query().getOrDefault("text", "")))
        .post(Act.TEST, "/api/session/start", this::start)
        .post(Act.TEST, "/api/session/take", done(this::take))
        .post(
            Act.TEST,
            "/api/session/back",
            done(body -> bench.back(body.text("reading"), body.text("why"))))
        .post(
            Act.TEST,
            "/api/session/skip",
            done(body -> bench.skip(body.text("step"), body.text("why"))))
        .post(Act.TEST, "/api/session/jump", done(body -> bench.jump(body.text("to"))))
        .post(Act.TEST, "/api/session/lead", done(body -> bench.lead(body.flag("follow"))))
        .post(Act.TEST, "/api/session/confirm", done(body -> bench.confirm(body.text("step"))))
        .post(Act.TEST, "/api/session/note", done(body -> bench.note(body.text("text"))))
        .post(Act.TEST, "/api/session/photo", BodyRule.PICTURE, this::photo)
        .post(Act.TEST, "/api/session/leads", done(body -> bench.leadsTogether()))
        .post(Act.TEST, "/api/session/meter", done(this::meter))
        .post(Act.TEST, "/api/session/conditions", this::conditions)
        .post(Act.TEST, "/api/session/leave", ended(body -> bench.leave()))
        .post(Act.TEST, "/api/session/finish", ended(body -> bench.finish()));
  }

  private Routes.Answerer done(Done done) {
    return (ask, names) -> {
      Body body = Body.of(ask);
      return led(ask, () -> done.by(body));
    };
  }

  /** What whoever leads the test may do, one after the other. */
  private Reply led(Ask ask, Callers.Work<BenchState> work) throws Refused {
    return callers.inTurn(
        () -> {
          callers.requireLeader(ask);
          return state(work.run());
        });
  }

  private Reply conditions(Ask ask, List<String> names) throws Refused {
    Map<String, String> conditions = Body.of(ask).named("conditions");
    callers.requireInspector(ask, conditions);
    return led(ask, () -> bench.conditions(conditions));
  }

  private Routes.Answerer ended(Done done) {
    return (ask, names) -> {
      Body body = Body.of(ask);
      return callers.inTurn(
          () -> {
            callers.requireLeader(ask);
            Reply ended = state(done.by(body));
            callers.leads("");
            return ended;
          });
    };
  }

  private static Reply state(BenchState state) {
    return Reply.json(200, BenchJson.write(state));
  }

  private Reply named(String text) throws Refused {
    return Reply.json(200, BenchJson.named(bench.isName(text) || units.isSerial(text)));
  }

  private Reply start(Ask ask, List<String> names) throws Refused {
    Body body = Body.of(ask);
    callers.requireInspector(ask, body.named("conditions"));
    return callers.inTurn(() -> start(ask, body));
  }

  private Reply start(Ask ask, Body body) throws Refused {
    callers.begins(ask, body.has("takeOver") && body.flag("takeOver"));
    String tester = callers.name(ask, body, "tester");
    Bench.Start start =
        new Bench.Start(
            tester,
            body.named("conditions"),
            Set.copyOf(body.texts("opened")),
            Set.copyOf(body.texts("touched")),
            body.text("why"),
            body.text("word"));
    BenchState begun =
        body.has("unit")
            ? bench.start(units.unit(body.text("unit")), start)
            : bench.start(units.list(body.text("list")), body.text("serial"), start);
    callers.leads(tester);
    return state(begun);
  }

  private BenchState take(Body body) throws Refused {
    return body.has("typed")
        ? bench.typed(body.text("step"), body.text("typed"), body.text("volts"))
        : bench.key(body.text("step"));
  }

  private BenchState meter(Body body) throws Refused {
    String which = body.text("which");
    if (!which.equals("meter") && !which.equals("insulationMeter")) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "which is meter or insulationMeter.");
    }
    if (!PROFILE.matcher(body.text("profile")).matches()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "profile is a name of ringout meters.");
    }
    return bench.otherMeter(
        which.equals("insulationMeter"),
        body.text("address"),
        Optional.of(body.text("profile")).filter(name -> !name.isEmpty()));
  }

  private Reply photo(Ask ask, List<String> names) throws Refused {
    if (!Pictures.isOne(ask.contentType(), ask.bytes())) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "This is not a picture (JPEG or PNG).");
    }
    return led(
        ask,
        () -> bench.photo(ask.contentType(), ask.query().getOrDefault("text", ""), ask.bytes()));
  }
}
