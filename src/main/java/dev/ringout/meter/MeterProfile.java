package dev.ringout.meter;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How a kind of meter is spoken to. It is data: one text each, named by what it does.
 *
 * @param name by which it is asked for
 * @param about what it is for, in a sentence
 * @param line how its serial line is set; of no meaning on a network
 * @param ending what ends a line that is sent
 * @param language commands or talk
 * @param timing how long things take
 * @param display what its last digit and its noise are
 */
public record MeterProfile(
    String name,
    String about,
    LineSettings line,
    Ending ending,
    Language language,
    Timing timing,
    Display display) {

  /** {@code CONF:RES 100}, {@code RES:RANG 1E3}. */
  private static final Pattern RANGE =
      Pattern.compile(
          "(?i).*(?:CONF[A-Z]*:(?:SCAL[A-Z]*:)?F?RES[A-Z]*|RANG[A-Z]*(?::UPP[A-Z]*)?)\\s+"
              + "(\\d+(?:\\.\\d*)?(?:E[+-]?\\d{1,2})?)\\b.*");

  /** What ends a line. */
  public enum Ending {
    LF("\n"),
    CR("\r"),
    CRLF("\r\n"),
    NONE("");

    private final String characters;

    Ending(String characters) {
      this.characters = characters;
    }

    /** The characters. */
    public String characters() {
      return characters;
    }

    static Optional<Ending> of(String word) {
      return Stream.of(values())
          .filter(one -> one.name().equals(word.toUpperCase(Locale.ROOT)))
          .findFirst();
    }
  }

  /** What is said to it, and how it says what it reads. */
  public sealed interface Language {
    /** What is made of it, by its kind. */
    <T> T match(LanguageCases<T> cases);

    /** What a line of a meter that speaks so says. */
    Shown read(String line);

    /** The top of the range that it is set to; absent where none is, or nobody knows. */
    default OptionalDouble rangeOhms() {
      return OptionalDouble.empty();
    }

    /** Whether it may read over four wires: of a meter that only talks its user knows. */
    default boolean mayReadFourWire() {
      return true;
    }
  }

  /** One answer for each kind of language. */
  public interface LanguageCases<T> {
    /** See {@link Scpi}. */
    T scpi(Scpi language);

    /** See {@link Talk}. */
    T talk(Talk language);
  }

  /**
   * Commands by SCPI-99.
   *
   * @param setUp sent once after opening, each followed by a look at the error queue
   * @param twoWire sets it to ohms over two wires
   * @param fourWire sets it to ohms over four wires, or empty where it can't
   * @param settings ask how it is set: what was answered after set-up is answered after each value
   * @param query asks for one value
   * @param errors asks for the oldest error
   * @param fence how an answer is told from those before it
   * @param overFloorOhms from where on a value means over range
   * @param secondIsVolts whether the second field of an answer gives volts
   */
  public record Scpi(
      List<String> setUp,
      String twoWire,
      String fourWire,
      List<String> settings,
      String query,
      String errors,
      Fence fence,
      double overFloorOhms,
      boolean secondIsVolts)
      implements Language {
    /** What is given can't be changed afterwards. */
    public Scpi {
      setUp = List.copyOf(setUp);
      settings = List.copyOf(settings);
    }

    /** The top of the range that it is set to over two wires; absent where it looks for its own. */
    @Override
    public OptionalDouble rangeOhms() {
      return Stream.concat(setUp.stream(), Stream.of(twoWire))
          .map(RANGE::matcher)
          .filter(Matcher::matches)
          .mapToDouble(range -> Double.parseDouble(range.group(1)))
          .min();
    }

    @Override
    public <T> T match(LanguageCases<T> cases) {
      return cases.scpi(this);
    }

    @Override
    public boolean mayReadFourWire() {
      return !fourWire.isEmpty();
    }

    @Override
    public Shown read(String line) {
      return ScpiAnswer.read(line, overFloorOhms, secondIsVolts);
    }
  }

  /** What is asked behind each query, so that an answer that is late or comes twice is noticed. */
  public enum Fence {
    /** A number of its own each time, written to and read from the event status enable register. */
    NUMBER,
    /** The error queue, whose answer is no number. */
    ERRORS,
    /** Nothing: only the order in which lines come. */
    NONE;

    /** As it is written. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * Lines that a meter sends.
   *
   * @param sends when it does
   * @param poll what is sent to make it, where it is asked
   * @param bareIsOhms whether a number without a unit is ohms
   * @param withVolts whether each line has the volts of an insulation test too
   */
  public record Talk(Sends sends, String poll, boolean bareIsOhms, boolean withVolts)
      implements Language {
    @Override
    public <T> T match(LanguageCases<T> cases) {
      return cases.talk(this);
    }

    @Override
    public Shown read(String line) {
      return DisplayLine.read(line, this);
    }
  }

  /** When a meter that only talks sends a line. */
  public enum Sends {
    /** All the time. */
    STREAM,
    /** When its key is pressed. */
    KEY,
    /** When it is asked by some characters. */
    POLL;

    /** As it is written. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * How long things take.
   *
   * @param connectMillis to reach it
   * @param answerMillis the longest wait for an answer
   * @param settleMillis its own delay from touch to a right value
   */
  public record Timing(int connectMillis, int answerMillis, int settleMillis) {}

  /**
   * What its values are worth.
   *
   * @param stepOhms the least step of its display, where its answers have more digits than that; 0
   *     where the digits say it
   * @param noiseOhms how far a value may be from the middle of many, whatever its size
   * @param noiseShare and so much of it
   */
  public record Display(double stepOhms, double noiseOhms, double noiseShare) {}

  /** The same on another line. */
  public MeterProfile with(LineSettings otherLine) {
    return new MeterProfile(name, about, otherLine, ending, language, timing, display);
  }

  /** The same under a name of one's own, with what was measured of its noise and its delay. */
  public MeterProfile measured(String ownName, Display measured, int settleMillis) {
    return new MeterProfile(
        ownName,
        about,
        line,
        ending,
        language,
        new Timing(timing.connectMillis(), timing.answerMillis(), settleMillis),
        measured);
  }
}
