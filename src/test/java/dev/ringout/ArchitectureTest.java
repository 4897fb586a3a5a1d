package dev.ringout;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.core.domain.properties.HasOwner;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The rooms of docs/explanation/architecture.md, and where the large libraries may be used. */
@AnalyzeClasses(packages = "dev.ringout", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  /**
   * A room, and the rooms it may know besides {@code units} and {@code source}, which all may. A
   * room knows only what stands above it here, so nothing goes round. {@code x*} is x and what is
   * in it, {@code FACTS} the rooms down to {@code lot}, {@code ALL} everything above; {@code root}
   * is the library's door.
   */
  private static final String ROOMS =
      """
      units           |
      source          |
      seal            |
      serve           |
      harness         |
      standards       | harness
      readings        | harness
      sheet           |
      store           | seal sheet readings
      people          | seal readings store
      cells           | harness standards readings sheet
      intake          | harness standards readings sheet cells
      imports.list    | harness standards sheet cells
      imports.find    | harness standards sheet cells imports.list
      imports.rows    | harness standards sheet cells imports.list imports.find
      imports.join    | harness standards sheet cells imports.list imports.find imports.rows
      imports.weigh   | harness standards sheet cells imports.list imports.find imports.rows
      imports.kbl     | harness standards sheet cells imports.list
      imports         | harness standards sheet cells imports*
      circuit         | harness standards readings
      review          | harness standards circuit
      trace           | harness standards readings circuit
      work            | harness standards readings circuit
      revision        | harness standards circuit
      compare         | harness standards readings circuit
      plan            | harness standards readings circuit compare
      diagnose        | harness standards readings circuit compare
      diagnose.wiring | harness standards readings circuit compare diagnose
      diagnose.values | harness standards readings circuit compare diagnose diagnose.wiring
      diagnose.run    | harness standards readings circuit compare diagnose*
      check           | harness standards readings circuit compare diagnose* review seal
      meter           | harness readings
      meter.link      | meter
      meter.drive     | meter meter.link readings
      meter.practice  | harness standards readings circuit meter meter.link
      lot             | harness standards readings circuit compare diagnose check
      words           | FACTS
      pictures        | FACTS
      record          | FACTS words pictures
      jobs            | FACTS words record
      bench           | FACTS words record jobs
      root            | FACTS words pictures record jobs
      text            | FACTS words record jobs
      json            | FACTS words record jobs bench
      print           | FACTS words pictures record jobs
      page            | FACTS words record jobs bench root text json print serve
      cli             | ALL
      """;

  /** The last of the facts: they make no sentence and know no one who does. */
  private static final String LAST_OF_THE_FACTS = "lot";

  /** A library, and the rooms that may use it. */
  private static final String LIBRARIES =
      """
      com.fasterxml.aalto         | sheet
      org.apache.poi              | sheet
      de.siegmar.fastcsv          | sheet standards
      org.apache.commons.math3    | lot
      org.jgrapht                 | circuit
      org.ejml                    | circuit
      com.google.zxing            | pictures
      org.bouncycastle            | people
      com.openhtmltopdf           | print
      org.apache.fontbox          | print
      org.apache.pdfbox           | print record
      com.fasterxml.jackson       | json
      com.fazecast                | meter.link
      com.sun.net.httpserver      | serve
      org.sqlite                  | store
      org.postgresql              | store
      org.flywaydb                | store
      picocli                     | cli
      """;

  private static final Map<String, List<String>> MAY_KNOW = rooms();
  private static final Map<String, List<String>> MAY_USE = table(LIBRARIES);

  @ArchTest
  static void a_room_knows_only_the_rooms_of_the_table(JavaClasses all) {
    List<String> wrong = new ArrayList<>();
    for (JavaClass type : all) {
      String room = room(type);
      if (!MAY_KNOW.containsKey(room)) {
        wrong.add(type.getName() + " is in no room of the table");
        continue;
      }
      for (Dependency knows : type.getDirectDependenciesFromSelf()) {
        String other = room(knows.getTargetClass());
        if (isOurs(knows.getTargetClass())
            && !other.equals(room)
            && !MAY_KNOW.get(room).contains(other)) {
          wrong.add(room + " may not know " + other + ": " + knows.getDescription());
        }
      }
    }
    assertNone(wrong);
  }

  @ArchTest
  static void a_room_of_the_table_knows_only_rooms_above_it(JavaClasses all) {
    Set<String> above = new LinkedHashSet<>();
    MAY_KNOW.forEach(
        (room, known) -> {
          assertTrue(above.containsAll(known), room + " knows a room that is not above it");
          above.add(room);
        });
  }

  @ArchTest
  static void a_library_is_used_in_its_rooms_alone(JavaClasses all) {
    List<String> wrong = new ArrayList<>();
    for (JavaClass type : all) {
      for (Dependency uses : type.getDirectDependenciesFromSelf()) {
        String library = library(uses.getTargetClass());
        if (!library.isEmpty() && !MAY_USE.getOrDefault(library, List.of()).contains(room(type))) {
          wrong.add(room(type) + " may not use " + library + ": " + uses.getDescription());
        }
      }
    }
    assertNone(wrong);
  }

  @ArchTest
  static final ArchRule only_the_command_line_ends_the_process =
      noClasses()
          .that()
          .resideOutsideOfPackage("dev.ringout.cli..")
          .should()
          .callMethod(System.class, "exit", int.class);

  /** What the commands do, another program can do: see {@code LibraryTest} for the other half. */
  @ArchTest
  static final ArchRule the_command_line_asks_at_the_door =
      noClasses()
          .that()
          .resideInAPackage("dev.ringout.cli..")
          .should()
          .callMethodWhere(
              JavaCall.Predicates.target(HasName.Predicates.name("run"))
                  .and(
                      JavaCall.Predicates.target(
                          HasOwner.Predicates.With.owner(
                              JavaClass.Predicates.resideInAPackage("dev.ringout.jobs..")))));

  /**
   * Days come from what was written down: the same input gives the same page on any day. Only
   * {@code review} asks for today, by which waivers expire, and only where {@code --today} is not
   * given; {@code store add} keeps when something was brought in, of which no verdict knows, and
   * {@code people} when something was said of somebody; {@code report} when somebody signed; a
   * meter's reading is of a moment; and the bench's server waits for a client only so long.
   */
  @ArchTest
  static final ArchRule nothing_reads_a_clock =
      classes()
          .that()
          .doNotHaveFullyQualifiedName("dev.ringout.cli.ReviewCommand")
          .and()
          .doNotHaveFullyQualifiedName("dev.ringout.cli.StoreCommand")
          .and()
          .doNotHaveFullyQualifiedName("dev.ringout.cli.PeopleCommand")
          .and()
          .doNotHaveFullyQualifiedName("dev.ringout.cli.ReportCommand")
          .and()
          .doNotHaveFullyQualifiedName("dev.ringout.meter.link.SystemTicks")
          .and()
          .doNotHaveFullyQualifiedName("dev.ringout.serve.Watch")
          .should(readNoClock());

  @ArchTest
  static final ArchRule no_static_state_can_change = fields().that().areStatic().should().beFinal();

  @ArchTest
  static final ArchRule every_package_rejects_null =
      classes()
          .that()
          .haveSimpleName("package-info")
          .should()
          .beAnnotatedWith("org.jspecify.annotations.NullMarked");

  @ArchTest
  static final ArchRule text_is_the_same_in_every_locale =
      noClasses()
          .should()
          .callMethod(String.class, "formatted", Object[].class)
          .orShould()
          .callMethod(String.class, "format", String.class, Object[].class)
          .orShould()
          .callMethod(String.class, "toUpperCase")
          .orShould()
          .callMethod(String.class, "toLowerCase");

  private static ArchCondition<JavaClass> readNoClock() {
    return new ArchCondition<>("read no clock") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        Stream.concat(
                type.getCodeUnitCallsFromSelf().stream(),
                type.getCodeUnitReferencesFromSelf().stream())
            .filter(ArchitectureTest::readsClock)
            .forEach(
                access -> events.add(SimpleConditionEvent.violated(type, access.getDescription())));
      }
    };
  }

  private static boolean readsClock(JavaAccess<?> access) {
    return (access instanceof JavaCall<?> call && isDateOfNow(call))
        || readsClock(access.getTargetOwner().getName(), access.getTarget().getName());
  }

  private static boolean readsClock(String owner, String method) {
    return switch (owner) {
      case "java.lang.System" -> method.equals("nanoTime") || method.equals("currentTimeMillis");
      case "java.util.Calendar" -> method.equals("getInstance");
      case "java.time.Clock" -> true;
      default -> owner.startsWith("java.time.") && method.equals("now");
    };
  }

  /** {@code new Date()} and {@code new GregorianCalendar()} are of this moment. */
  private static boolean isDateOfNow(JavaCall<?> call) {
    String owner = call.getTargetOwner().getName();
    return (owner.equals("java.util.Date") || owner.equals("java.util.GregorianCalendar"))
        && call.getTarget().getName().equals("<init>")
        && call.getTarget().getRawParameterTypes().isEmpty();
  }

  private static boolean isOurs(JavaClass type) {
    return type.getPackageName().equals("dev.ringout")
        || type.getPackageName().startsWith("dev.ringout.");
  }

  private static String room(JavaClass type) {
    String name = type.getPackageName();
    return name.equals("dev.ringout") ? "root" : name.replaceFirst("^dev\\.ringout\\.", "");
  }

  private static String library(JavaClass type) {
    return MAY_USE.keySet().stream()
        .filter(library -> type.getPackageName().concat(".").startsWith(library + "."))
        .findFirst()
        .orElse("");
  }

  private static Map<String, List<String>> rooms() {
    Map<String, List<String>> written = table(ROOMS);
    List<String> above = new ArrayList<>();
    List<String> facts = new ArrayList<>();
    Map<String, List<String>> rooms = new LinkedHashMap<>();
    written.forEach(
        (room, known) -> {
          Set<String> all = new LinkedHashSet<>(above.subList(0, Math.min(2, above.size())));
          for (String one : known) {
            all.addAll(
                switch (one) {
                  case "FACTS" -> facts;
                  case "ALL" -> above;
                  default -> one.endsWith("*") ? allOf(one, above) : List.of(one);
                });
          }
          rooms.put(room, List.copyOf(all));
          above.add(room);
          if (room.equals(LAST_OF_THE_FACTS)) {
            facts.addAll(above);
          }
        });
    return rooms;
  }

  private static List<String> allOf(String pattern, List<String> rooms) {
    String name = pattern.substring(0, pattern.length() - 1);
    return rooms.stream().filter(room -> room.equals(name) || room.startsWith(name + ".")).toList();
  }

  private static Map<String, List<String>> table(String text) {
    Map<String, List<String>> table = new LinkedHashMap<>();
    for (String line : text.lines().toList()) {
      String[] cells = line.split("\\|", 2);
      table.put(
          cells[0].strip(),
          Arrays.stream(cells[1].strip().split(" ", -1)).filter(one -> !one.isEmpty()).toList());
    }
    return table;
  }

  private static void assertNone(List<String> wrong) {
    assertTrue(wrong.isEmpty(), wrong.size() + " times\n" + String.join("\n", wrong));
  }
}
