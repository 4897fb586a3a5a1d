package dev.ringout.jobs;

import dev.ringout.harness.Harness;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.work.SleeveText;
import dev.ringout.work.WorkPapers;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The papers from which a unit is wired. */
public final class WorkJob {
  private WorkJob() {}

  /**
   * What is asked.
   *
   * @param only these items, and the wires that end there; all where there are none
   * @param sleeve a scheme of what is on a sleeve, or a text with words in braces
   */
  public record Request(Path list, List<String> only, String sleeve, Optional<Path> ownTables) {
    /** What is given can't be changed afterwards. */
    public Request {
      only = List.copyOf(only);
    }
  }

  /**
   * Makes the papers.
   *
   * @throws WrongRequest where the request names what the list or the schemes do not have
   */
  public static Answer<WorkPapers> run(Request request, Inputs inputs) throws WrongRequest {
    Optional<Harness> harness = inputs.soundHarness(request.list());
    if (harness.isEmpty()) {
      return Answer.refused(inputs);
    }
    return WrongRequest.answer(() -> papers(request, harness.get()), inputs);
  }

  private static WorkPapers papers(Request request, Harness harness) throws WrongRequest {
    Tables tables = OwnTables.over(request.ownTables());
    return WorkPapers.of(
        harness,
        tables,
        CopperWire.published(),
        new NamesOfRequest(harness).items(Part.ONLY, request.only()),
        sleeveText(request.sleeve(), tables));
  }

  private static SleeveText sleeveText(String scheme, Tables tables) throws WrongRequest {
    Optional<SleeveText> text = SleeveText.of(scheme, tables);
    if (text.isEmpty()) {
      throw new WrongRequest(
          Part.SLEEVE,
          scheme
              + " is not a scheme; these are: "
              + String.join(", ", SleeveText.schemes(tables))
              + "; your own text has words in braces, such as {wire}");
    }
    return text.get();
  }
}
