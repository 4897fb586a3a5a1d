package dev.ringout.revision;

import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.List;

/** What makes one doubt that the right lists, or the right wires, were compared. */
public sealed interface Unsure {

  /** What is made of it, by its kind. */
  <T> T match(Cases<T> cases);

  /**
   * Everything that is doubtful of a difference.
   *
   * @param differs whether the two lists differ in anything
   */
  static List<Unsure> of(Difference difference, boolean differs) {
    List<Unsure> unsure = new ArrayList<>();
    String oldDrawing = difference.before().headerValue("drawing");
    String newDrawing = difference.after().headerValue("drawing");
    if (!oldDrawing.isEmpty() && !newDrawing.isEmpty() && !oldDrawing.equals(newDrawing)) {
      unsure.add(new TwoDrawings(oldDrawing, newDrawing));
    }
    String revision = difference.after().headerValue("revision");
    boolean sameLetter = revision.equals(difference.before().headerValue("revision"));
    if (!revision.isEmpty() && sameLetter && differs) {
      unsure.add(new OneLetterTwice(revision));
    }
    unsure.addAll(difference.ties());
    return List.copyOf(unsure);
  }

  /** The lists are of two drawings. */
  record TwoDrawings(String old, String now) implements Unsure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.twoDrawings(this);
    }
  }

  /** The lists differ and bear one revision letter. */
  record OneLetterTwice(String revision) implements Unsure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.oneLetterTwice(this);
    }
  }

  /** Two wires of the earlier list could change places in the later at no more work. */
  record EitherOfTwo(Wire one, Wire other) implements Unsure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.eitherOfTwo(this);
    }
  }

  /**
   * Too many wires could be each other to be matched all together.
   *
   * @param earlier how many of the earlier list
   * @param later how many of the later list
   * @param first of the earlier list
   */
  record MatchedOneByOne(int earlier, int later, Wire first) implements Unsure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.matchedOneByOne(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link TwoDrawings}. */
    T twoDrawings(TwoDrawings unsure);

    /** See {@link OneLetterTwice}. */
    T oneLetterTwice(OneLetterTwice unsure);

    /** See {@link EitherOfTwo}. */
    T eitherOfTwo(EitherOfTwo unsure);

    /** See {@link MatchedOneByOne}. */
    T matchedOneByOne(MatchedOneByOne unsure);
  }
}
