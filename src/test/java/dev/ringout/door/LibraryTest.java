package dev.ringout.door;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.Ringout;
import dev.ringout.check.CheckResult;
import dev.ringout.harness.Harness;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.CheckJob;
import dev.ringout.jobs.PeopleJob;
import dev.ringout.jobs.PlanJob;
import dev.ringout.jobs.RecordJob;
import dev.ringout.jobs.Stopped;
import dev.ringout.jobs.UnitRequest;
import dev.ringout.jobs.UnitRequest.Touched;
import dev.ringout.jobs.VerifyJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.plan.TestPlan;
import dev.ringout.print.RecordHtml;
import dev.ringout.readings.ReadingSet;
import dev.ringout.seal.Digest;
import dev.ringout.seal.SealFinding;
import dev.ringout.sheet.PrintForm.PaperSize;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import dev.ringout.support.PlainLimits;
import java.io.File;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What another program gets of the library, without the command line. */
class LibraryTest {
  private static final Path SAMPLES = Path.of("harness-samples/swing-bridge");
  private static final Path LIST = SAMPLES.resolve("junction-box.xlsx");
  private static final Path CLEAN = SAMPLES.resolve("point-to-point-clean.xlsx");

  @TempDir private Path folder;

  private static UnitRequest unit(Path... readings) {
    return UnitRequest.of(LIST, List.of(readings));
  }

  @Test
  void the_main_job_runs_with_no_command_line_library_on_the_path()
      throws IOException, InterruptedException {
    String path =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(entry -> !entry.contains("picocli"))
            .collect(Collectors.joining(File.pathSeparator));
    Process run =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                path,
                ProveAUnit.class.getName(),
                LIST.toString(),
                SAMPLES.resolve("point-to-point.xlsx").toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, run.waitFor(), said);
    assertTrue(said.lines().anyMatch("FAULTS"::equals), said);
    assertTrue(said.lines().count() > 5, said);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ProveAUnit", "PlanRecordDiff"})
  void the_page_shows_the_programs_that_this_test_compiles(String name) throws IOException {
    String page = Files.readString(Path.of("docs/how-to/use-from-java.md"));
    String program = Files.readString(Path.of("src/test/java/dev/ringout/door/" + name + ".java"));
    String shown = program.substring(program.indexOf("  public static void main"));
    shown = shown.substring(0, shown.lastIndexOf("}")).stripTrailing().stripIndent();
    assertTrue(page.contains("```java\n" + shown + "\n```"), "the page's program has drifted");
  }

  @Test
  void a_program_plans_records_and_compares(@TempDir Path folder) throws Exception {
    PlanRecordDiff.main(
        new String[] {
          LIST.toString(),
          SAMPLES.resolve("point-to-point.xlsx").toString(),
          folder.toString(),
          SAMPLES.resolve("junction-box-c.xlsx").toString()
        });
    assertTrue(Files.size(folder.resolve("rest.xlsx")) > 1_000);
    VerifyJob.Result verified =
        Ringout.onFiles()
            .verify(
                new VerifyJob.Request(
                    folder.resolve("record.html"),
                    List.of(),
                    Optional.empty(),
                    Optional.of(SAMPLES)));
    assertTrue(
        verified.findings().stream()
            .noneMatch(finding -> finding.state() == SealFinding.State.DIFFERS),
        verified.findings().toString());
  }

  @Test
  void every_job_has_its_method_at_the_door() throws IOException {
    Set<String> jobs = new TreeSet<>();
    try (Stream<Path> files = Files.list(Path.of("src/main/java/dev/ringout/jobs"))) {
      // Who may sign in is said step by step: that job is given itself.
      files
          .map(file -> "" + file.getFileName())
          .filter(name -> name.endsWith("Job.java") && !name.equals("PeopleJob.java"))
          .forEach(name -> jobs.add(name.replace(".java", ".Request")));
    }
    Set<String> asked = new TreeSet<>();
    for (Method method : Ringout.class.getMethods()) {
      for (Class<?> request : method.getParameterTypes()) {
        if (request.getName().startsWith("dev.ringout.jobs.") && request.isRecord()) {
          asked.add(request.getName().replaceFirst(".*\\.", "").replace('$', '.'));
        }
      }
    }
    assertEquals(jobs, asked);
    assertTrue(
        Stream.of(Ringout.class.getMethods())
            .anyMatch(method -> method.getReturnType().equals(PeopleJob.class)));
  }

