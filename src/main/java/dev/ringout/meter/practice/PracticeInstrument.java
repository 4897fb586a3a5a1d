package dev.ringout.meter.practice;

import dev.ringout.meter.MeterIdentity;
import dev.ringout.units.Text;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A meter of ohms as SCPI-99 and IEEE 488.2 have it, on probes that are simulated. Commands of its
 * own begin with {@code PRACtice}.
 */
public final class PracticeInstrument {
  private static final int MOST_ERRORS = 20;
  private static final int MEASURING_MILLIS = 20;
  private static final double TOP_OHMS = 1e8;

  /** IEEE 488.2: bit 5 of the event status register is an error of a command. */
  private static final int COMMAND_ERROR = 0x20;

  private static final int EXECUTION_ERROR = 0x10;
  private static final Pattern UNIT =
      Pattern.compile("\\s*([*:A-Za-z][*:A-Za-z0-9]*\\??)\\s*(.*?)\\s*", Pattern.DOTALL);

  /** Each command with its short form in capitals; what stands in brackets may be left out. */
  private enum Command {
    IDENTIFY("*IDN?"),
    RESET("*RST"),
    CLEAR("*CLS"),
    EVENT_ENABLE("*ESE"),
    EVENT_ENABLED("*ESE?"),
    EVENTS("*ESR?"),
    COMPLETE("*OPC"),
    COMPLETED("*OPC?"),
    SERVICE_ENABLE("*SRE"),
    SERVICE_ENABLED("*SRE?"),
    STATUS("*STB?"),
    SELF_TEST("*TST?"),
    WAIT("*WAI"),
    TWO_WIRE("CONFigure[:SCALar]:RESistance"),
    FOUR_WIRE("CONFigure[:SCALar]:FRESistance"),
    CONFIGURED("CONFigure?"),
    READ("READ?"),
    FETCH("FETCh?"),
    INITIATE("INITiate[:IMMediate]"),
    MEASURE_TWO("MEASure[:SCALar]:RESistance?"),
    MEASURE_FOUR("MEASure[:SCALar]:FRESistance?"),
    RANGE("[SENSe:]RESistance:RANGe[:UPPer]"),
    RANGE_FOUR("[SENSe:]FRESistance:RANGe[:UPPer]"),
    AUTO("[SENSe:]RESistance:RANGe:AUTO"),
    AUTO_FOUR("[SENSe:]FRESistance:RANGe:AUTO"),
    RATE("[SENSe:]RESistance:NPLCycles"),
    RATE_FOUR("[SENSe:]FRESistance:NPLCycles"),
    FUNCTION("[SENSe:]FUNCtion?"),
    IS_AUTO("[SENSe:]RESistance:RANGe:AUTO?"),
    IS_AUTO_FOUR("[SENSe:]FRESistance:RANGe:AUTO?"),
    RANGED("[SENSe:]RESistance:RANGe[:UPPer]?"),
    ERROR("SYSTem:ERRor[:NEXT]?"),
    VERSION("SYSTem:VERSion?"),
    PROBE("PRACtice:PROBe"),
    LIFT("PRACtice:LIFT"),
    OHMS("PRACtice:OHMS");

    private final Pattern pattern;

    Command(String written) {
      StringBuilder pattern = new StringBuilder("(?i):?");
      Matcher part = Pattern.compile("[A-Z*]+|[a-z]+|\\[|\\]|:|\\?").matcher(written);
      while (part.find()) {
        String text = part.group();
        pattern.append(
            switch (text.charAt(0)) {
              case '[' -> "(?:";
              case ']' -> ")?";
              case '?' -> "\\?";
              case '*' -> "\\" + text;
              default -> Character.isLowerCase(text.charAt(0)) ? "(?:" + text + ")?" : text;
            });
      }
      this.pattern = Pattern.compile(pattern.toString());
    }

    static Optional<Command> of(String header) {
      for (Command one : values()) {
        if (one.pattern.matcher(header).matches()) {
          return Optional.of(one);
        }
      }
      return Optional.empty();
    }
  }

  /** What a step of a plan asks for is put under the probes. */
  public interface Pairs {
    /** The ohms between two points by their names; absent where there is no such point. */
    Optional<Double> ohms(String from, String to);
  }

  private final PracticeProbes probes;
  private final Pairs pairs;
  private final Deque<String> errors = new ArrayDeque<>();
  private boolean fourWire;
  private double rangeOhms = Double.POSITIVE_INFINITY;
  private int eventEnable;
  private int serviceEnable;
  private int events;

  /** A meter on probes. */
  public PracticeInstrument(PracticeProbes probes, Pairs pairs) {
    this.probes = probes;
    this.pairs = pairs;
  }

  /** Carries out a line of commands; gives the answer to its queries, absent where it has none. */
  public synchronized Optional<String> execute(String line) throws InterruptedException {
    List<String> answers = new ArrayList<>();
    String path = "";
    for (String unit : line.strip().split(";", -1)) {
      if (unit.isBlank()) {
        continue;
      }
      Matcher matcher = UNIT.matcher(unit);
      if (!matcher.matches()) {
        error(-102, "Syntax error", COMMAND_ERROR);
        break;
      }
      String header = matcher.group(1);
      boolean fromRoot = header.startsWith(":") || header.startsWith("*") || path.isEmpty();
      String whole = fromRoot ? header : path + header;
      Optional<Command> command = Command.of(whole);
      if (command.isEmpty()) {
        error(-113, "Undefined header;" + header, COMMAND_ERROR);
        break;
      }
      if (!header.startsWith("*")) {
        path = whole.substring(0, whole.lastIndexOf(':') + 1);
      }
      answer(command.get(), matcher.group(2)).ifPresent(answers::add);
    }
    return answers.isEmpty() ? Optional.empty() : Optional.of(String.join(";", answers));
  }

