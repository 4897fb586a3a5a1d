package dev.ringout.page;

import dev.ringout.bench.Refused;
import dev.ringout.json.BenchJson;
import dev.ringout.people.Act;
import dev.ringout.serve.Ask;
import dev.ringout.serve.Ask.Method;
import dev.ringout.serve.BodyRule;
import dev.ringout.serve.Guest;
import dev.ringout.serve.Handler;
import dev.ringout.serve.Reply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which address is answered by what. */
final class Routes implements Handler {
  private final List<Route> routes = new ArrayList<>();
  private final Consumer<Throwable> failures;
  private final Callers callers;
  private final Consumer<String> gone;

  /**
   * No address yet.
   *
   * @param failures is told what went wrong in the program itself
   * @param callers who may ask
   * @param gone is told who is in no more
   */
  Routes(Consumer<Throwable> failures, Callers callers, Consumer<String> gone) {
    this.failures = failures;
    this.callers = callers;
    this.gone = gone;
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

  /**
   * An address.
   *
   * @param act what it is to be allowed for a signed-in person to ask it; absent where whoever has
   *     not signed in may ask it too
   */
  record Route(
      Method method,
      String written,
      Pattern path,
      Optional<Act> act,
      BodyRule body,
      Answerer answerer) {}

  /** All addresses, in the order in which they are tried. */
  List<Route> all() {
    return List.copyOf(routes);
  }

  /** An address at which something is told; {@code *} stands for one name. */
  Routes get(Act act, String path, Answerer answerer) {
    return add(Method.GET, Optional.of(act), path, BodyRule.JSON, answerer);
  }

  /** An address at which something is done. */
  Routes post(Act act, String path, Answerer answerer) {
    return post(act, path, BodyRule.JSON, answerer);
  }

  Routes post(Act act, String path, BodyRule body, Answerer answerer) {
    return add(Method.POST, Optional.of(act), path, body, answerer);
  }

  /** An address that is told to who has not signed in too. */
  Routes open(String path, Answerer answerer) {
    return add(Method.GET, Optional.empty(), path, BodyRule.JSON, answerer);
  }

  /** An address at which who has not signed in has something done. */
  Routes openPost(String path, Answerer answerer) {
    return add(Method.POST, Optional.empty(), path, BodyRule.JSON, answerer);
  }

  private Routes add(
      Method method, Optional<Act> act, String path, BodyRule body, Answerer answerer) {
    routes.add(new Route(method, path, pattern(path), act, body, answerer));
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
          if (route.act().isPresent() && callers.shop().isPresent()) {
            callers.shop().get().require(ask, route.act().get());
          }
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
      case STRANGER -> 401;
      case NOT_ALLOWED -> 403;
      case TOO_OFTEN -> 429;
    };
  }

  @Override
  public boolean isForStrangers(String path) {
    return routes.stream()
        .anyMatch(route -> route.act().isEmpty() && route.path().matcher(path).matches());
  }

  @Override
  public Set<Guest> out(List<Guest> in) {
    return callers.shop().map(shop -> shop.out(in)).orElse(Set.of());
  }

  @Override
  public void gone(String who) {
    gone.accept(who);
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
