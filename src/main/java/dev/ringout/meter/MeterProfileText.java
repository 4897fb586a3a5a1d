package dev.ringout.meter;

import dev.ringout.meter.MeterProfile.Display;
import dev.ringout.meter.MeterProfile.Ending;
import dev.ringout.meter.MeterProfile.Fence;
import dev.ringout.meter.MeterProfile.LanguageCases;
import dev.ringout.meter.MeterProfile.Scpi;
import dev.ringout.meter.MeterProfile.Sends;
import dev.ringout.meter.MeterProfile.Talk;
import dev.ringout.meter.MeterProfile.Timing;
import dev.ringout.units.Numbers;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** A profile as text: lines of a word, a colon and a value; {@code #} begins a remark. */
public final class MeterProfileText {
  private static final String FIRST_LINE = "meter profile: ringout 1";

  private static final Set<String> WORDS =
      Set.of(
          "about",
          "speaks",
          "line",
          "dtr",
          "rts",
          "ending",
          "set-up",
          "two-wire",
          "four-wire",
          "setting",
          "query",
          "errors",
          "fence",
          "over-floor",
          "second-field",
          "sends",
          "poll",
          "without-unit",
          "with",
          "connect-ms",
          "answer-ms",
          "settle-ms",
          "step-ohms",
          "noise-ohms",
          "noise-share");

  /** Those whose values go to the meter. */
  private static final Set<String> SENT =
      Set.of("set-up", "two-wire", "four-wire", "setting", "query", "errors", "poll");

  private static final Set<String> SEVERAL = Set.of("set-up", "setting");

  /** Headers that put out volts or current, or start a test that does. */
  private static final Pattern PUTS_OUT =
      Pattern.compile("(?i)(?:OUTP|SOUR|TEST|STAR|HIP|SAF|VOLT|CURR|POW|HV).*");

  /**
   * Whether any word of what is sent could do so, wherever it stands and whatever number it has.
   */
  private static boolean putsOut(String sent) {
    return Arrays.stream(sent.split("[^A-Za-z0-9]+", -1))
        .anyMatch(word -> PUTS_OUT.matcher(word).matches());
  }

  private static boolean isPlain(String sent) {
    return sent.chars().allMatch(c -> c >= ' ' && c < 0x7f);
  }

  private final String name;
  private final Map<String, List<String>> said = new LinkedHashMap<>();

  private MeterProfileText(String name) {
    this.name = name;
  }

  /**
   * The profile that a text is.
   *
   * @throws MeterTrouble naming the line that can't be understood
   */
  public static MeterProfile read(String name, String text) throws MeterTrouble {
    MeterProfileText reading = new MeterProfileText(name);
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      reading.line(number, line.strip());
    }
    return reading.profile();
  }

  private void line(int number, String line) throws MeterTrouble {
    if (line.isEmpty() || line.startsWith("#") || line.equals(FIRST_LINE)) {
      return;
    }
    int colon = line.indexOf(':');
    String word = colon < 0 ? line : line.substring(0, colon).strip();
    if (colon < 0 || !WORDS.contains(word)) {
      throw wrong("line " + number + ": \"" + line + "\" begins with no word of a profile");
    }
    String value = line.substring(colon + 1).strip();
    if (SENT.contains(word) && !isPlain(value)) {
      throw wrong("line " + number + ": holds signs that can't be seen, which are never sent");
    }
    if (SENT.contains(word) && putsOut(value)) {
      throw wrong(
          "line " + number + ": \"" + value + "\" could switch volts on, which is never sent");
    }
    List<String> values = said.computeIfAbsent(word, key -> new ArrayList<>());
    if (!values.isEmpty() && !SEVERAL.contains(word)) {
      throw wrong("line " + number + ": " + word + " is given twice");
    }
    values.add(value);
  }

  private MeterTrouble wrong(String why) {
    return new MeterTrouble(new Failure.NoProfile(name, why), List.of());
  }

  private MeterProfile profile() throws MeterTrouble {
    String speaks = text("speaks", "");
    if (!speaks.equals("scpi") && !speaks.equals("lines")) {
      throw wrong("speaks: expected scpi or lines");
    }
    LineSettings line =
        LineSettings.of(text("line", "9600 8n1"))
            .orElseThrow(() -> wrong("line: expected for example 9600 8n1"));
    return new MeterProfile(
        name,
        text("about", ""),
        line.with(isOn("dtr", true), isOn("rts", speaks.equals("scpi"))),
        Ending.of(text("ending", "lf"))
            .orElseThrow(() -> wrong("ending: expected lf, cr, crlf or none")),
        speaks.equals("scpi") ? scpi() : talk(),
        new Timing(
            (int) number("connect-ms", 3000, 100, 60_000),
            (int) number("answer-ms", 3000, 50, 60_000),
            (int) number("settle-ms", 0, 0, 60_000)),
        new Display(
            number("step-ohms", 0, 0, 1e6),
            number("noise-ohms", 0, 0, 10),
            number("noise-share", 0, 0, 0.1)));
  }

  private String query() throws MeterTrouble {
    String query = text("query", "READ?");
    if (!query.endsWith("?") || query.contains("*IDN")) {
      throw wrong("query: \"" + query + "\" asks for no value");
    }
    return query;
  }

  private List<String> settings() throws MeterTrouble {
    List<String> settings = said.getOrDefault("setting", List.of());
    for (String setting : settings) {
      if (!setting.endsWith("?")) {
        throw wrong("setting: \"" + setting + "\" asks for nothing");
      }
    }
    return settings;
  }

  private Scpi scpi() throws MeterTrouble {
    return new Scpi(
        said.getOrDefault("set-up", List.of()),
        text("two-wire", "CONF:RES"),
        text("four-wire", ""),
        settings(),
        query(),
        text("errors", "SYST:ERR?"),
        word("fence", Fence.NUMBER, Fence.values()),
        number("over-floor", 9.9e37, 1e6, 9.9e37),
        text("second-field", "").equals("volts"));
  }

  private Talk talk() throws MeterTrouble {
    Sends sends = word("sends", Sends.STREAM, Sends.values());
    String poll = text("poll", "");
    if (poll.isEmpty() == (sends == Sends.POLL)) {
      throw wrong("poll: the characters that ask are only for sends: poll");
    }
    return new Talk(
        sends, poll, text("without-unit", "").equals("ohms"), text("with", "").equals("volts"));
  }

  private String text(String word, String usual) {
    return said.getOrDefault(word, List.of(usual)).get(0);
  }

  private boolean isOn(String word, boolean usual) throws MeterTrouble {
    String text = text(word, usual ? "1" : "0");
    if (!text.equals("0") && !text.equals("1")) {
      throw wrong(word + ": expected 0 or 1");
    }
    return text.equals("1");
  }

  private <E extends Enum<E>> E word(String word, E usual, E[] all) throws MeterTrouble {
    String text = text(word, usual.name().toLowerCase(Locale.ROOT));
    for (E one : all) {
      if (one.name().toLowerCase(Locale.ROOT).equals(text)) {
        return one;
      }
    }
    throw wrong(word + ": \"" + text + "\" is none of its words");
  }

  private double number(String word, double usual, double least, double most) throws MeterTrouble {
    if (!said.containsKey(word)) {
      return usual;
    }
    String given = text(word, "");
    return OhmsNumber.of(given)
        .map(BigDecimal::doubleValue)
        .filter(number -> number >= least && number <= most)
        .orElseThrow(
            () ->
                wrong(word + ": \"" + given + "\" is not a number from " + least + " to " + most));
  }

  /** The text that is the profile. */
  public static String write(MeterProfile profile) {
    StringBuilder text = new StringBuilder();
    text.append("# How a kind of meter is spoken to. See docs/reference/meters.md.\n");
    text.append(FIRST_LINE).append('\n');
    say(text, "about", profile.about());
    say(text, "speaks", profile.language().match(SPEAKS));
    say(text, "line", profile.line().text());
    say(text, "dtr", profile.line().dtr() ? "1" : "0");
    say(text, "rts", profile.line().rts() ? "1" : "0");
    say(text, "ending", profile.ending().name().toLowerCase(Locale.ROOT));
    profile.language().match(new Saying(text));
    say(text, "connect-ms", "" + profile.timing().connectMillis());
    say(text, "answer-ms", "" + profile.timing().answerMillis());
    say(text, "settle-ms", "" + profile.timing().settleMillis());
    say(text, "step-ohms", Numbers.plain(profile.display().stepOhms()));
    say(text, "noise-ohms", Numbers.plain(profile.display().noiseOhms()));
    say(text, "noise-share", Numbers.plain(profile.display().noiseShare()));
    return text.toString();
  }

  private static void say(StringBuilder text, String word, String value) {
    if (!value.isEmpty()) {
      text.append(word).append(": ").append(value).append('\n');
    }
  }

  private static final LanguageCases<String> SPEAKS =
      new LanguageCases<>() {
        @Override
        public String scpi(Scpi language) {
          return "scpi";
        }

        @Override
        public String talk(Talk language) {
          return "lines";
        }
      };

  /** Says what belongs to each language. */
  private record Saying(StringBuilder text) implements LanguageCases<StringBuilder> {
    @Override
    public StringBuilder scpi(Scpi language) {
      language.setUp().forEach(line -> say(text, "set-up", line));
      say(text, "two-wire", language.twoWire());
      say(text, "four-wire", language.fourWire());
      language.settings().forEach(line -> say(text, "setting", line));
      say(text, "query", language.query());
      say(text, "errors", language.errors());
      say(text, "fence", language.fence().word());
      say(text, "over-floor", Double.toString(language.overFloorOhms()));
      say(text, "second-field", language.secondIsVolts() ? "volts" : "");
      return text;
    }

    @Override
    public StringBuilder talk(Talk language) {
      say(text, "sends", language.sends().word());
      say(text, "poll", language.poll());
      say(text, "without-unit", language.bareIsOhms() ? "ohms" : "");
      say(text, "with", language.withVolts() ? "volts" : "");
      return text;
    }
  }
}
