package dev.ringout.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dev.ringout.Ringout;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.Words;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Inputs that can't be used: no job throws, and each says everything that is wrong in them. */
class RefusalTest {
  private static final Ringout DOOR = Ringout.onFiles();

  @TempDir Path folder;

  /** Every job that reads a list. */
  enum Job {
    CHECK {
      @Override
      Answer<?> run(Path list, Path readings) throws WrongRequest {
        return DOOR.check(CheckJob.Request.of(UnitRequest.of(list, List.of(readings))));
      }
    },
    PLAN {
      @Override
      Answer<?> run(Path list, Path readings) throws WrongRequest {
        return DOOR.plan(PlanJob.Request.whole(UnitRequest.of(list, List.of(readings))));
      }
    },
    RECORD {
      @Override
      Answer<?> run(Path list, Path readings) throws WrongRequest, Stopped {
        return DOOR.record(
            RecordJob.Request.of(
                UnitRequest.of(list, List.of(readings)), list.resolveSibling("record.html")));
      }
    },
    WORK {
      @Override
      Answer<?> run(Path list, Path readings) throws WrongRequest {
        return DOOR.work(new WorkJob.Request(list, List.of(), "{wire}", Optional.empty()));
      }
    },
    REVIEW {
      @Override
      Answer<?> run(Path list, Path readings) throws WrongRequest {
        return DOOR.review(
            new ReviewJob.Request(
                list, Optional.empty(), LocalDate.of(2026, 11, 25), Optional.empty()));
      }
    },
    TRACE {
      @Override
      Answer<?> run(Path list, Path readings) throws WrongRequest {
        return DOOR.trace(new TraceJob.Request(list, List.of("J1-A"), "", Optional.empty()));
      }
    },
    DIFF {
      @Override
      Answer<?> run(Path list, Path readings) throws WrongRequest {
        return DOOR.diff(DiffJob.Request.of(list, list));
      }
    },
    FOUND {
      @Override
      Answer<?> run(Path list, Path readings) throws WrongRequest {
        return DOOR.found(new FoundJob.Request(list, "W1 on J1-A"));
      }
    };

    abstract Answer<?> run(Path list, Path readings) throws WrongRequest, Stopped;
  }

  private static Answer.Refused<?> refused(Answer<?> answer) {
    return answer.match(given -> fail("no refusal but " + given.value()), refused -> refused);
  }

  private static List<String> errors(Answer<?> answer) {
    return answer.problems().stream()
        .filter(problem -> problem.severity() == Severity.ERROR)
        .map(Problem::text)
        .toList();
  }

  @ParameterizedTest
  @EnumSource(Job.class)
  void a_list_that_is_not_there_is_missing(Job job) throws Exception {
    BoxOfTwoWires box = new BoxOfTwoWires(folder);
    Answer.Refused<?> refused = refused(job.run(box.missing(), box.readings("monday")));
    assertTrue(refused.missing());
    assertFalse(errors(refused).isEmpty());
    assertTrue(refused.problems().get(0).place().file().endsWith("no-such-file.xlsx"));
  }

  @ParameterizedTest
  @EnumSource(Job.class)
  void a_list_that_can_t_be_understood_is_not_missing(Job job) throws Exception {
    BoxOfTwoWires box = new BoxOfTwoWires(folder);
    Answer.Refused<?> refused = refused(job.run(box.wrongList(), box.readings("monday")));
    assertFalse(refused.missing());
    assertFalse(errors(refused).isEmpty());
  }

  @ParameterizedTest
  @EnumSource(
      value = Job.class,
      names = {"CHECK", "PLAN", "RECORD"})
  void all_inputs_are_looked_at_before_a_job_refuses(Job job) throws Exception {
    BoxOfTwoWires box = new BoxOfTwoWires(folder);
    Answer.Refused<?> refused =
        refused(job.run(folder.resolve("no-list.xlsx"), folder.resolve("no-readings.xlsx")));
    assertEquals(
        List.of("no-list.xlsx", "no-readings.xlsx"),
        refused.problems().stream().map(problem -> problem.place().file()).toList());
    assertTrue(refused(job.run(box.list(), box.missing())).missing(), "of readings too");
  }

  @Test
  void readings_without_a_list_and_a_list_to_import_are_missing_too() {
    Path missing = new BoxOfTwoWires(folder).missing();
    assertTrue(refused(DOOR.asFound(new AsFoundJob.Request(List.of(missing)))).missing());
    assertTrue(
        refused(
                DOOR.importList(
                    new ImportJob.Request(missing, Words.standard(), ImportOptions.none())))
            .missing());
  }

  @Test
  void what_refuses_has_no_result_and_what_answers_has_one() throws Exception {
    BoxOfTwoWires box = new BoxOfTwoWires(folder);
    assertEquals(Optional.empty(), Job.TRACE.run(box.missing(), box.missing()).result());
    assertTrue(Job.TRACE.run(box.list(), box.missing()).result().isPresent());
  }

  @Test
  void a_record_that_is_not_there_can_t_be_verified_and_one_without_a_seal_neither()
      throws IOException {
    Path record = folder.resolve("record.html");
    assertTrue(stopped(record).isMissing());
    Files.writeString(record, "<p>no seal</p>");
    Stopped unsealed = stopped(record);
    assertFalse(unsealed.isMissing());
    assertTrue(unsealed.text().endsWith("nothing tells what was sealed"), unsealed.text());
  }

  private static Stopped stopped(Path record) {
    return assertThrows(Stopped.class, () -> DOOR.verify(VerifyJob.Request.of(record, List.of())));
  }

  @Test
  void two_inputs_of_one_name_are_told_apart_by_their_paths() {
    Path one = Path.of("monday", "box.xlsx");
    Path other = Path.of("tuesday", "box.xlsx");
    FileInputs inputs = new FileInputs(Stream.of(one, other, Path.of("rest.xlsx")).toList());
    assertEquals(one.toString(), inputs.shownName(one));
    assertEquals("rest.xlsx", inputs.shownName(Path.of("rest.xlsx")));
  }
}
