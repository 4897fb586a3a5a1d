package dev.ringout.page;

import dev.ringout.bench.Refused;
import dev.ringout.json.BenchJson;
import dev.ringout.serve.Ask;
import dev.ringout.serve.Ask.Method;
import dev.ringout.serve.BodyRule;
import dev.ringout.serve.Handler;
import dev.ringout.serve.Reply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which address is answered by what. */
final class Routes implements Handler {
  private final List<Route> routes = new ArrayList<>();
  private final Consumer<Throwable> failures;

  /**
   * No address yet.
   *
   * @param failures is told what went wrong in the program itself
   */
  Routes(Consumer<Throwable> failures) {
    this.failures = failures;
  }

  /** Answers what was asked at an address. */
  interface Answerer {
    /**
     * The answer.
     *
     * @param names what stands in the address where the route has a name
     */
    Reply answer(Ask ask, List<String> names) throws Refused;
  }

  private record Route(Method method, Pattern path, BodyRule body, Answerer answerer) {}

  /** An address at which something is told; {@code *} stands for one name. */
  Routes get(String path, Answerer answerer) {
    routes.add(new Route(Method.GET, pattern(path), BodyRule.JSON, answerer));
    return this;
  }

  /** An address at which something is done. */
  Routes post(String path, Answerer answerer) {
    return post(path, BodyRule.JSON, answerer);
  }

  Routes post(String path, BodyRule body, Answerer answerer) {
    routes.add(new Route(Method.POST, pattern(path), body, answerer));
    return this;
  }

  private static Pattern pattern(String path) {
    return Pattern.compile(Pattern.quote(path).replace("*", "\\E([^/]+)\\Q"));
  }

  @Override
  public Reply answer(Ask ask) {
    for (Route route : routes) {
      Matcher match = route.path().matcher(ask.path());
      if (route.method() == ask.method() && match.matches()) {
        List<String> names = new ArrayList<>();
        for (int i = 1; i <= match.groupCount(); i++) {
          names.add(match.group(i));
        }
        try {
          return route.answerer().answer(ask, names);
        } catch (Refused e) {
          return Reply.json(status(e), BenchJson.write(e));
        }
      }
    }
    return Reply.json(
        404, BenchJson.write(new Refused(Refused.Reason.MISSING, "Nothing is there.")));
  }

  private static int status(Refused refused) {
    return switch (refused.reason()) {
      case NOT_UNDERSTOOD -> 400;
      case MISSING -> 404;
      case MEANWHILE -> 409;
      case NOT_WRITTEN -> 507;
    };
  }

  @Override
  public BodyRule body(String path) {
    return routes.stream()
        .filter(route -> route.method() == Method.POST && route.path().matcher(path).matches())
        .map(Route::body)
        .findFirst()
        .or(() -> Optional.of(BodyRule.JSON))
        .get();
  }

  @Override
  public Reply failed(Throwable cause) {
    failures.accept(cause);
    return Reply.json(
        500,
        BenchJson.write(
            new Refused(
                Refused.Reason.NOT_UNDERSTOOD,
                "The program made a mistake here, and kept nothing of it. The bench says which.")));
  }
}
