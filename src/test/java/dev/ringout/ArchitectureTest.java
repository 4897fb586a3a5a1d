package dev.ringout;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The floors of docs/explanation/architecture.md, and where the large libraries may be used. */
@AnalyzeClasses(packages = "dev.ringout", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule lower_floors_know_nothing_of_higher_ones =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("basics")
          .definedBy("dev.ringout.units..", "dev.ringout.source..", "dev.ringout.seal..")
          .layer("values")
          .definedBy("dev.ringout.harness..", "dev.ringout.readings..", "dev.ringout.standards..")
          .layer("sheet")
          .definedBy("dev.ringout.sheet..")
          .layer("intake")
          .definedBy("dev.ringout.intake..")
          .layer("imports")
          .definedBy("dev.ringout.imports..")
          .layer("circuit")
          .definedBy("dev.ringout.circuit..")
          .layer("compare")
          .definedBy("dev.ringout.compare..")
          .layer("review")
          .definedBy("dev.ringout.review..")
          .layer("trace")
          .definedBy("dev.ringout.trace..")
          .layer("plan")
          .definedBy("dev.ringout.plan..")
          .layer("work")
          .definedBy("dev.ringout.work..")
          .layer("revision")
          .definedBy("dev.ringout.revision..")
          .layer("diagnose")
          .definedBy("dev.ringout.diagnose..")
          .layer("check")
          .definedBy("dev.ringout.check..")
          .layer("report")
          .definedBy("dev.ringout.report..")
          .layer("cli")
          .definedBy("dev.ringout.cli..")
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("report")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("check")
          .mayOnlyBeAccessedByLayers("report", "cli")
          .whereLayer("diagnose")
          .mayOnlyBeAccessedByLayers("check", "report", "cli")
          .whereLayer("compare")
          .mayOnlyBeAccessedByLayers("plan", "diagnose", "check", "report", "cli")
          .whereLayer("work")
          .mayOnlyBeAccessedByLayers("report", "cli")
          .whereLayer("revision")
          .mayOnlyBeAccessedByLayers("report", "cli")
          .whereLayer("plan")
          .mayOnlyBeAccessedByLayers("report", "cli")
          .whereLayer("trace")
          .mayOnlyBeAccessedByLayers("report", "cli")
          .whereLayer("review")
          .mayOnlyBeAccessedByLayers("check", "report", "cli")
          .whereLayer("circuit")
          .mayOnlyBeAccessedByLayers(
              "compare",
              "plan",
              "work",
              "review",
              "trace",
              "revision",
              "diagnose",
              "check",
              "report",
              "cli")
          .whereLayer("imports")
          .mayOnlyBeAccessedByLayers("report", "cli")
          .whereLayer("intake")
          .mayOnlyBeAccessedByLayers("imports", "cli")
          .whereLayer("sheet")
          .mayOnlyBeAccessedByLayers("intake", "imports", "report", "cli");

  @ArchTest
  static final ArchRule packages_have_no_cycles =
      slices().matching("dev.ringout.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule the_rooms_of_the_importer_have_no_cycles =
      slices().matching("dev.ringout.imports.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule the_importer_does_not_reach_into_the_reader_of_harness_files =
      noClasses()
          .that()
          .resideInAPackage("dev.ringout.imports..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("dev.ringout.intake..");

  @ArchTest
  static final ArchRule the_reader_of_harness_files_does_not_reach_into_the_importer =
      noClasses()
          .that()
          .resideInAnyPackage("dev.ringout.intake..", "dev.ringout.cells..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("dev.ringout.imports..");

  @ArchTest
  static final ArchRule only_the_sheet_floor_uses_the_workbook_library =
      noClasses()
          .that()
          .resideOutsideOfPackage("dev.ringout.sheet..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.apache.poi..");

  /** Published tables come as CSV files inside the jar: the one use outside the sheet floor. */
  @ArchTest
  static final ArchRule only_sheets_and_published_tables_use_the_csv_library =
      noClasses()
          .that()
          .resideOutsideOfPackages("dev.ringout.sheet..", "dev.ringout.standards..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("de.siegmar.fastcsv..");

  @ArchTest
  static final ArchRule only_the_circuit_floor_uses_the_graph_and_matrix_libraries =
      noClasses()
          .that()
          .resideOutsideOfPackage("dev.ringout.circuit..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.jgrapht..", "org.ejml..");

  @ArchTest
  static final ArchRule only_the_command_line_uses_picocli =
      noClasses()
          .that()
          .resideOutsideOfPackage("dev.ringout.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..");

  @ArchTest
  static final ArchRule only_the_command_line_ends_the_process =
      noClasses()
          .that()
          .resideOutsideOfPackage("dev.ringout.cli..")
          .should()
          .callMethod(System.class, "exit", int.class);

  @ArchTest
  static final ArchRule writers_read_no_clock =
      noClasses()
          .should()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(java.time.LocalDateTime.class, "now");

  @ArchTest
  static final ArchRule no_static_state_can_change =
      com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields()
          .that()
          .areStatic()
          .should()
          .beFinal();

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
}