  private Optional<String> answer(Command command, String value) throws InterruptedException {
    return switch (command) {
      case IDENTIFY -> Optional.of(MeterIdentity.OF_PRACTICE);
      case EVENT_ENABLED -> Optional.of("" + eventEnable);
      case EVENTS -> Optional.of("" + takeEvents());
      case COMPLETED -> Optional.of("1");
      case SERVICE_ENABLED -> Optional.of("" + serviceEnable);
      case STATUS -> Optional.of("" + status());
      case SELF_TEST -> Optional.of("0");
      case IS_AUTO, IS_AUTO_FOUR -> Optional.of(Double.isInfinite(rangeOhms) ? "1" : "0");
      case RANGED ->
          Optional.of(Text.of("%+.8E", BigDecimal.valueOf(Math.min(rangeOhms, TOP_OHMS))));
      case CONFIGURED, FUNCTION -> Optional.of(fourWire ? "\"FRES\"" : "\"RES\"");
      case READ, FETCH -> Optional.of(measured());
      case MEASURE_TWO, MEASURE_FOUR -> {
        configure(command == Command.MEASURE_FOUR, value);
        yield Optional.of(measured());
      }
      case ERROR -> Optional.of(errors.isEmpty() ? "+0,\"No error\"" : errors.remove());
      case VERSION -> Optional.of("1999.0");
      default -> {
        carryOut(command, value);
        yield Optional.empty();
      }
    };
  }

  private void carryOut(Command command, String value) {
    switch (command) {
      case RESET -> configure(false, "");
      case CLEAR -> {
        errors.clear();
        events = 0;
      }
      case EVENT_ENABLE -> eventEnable = register(value, eventEnable);
      case SERVICE_ENABLE -> serviceEnable = register(value, serviceEnable);
      case COMPLETE -> events |= 1;
      case TWO_WIRE, FOUR_WIRE -> configure(command == Command.FOUR_WIRE, value);
      case RANGE, RANGE_FOUR -> range(value);
      case AUTO, AUTO_FOUR -> rangeOhms = Double.POSITIVE_INFINITY;
      case RATE, RATE_FOUR -> positive(value);
      case PROBE -> probe(value);
      case LIFT -> lead(Double.POSITIVE_INFINITY);
      case OHMS -> positive(value).ifPresent(this::lead);
      default -> {
        // Nothing to be done: it is done at once, or has nothing to wait for.
      }
    }
  }

  private void configure(boolean four, String value) {
    fourWire = four;
    rangeOhms = Double.POSITIVE_INFINITY;
    if (!value.isBlank()) {
      range(value.split(",", -1)[0]);
    }
  }

  private void range(String value) {
    switch (value.strip().toUpperCase(Locale.ROOT)) {
      case "AUTO", "DEF", "MAX" -> rangeOhms = Double.POSITIVE_INFINITY;
      case "MIN" -> rangeOhms = 100;
      default -> positive(value).ifPresent(ohms -> rangeOhms = ohms);
    }
  }

  /** A number above zero; else an error is queued. */
  private Optional<Double> positive(String value) {
    if (value.isBlank()) {
      error(-109, "Missing parameter", COMMAND_ERROR);
      return Optional.empty();
    }
    return number(value, one -> one.doubleValue() > 0).map(BigDecimal::doubleValue);
  }

  private int register(String value, int before) {
    return number(value, one -> one.intValue() >= 0 && one.intValue() <= 255)
        .map(BigDecimal::intValue)
        .orElse(before);
  }

  /** A number that is allowed; else an error is queued. */
  private Optional<BigDecimal> number(String value, Predicate<BigDecimal> isAllowed) {
    try {
      BigDecimal number = new BigDecimal(value.strip());
      if (isAllowed.test(number)) {
        return Optional.of(number);
      }
      error(-222, "Data out of range", EXECUTION_ERROR);
    } catch (NumberFormatException e) {
      error(-104, "Data type error", COMMAND_ERROR);
    }
    return Optional.empty();
  }

  /** {@code "J1-A","P2-1"}. */
  private void probe(String value) {
    String[] points = value.replace("\"", "").split(",", -1);
    if (points.length != 2) {
      error(-109, "Missing parameter", COMMAND_ERROR);
      return;
    }
    Optional<Double> ohms = pairs.ohms(points[0].strip(), points[1].strip());
    if (ohms.isEmpty()) {
      error(-224, "Illegal parameter value", EXECUTION_ERROR);
      return;
    }
    lead(ohms.get());
  }

  private void lead(double ohms) {
    probes.lead();
    probes.touch(ohms);
  }

  private String measured() throws InterruptedException {
    Thread.sleep(MEASURING_MILLIS);
    double ohms = probes.ohms(fourWire);
    // A range is used up to 1.2 of its name, as displays of 120,000 steps have it.
    if (Double.isInfinite(ohms) || ohms > 1.2 * rangeOhms) {
      return "+9.90000000E+37";
    }
    BigDecimal number = BigDecimal.valueOf(ohms).round(new MathContext(9));
    return Text.of("%+.8E", number);
  }

  private int takeEvents() {
    int taken = events;
    events = 0;
    return taken;
  }

  private int status() {
    return (events & eventEnable) != 0 ? 0x20 : 0;
  }

  private void error(int number, String text, int event) {
    events |= event;
    if (errors.size() == MOST_ERRORS) {
      errors.removeLast();
      errors.add("-350,\"Queue overflow\"");
      return;
    }
    errors.add(number + ",\"" + text.replace("\"", "'") + "\"");
  }
}
