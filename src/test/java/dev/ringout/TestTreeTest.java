package dev.ringout;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.net.URI;
import java.util.Set;

/**
 * The tests, and what is under {@code src/bench}, are kept as the code is: what several packages
 * share stands in {@code support} and {@code sample}, and nothing goes round.
 */
@AnalyzeClasses(packages = "dev.ringout", importOptions = ImportOption.OnlyIncludeTests.class)
class TestTreeTest {
  private static final Set<String> SHARED = Set.of("dev.ringout.support", "dev.ringout.sample");

  @ArchTest
  static final ArchRule what_tests_share_stands_in_support_and_sample =
      classes().should(useNoTestOfAnotherPackage());

  @ArchTest
  static final ArchRule the_packages_of_the_tests_have_no_circles =
      slices().matching("dev.(**)").should().beFreeOfCycles();

  private static ArchCondition<JavaClass> useNoTestOfAnotherPackage() {
    return new ArchCondition<>("use no test of another package") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        for (Dependency uses : type.getDirectDependenciesFromSelf()) {
          String other = uses.getTargetClass().getPackageName();
          if (isOfTheTests(uses.getTargetClass())
              && !other.equals(type.getPackageName())
              && !SHARED.contains(other)) {
            events.add(SimpleConditionEvent.violated(type, uses.getDescription()));
          }
        }
      }
    };
  }

  /** Main and test classes stand in folders of their own: a name alone does not tell them apart. */
  private static boolean isOfTheTests(JavaClass type) {
    return type.getSource()
        .map(source -> source.getUri())
        .map(URI::getPath)
        .filter(path -> path.contains("/test-classes/"))
        .isPresent();
  }
}