  @Test
  void what_a_plan_leaves_open_after_a_rework_is_read_again() throws WrongRequest {
    TestPlan plan =
        Ringout.onFiles()
            .plan(PlanJob.Request.whole(unit(CLEAN).with(new Touched(List.of("w006"), List.of()))))
            .result()
            .orElseThrow();
    assertTrue(plan.steps().size() > 10);
  }

  @Test
  void a_wire_that_the_list_does_not_have_is_a_wrong_request() {
    WrongRequest wrong =
        assertThrows(
            WrongRequest.class,
            () ->
                Ringout.onFiles()
                    .plan(
                        PlanJob.Request.whole(
                            unit().with(new Touched(List.of("W0O6"), List.of())))));
    assertEquals(WrongRequest.Part.TOUCHED, wrong.part());
    assertEquals("the harness has no wire W0O6; maybe W006", wrong.text());
  }

  @Test
  void inputs_that_are_missing_are_refused_with_all_that_is_wrong() throws WrongRequest {
    Answer<CheckResult> answer =
        Ringout.onFiles()
            .check(
                CheckJob.Request.of(
                    UnitRequest.of(
                        folder.resolve("list.xlsx"), List.of(folder.resolve("sheet.xlsx")))));
    assertTrue(answer.result().isEmpty());
    boolean missing = answer.match(given -> false, Answer.Refused::missing);
    assertTrue(missing);
    assertEquals(2, answer.problems().size());
  }

  @Test
  void of_an_empty_list_nothing_is_shown() {
    Harness empty = Harness.builder(PlainLimits.of()).build();
    CheckResult result = CheckResult.of(empty, new ReadingSet(List.of(), List.of()), List.of());
    assertEquals(CheckResult.Verdict.INCOMPLETE, result.verdict());
  }

  @Test
  void an_input_with_an_error_never_conforms() throws WrongRequest {
    CheckResult good =
        Ringout.onFiles().check(CheckJob.Request.of(unit(CLEAN))).result().orElseThrow();
    assertEquals(CheckResult.Verdict.CONFORMS, good.verdict());
    Problem error = new Problem(Place.of("sheet.xlsx"), "", Severity.ERROR, "is no number", "");
    assertEquals(
        CheckResult.Verdict.INCOMPLETE,
        CheckResult.of(good.harness(), good.readings(), List.of(error)).verdict());
  }

  @Test
  void a_record_that_does_not_show_its_digest_is_continued_by_none() throws Exception {
    Path first = folder.resolve("first.html");
    RecordJob.Result record =
        Ringout.onFiles().record(RecordJob.Request.of(unit(CLEAN), first)).result().orElseThrow();
    Files.writeString(first, "<p>all is well</p>");
    Files.writeString(VerifyJob.sealOf(first), record.seal(Digest.of(first), Instant.EPOCH));
    RecordJob.Request next =
        new RecordJob.Request(
            unit(CLEAN),
            Optional.empty(),
            Optional.empty(),
            Optional.of(RecordJob.Before.of(first)),
            List.of(),
            Optional.empty(),
            folder.resolve("next.html"));
    Stopped stopped = assertThrows(Stopped.class, () -> Ringout.onFiles().record(next));
    assertTrue(stopped.text().contains("is not as it was sealed"), stopped.text());
  }

  @Test
  void a_record_is_written_sealed_and_verified_by_whoever_asks() throws Exception {
    Path to = folder.resolve("record.html");
    RecordJob.Result record =
        Ringout.onFiles().record(RecordJob.Request.of(unit(CLEAN), to)).result().orElseThrow();
    Files.writeString(to, RecordHtml.write(record.content(), PaperSize.A4));
    Files.writeString(VerifyJob.sealOf(to), record.seal(Digest.of(to), Instant.EPOCH));
    VerifyJob.Result verified =
        Ringout.onFiles()
            .verify(
                new VerifyJob.Request(to, List.of(), Optional.empty(), Optional.of(Path.of(""))));
    assertTrue(!verified.has(SealFinding.State.DIFFERS) && !verified.isAsSealed());
    assertEquals(
        List.of(SealFinding.Kind.NOT_SIGNED),
        verified.findings().stream()
            .filter(one -> one.state() == SealFinding.State.NOT_SHOWN)
            .map(SealFinding::kind)
            .toList());
  }
}
