package dev.ringout.page;

import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.jobs.PeopleJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.PeopleJson;
import dev.ringout.people.Act;
import dev.ringout.people.Member;
import dev.ringout.people.Role;
import dev.ringout.serve.Ask;
import dev.ringout.serve.Reply;
import dev.ringout.store.StoreTrouble;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Who signs in and out, and who says who may. */
final class PeopleRoutes {
  private final Optional<Shop> shop;

  PeopleRoutes(Optional<Shop> shop) {
    this.shop = shop;
  }

  void in(Routes routes) {
    routes.open("/api/who", (ask, names) -> who(ask));
    if (shop.isEmpty()) {
      return;
    }
    Shop here = shop.get();
    routes
        .openPost("/api/sign-in", (ask, names) -> signIn(here, ask))
        .openPost("/api/sign-out", (ask, names) -> signOut(here, ask))
        .post(Act.LOOK, "/api/passphrase", (ask, names) -> ownPassphrase(here, ask))
        .get(Act.PEOPLE, "/api/people", (ask, names) -> people(here, ask))
        .post(
            Act.PEOPLE,
            "/api/people",
            decided(
                here,
                (people, names, body, said) ->
                    people.add(body.text("name"), roles(body), body.text("passphrase"), said)))
        .post(
            Act.PEOPLE,
            "/api/people/*/roles",
            decided(
                here, (people, names, body, said) -> people.roles(names.get(0), roles(body), said)))
        .post(
            Act.PEOPLE,
            "/api/people/*/passphrase",
            decided(
                here,
                (people, names, body, said) ->
                    people.passphrase(names.get(0), body.text("passphrase"), said)))
        .post(
            Act.PEOPLE,
            "/api/people/*/withdraw",
            decided(
                here,
                (people, names, body, said) ->
                    people.withdraw(names.get(0), body.text("why"), said)));
  }

  /** What an administrator decides of somebody. */
  private interface Decision {
    Member of(PeopleJob people, List<String> names, Body body, PeopleJob.Said said)
        throws Refused, StoreTrouble, WrongRequest;
  }

  /** Decides it; what is told is all people as they are then. */
  private static Routes.Answerer decided(Shop shop, Decision decision) {
    return (ask, names) -> {
      Body body = Body.of(ask);
      PeopleJob.Said by = shop.said(shop.require(ask, Act.PEOPLE));
      said(() -> decision.of(shop.people(), names, body, by));
      return people(shop, ask);
    };
  }

  private Reply who(Ask ask) throws Refused {
    Optional<Member> member = shop.isEmpty() ? Optional.empty() : shop.get().member(ask);
    return Reply.json(200, PeopleJson.who(shop.isPresent(), member));
  }

  private static Reply in(int status, Member member) {
    return Reply.json(status, PeopleJson.who(true, Optional.of(member)))
        .lettingIn(member.name(), member.since());
  }

  private static Reply signIn(Shop shop, Ask ask) throws Refused {
    Body body = Body.of(ask);
    return in(200, shop.signIn(body.text("name"), body.text("passphrase"), ask.from()));
  }

  /** Whoever asks is out, whether or not he was in. */
  private static Reply signOut(Shop shop, Ask ask) throws Refused {
    Body body = Body.of(ask);
    boolean everywhere = body.has("everywhere") && body.flag("everywhere");
    Optional<Member> member = shop.member(ask);
    if (member.isPresent()) {
      if (everywhere) {
        said(() -> shop.people().outEverywhere(member.get().name(), shop.said(member.get())));
      }
      shop.signedOut(member.get(), ask.from());
    }
    return Reply.json(200, PeopleJson.who(true, Optional.empty())).lettingOut();
  }

  /** Whoever has another passphrase is out everywhere but here, where a new visit begins. */
  private static Reply ownPassphrase(Shop shop, Ask ask) throws Refused {
    Body body = Body.of(ask);
    Member member = shop.require(ask, Act.LOOK);
    shop.signIn(member.name(), body.text("now"), ask.from());
    return in(
        200,
        said(() -> shop.people().passphrase(member.name(), body.text("next"), shop.said(member))));
  }

  private static Reply people(Shop shop, Ask ask) throws Refused {
    boolean history = ask.query().containsKey("history");
    return Reply.json(200, PeopleJson.write(said(() -> shop.people().list(history))));
  }

  private static Set<Role> roles(Body body) throws Refused {
    EnumSet<Role> roles = EnumSet.noneOf(Role.class);
    for (String word : body.texts("roles")) {
      roles.add(
          Role.of(word)
              .orElseThrow(
                  () ->
                      new Refused(
                          Reason.NOT_UNDERSTOOD,
                          "roles are tester, inspector, engineer, lead, administrator.")));
    }
    return roles;
  }

  /** Something that is said of people. */
  interface Saying<T> {
    T said() throws Refused, StoreTrouble, WrongRequest;
  }

  static <T> T said(Saying<T> saying) throws Refused {
    try {
      return saying.said();
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    } catch (WrongRequest e) {
      throw Refused.by(e);
    }
  }
}
