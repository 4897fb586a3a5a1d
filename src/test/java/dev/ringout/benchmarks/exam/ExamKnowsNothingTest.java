package dev.ringout.benchmarks.exam;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** An exam that shares its models with the pupil would agree with him. */
@AnalyzeClasses(packages = "dev.ringout.benchmarks.exam")
class ExamKnowsNothingTest {
  private static final String HERE = "dev.ringout.benchmarks.exam";

  @ArchTest
  static final ArchRule the_exam_knows_nothing_of_the_program =
      noClasses()
          .that()
          .doNotHaveSimpleName("Examinee")
          .should()
          .dependOnClassesThat(ofTheProgram());

  @ArchTest
  static final ArchRule the_program_is_asked_by_its_command_alone =
      noClasses()
          .that()
          .haveSimpleName("Examinee")
          .should()
          .dependOnClassesThat(
              ofTheProgram().and(DescribedPredicate.not(named("dev.ringout.cli.Main"))));

  private static DescribedPredicate<JavaClass> ofTheProgram() {
    return DescribedPredicate.describe(
        "are of the program",
        type ->
            type.getPackageName().startsWith("dev.ringout") && !type.getPackageName().equals(HERE));
  }

  private static DescribedPredicate<JavaClass> named(String name) {
    return DescribedPredicate.describe(name, type -> type.getName().equals(name));
  }
}
