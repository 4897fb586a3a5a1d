package dev.ringout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.InstanceofCheck;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The families of kinds: an interface with {@code Cases}, and the records that are its kinds. */
@AnalyzeClasses(packages = "dev.ringout", importOptions = ImportOption.DoNotIncludeTests.class)
class KindsTest {
  /** There are at least so many: a rule about none would be no rule. */
  private static final int LEAST_KINDS = 200;

  private static List<JavaClass> kinds(JavaClasses all) {
    List<JavaClass> kinds = new ArrayList<>();
    for (JavaClass type : all) {
      if (type.isRecord()
          && type.getAllRawInterfaces().stream()
              .anyMatch(family -> all.contain(family.getName() + "$Cases"))) {
        kinds.add(type);
      }
    }
    assertTrue(kinds.size() >= LEAST_KINDS, kinds.size() + " kinds");
    return kinds;
  }

  /** Else it has its sentence, its code and its line in a page, and is never said. */
  @ArchTest
  static void every_kind_is_made_somewhere(JavaClasses all) {
    Set<String> idle = new TreeSet<>();
    for (JavaClass kind : kinds(all)) {
      boolean made =
          kind.getConstructorCallsToSelf().stream()
                  .anyMatch(call -> !call.getOriginOwner().equals(kind))
              || !kind.getConstructorReferencesToSelf().isEmpty();
      if (!made) {
        idle.add(kind.getName());
      }
    }
    assertEquals(Set.of(), idle);
  }

  /** A chain of {@code instanceof} is silent about the next kind; {@code Cases} do not compile. */
  @ArchTest
  static void nothing_asks_a_thing_for_its_kind(JavaClasses all) {
    List<JavaClass> kinds = kinds(all);
    Set<String> asking = new TreeSet<>();
    for (JavaClass type : all) {
      for (InstanceofCheck check : type.getInstanceofChecks()) {
        if (kinds.contains(check.getRawType())) {
          asking.add(type.getName() + " -> " + check.getRawType().getName());
        }
      }
    }
    assertEquals(Set.of(), asking);
  }
}
