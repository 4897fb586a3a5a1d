package dev.ringout;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The tests are kept as the code is: a helper is shared downwards, and nothing goes round. */
@AnalyzeClasses(packages = "dev.ringout", importOptions = ImportOption.OnlyIncludeTests.class)
class TestTreeTest {
  @ArchTest
  static final ArchRule the_packages_of_the_tests_have_no_circles =
      slices().matching("dev.(**)").should().beFreeOfCycles();
}
