package dev.ringout.cli;

import dev.ringout.jobs.PeopleJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.PeopleJson;
import dev.ringout.people.Member;
import dev.ringout.people.Role;
import dev.ringout.seal.Keys;
import dev.ringout.store.StoreTrouble;
import dev.ringout.text.PeopleText;
import dev.ringout.units.Text;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.PublicKey;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code ringout people}: who may sign in to the benches of a shop. */
@Command(
    name = "people",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Says who may sign in to the benches of a shop, and as what: tester, inspector, engineer,"
            + " lead, administrator.")
final class PeopleCommand implements Runnable {
  private static final String NAME = "NAME";
  private static final String ROLE = "--role";
  private static final String PASSPHRASE = "--passphrase";
  private static final String FILE = "FILE";
  private static final String PASSPHRASE_SAYS =
      "The passphrase is the first line of FILE; else a terminal is asked.";
  private static final String WHO = "--who";
  private static final String WHO_SAYS = "Who says so.";

  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  PeopleCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "what of the people? add, role, passphrase, withdraw, list, key, withdraw-key or keys");
  }

  /** Something that is done with the people, or their keys. */
  private interface Deed<T> {
    T done(PeopleJob people, PeopleJob.Said said) throws StoreTrouble, WrongRequest;
  }

  private int done(StoreOption at, String who, Deed<Member> deed) throws WrongRequest {
    return told(at, who, (people, said) -> PeopleText.done(deed.done(people, said), output.look()));
  }

  private int doneWithKeys(StoreOption at, String who, Deed<String> deed) throws WrongRequest {
    return told(
        at, who, (people, said) -> Text.visible(deed.done(people, said)) + System.lineSeparator());
  }

  private int told(StoreOption at, String who, Deed<String> deed) throws WrongRequest {
    try {
      String told = deed.done(at.door().people(), new PeopleJob.Said(who, Instant.now()));
      output.out().print(told);
      return ExitCode.DONE;
    } catch (StoreTrouble e) {
      return Trouble.say(output, at.store().shown(), e);
    }
  }

  private String passphrase(String name, Optional<Path> file) {
    return new Passphrase(output, spec.commandLine()).ofPerson(name, file);
  }

  @Command(
      name = "add",
      mixinStandardHelpOptions = true,
      description = "Somebody comes to the shop. The first is an administrator.")
  int add(
      @Parameters(
              paramLabel = NAME,
              description = "The name, in full: it stands beside whatever the person does.")
          String name,
      @Option(
              names = ROLE,
              required = true,
              split = ",",
              paramLabel = "ROLE",
              description =
                  "As what: tester, inspector, engineer, lead, administrator; several with commas between.")
          List<Role> roles,
      @Option(names = PASSPHRASE, paramLabel = FILE, description = PASSPHRASE_SAYS)
          Optional<Path> file,
      @Option(names = WHO, required = true, paramLabel = NAME, description = WHO_SAYS) String who,
      @Mixin StoreOption at)
      throws WrongRequest {
    String passphrase = passphrase(name, file);
    return done(at, who, (people, said) -> people.add(name, Set.copyOf(roles), passphrase, said));
  }

  @Command(
      name = "role",
      mixinStandardHelpOptions = true,
      description = "Somebody works as something else from now on.")
  int role(
      @Parameters(paramLabel = NAME, description = "The person.") String name,
      @Option(
              names = ROLE,
              required = true,
              split = ",",
              paramLabel = "ROLE",
              description = "All roles that the person has from now on.")
          List<Role> roles,
      @Option(names = WHO, required = true, paramLabel = NAME, description = WHO_SAYS) String who,
      @Mixin StoreOption at)
      throws WrongRequest {
    return done(at, who, (people, said) -> people.roles(name, Set.copyOf(roles), said));
  }

  @Command(
      name = "passphrase",
      mixinStandardHelpOptions = true,
      description =
          "Gives somebody another passphrase; wherever the person had signed in, that ends.")
  int passphrase(
      @Parameters(paramLabel = NAME, description = "The person.") String name,
      @Option(names = PASSPHRASE, paramLabel = FILE, description = PASSPHRASE_SAYS)
          Optional<Path> file,
      @Option(names = WHO, required = true, paramLabel = NAME, description = WHO_SAYS) String who,
      @Mixin StoreOption at)
      throws WrongRequest {
    String passphrase = passphrase(name, file);
    return done(at, who, (people, said) -> people.passphrase(name, passphrase, said));
  }

  @Command(
      name = "withdraw",
      mixinStandardHelpOptions = true,
      description = "Somebody signs in no more. What the person did, and the name, stay.")
  int withdraw(
      @Parameters(paramLabel = NAME, description = "The person.") String name,
      @Option(names = "--why", required = true, paramLabel = "TEXT", description = "Why.")
          String why,
      @Option(names = WHO, required = true, paramLabel = NAME, description = WHO_SAYS) String who,
      @Mixin StoreOption at)
      throws WrongRequest {
    return done(at, who, (people, said) -> people.withdraw(name, why, said));
  }

  @Command(
      name = "key",
      mixinStandardHelpOptions = true,
      description = "Somebody signs with a key that was made already; the page makes keys itself.")
  int key(
      @Parameters(paramLabel = NAME, description = "The person.") String name,
      @Option(
              names = "--key",
              required = true,
              paramLabel = "PUB",
              description = "The public half; the other stays with the person.")
          Path key,
      @Option(
              names = "--until",
              paramLabel = "DAY",
              description = "Its last day (UTC), such as 2027-12-31.")
          Optional<LocalDate> until,
      @Option(names = WHO, required = true, paramLabel = NAME, description = WHO_SAYS) String who,
      @Mixin StoreOption at)
      throws WrongRequest {
    PublicKey open;
    try {
      open = Keys.publicKey(key);
    } catch (Keys.Unusable e) {
      throw new ParameterException(spec.commandLine(), "--key: " + e.getMessage());
    }
    return doneWithKeys(
        at,
        who,
        (people, said) -> {
          people.addKey(name, open, until, said);
          return name + " signs with key " + Keys.fingerprint(open) + " from now on.";
        });
  }

  @Command(
      name = "withdraw-key",
      mixinStandardHelpOptions = true,
      description =
          "A key counts no more from now on; what was signed with it before stays signed.")
  int withdrawKey(
      @Parameters(paramLabel = "FINGERPRINT", description = "By what the key is known.")
          String fingerprint,
      @Option(names = "--why", required = true, paramLabel = "TEXT", description = "Why.")
          String why,
      @Option(names = WHO, required = true, paramLabel = NAME, description = WHO_SAYS) String who,
      @Mixin StoreOption at)
      throws WrongRequest {
    return doneWithKeys(
        at,
        who,
        (people, said) -> {
          people.withdrawKey(fingerprint, why, said);
          return "The key counts no more. Give out the list of keys anew.";
        });
  }

  @Command(
      name = "keys",
      mixinStandardHelpOptions = true,
      description =
          "Writes the list of keys, for \"ringout report --verify --keys\": whose each is, from"
              + " and until when, withdrawn and why.")
  int keys(
      @Option(
              names = "-o",
              converter = PathOfResult.class,
              paramLabel = FILE,
              description = "Where to; else it is shown.")
          Optional<Path> to,
      @Option(names = "--force", description = "Write over an existing FILE.") boolean force,
      @Mixin StoreOption at) {
    try {
      String list = at.door().people().keys().list().text();
      if (to.isEmpty()) {
        output.out().print(list);
        return ExitCode.DONE;
      }
      int code =
          output.write(
              List.of(
                  ResultFile.file(
                      to.get(), out -> out.write(list.getBytes(StandardCharsets.UTF_8)))),
              force);
      if (code == ExitCode.DONE) {
        output.written(to.get(), "keep it where nobody else can change it");
      }
      return code;
    } catch (StoreTrouble e) {
      return Trouble.say(output, at.store().shown(), e);
    }
  }

  @Command(
      name = "list",
      mixinStandardHelpOptions = true,
      description = "Lists the people; with --history whatever was said of them, and who came in.")
  int list(
      @Option(names = "--history", description = "Every entry instead: who said what, who came in.")
          boolean history,
      @Option(names = "--json", description = "One JSON document on standard output.") boolean json,
      @Mixin StoreOption at) {
    try {
      PeopleJob people = at.door().people();
      PeopleJob.Listed listed = people.list(history);
      output.out().print(json ? PeopleJson.write(listed) : PeopleText.write(listed, output.look()));
      return ExitCode.DONE;
    } catch (StoreTrouble e) {
      if (json) {
        output.out().print(PeopleJson.refused(at.store().shown(), e.text()));
      }
      return Trouble.say(output, at.store().shown(), e);
    }
  }
}
