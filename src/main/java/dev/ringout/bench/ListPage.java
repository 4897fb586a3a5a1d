package dev.ringout.bench;

import dev.ringout.review.Remark;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import java.util.List;
import java.util.Optional;

/**
 * A wire list that was handed in, as it was understood.
 *
 * @param id by which it is asked for
 * @param file the name of its file
 * @param title what it says of itself; empty where it does not
 * @param understood as one of our own files, or as somebody else's
 * @param state whether it can be taken
 * @param options by which it was read, option and value in turn
 * @param problems what is wrong or doubtful in it, each with its place
 * @param remarks of the review, once it can be taken
 * @param taken the id under which units are made to it; absent until it is taken
 */
public record ListPage(
    String id,
    String file,
    Title title,
    Understood understood,
    State state,
    List<String> options,
    List<Problem> problems,
    List<Remark> remarks,
    Optional<String> taken) {
  /** What is given can't be changed afterwards. */
  public ListPage {
    options = List.copyOf(options);
    problems = List.copyOf(problems);
    remarks = List.copyOf(remarks);
  }

  /** Whether a list can be taken. */
  public enum State {
    /** It is understood. */
    SURE,
    /** It can be read in several ways: somebody has to choose. */
    UNSURE,
    /** It can't be understood, or not all of it. */
    REFUSED
  }

  /** What a list says of itself. */
  public record Title(String title, String drawing, String revision) {
    /** Nothing. */
    public static final Title NONE = new Title("", "", "");
  }

  /**
   * What was understood.
   *
   * @param ours whether it is a harness file already
   * @param says in sentences
   * @param wires the first wires and links
   * @param more how many there are besides
   * @param columns what each column is taken for
   * @param choices what somebody may say of it
   */
  public record Understood(
      boolean ours,
      List<String> says,
      List<Line> wires,
      int more,
      List<Column> columns,
      List<Choice> choices) {
    /** Nothing. */
    public static final Understood NOTHING =
        new Understood(false, List.of(), List.of(), 0, List.of(), List.of());

    /** What is given can't be changed afterwards. */
    public Understood {
      says = List.copyOf(says);
      wires = List.copyOf(wires);
      columns = List.copyOf(columns);
      choices = List.copyOf(choices);
    }
  }

  /** A wire or a link, and where it stands. */
  public record Line(String sentence, Place place) {}

  /**
   * A column and what it is taken for.
   *
   * @param table of which it is one
   * @param name by which the option {@code --column} means it
   */
  public record Column(String table, String name, String heading, String role, String certainty) {}

  /**
   * Something that may be said of a list.
   *
   * @param text what
   * @param options all options by which it is read so
   * @param first what its first wires, lengths or gauges would be
   * @param why what speaks for it and against it
   */
  public record Choice(String text, List<String> options, List<String> first, List<String> why) {
    /** What is given can't be changed afterwards. */
    public Choice {
      options = List.copyOf(options);
      first = List.copyOf(first);
      why = List.copyOf(why);
    }
  }

  /** The same list, taken. */
  public ListPage taken(String list) {
    return new ListPage(
        id, file, title, understood, state, options, problems, remarks, Optional.of(list));
  }
}
