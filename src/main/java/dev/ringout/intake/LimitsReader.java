package dev.ringout.intake;

import dev.ringout.cells.Blanks;
import dev.ringout.cells.LikelyMeant;
import dev.ringout.cells.Names;
import dev.ringout.harness.Demands;
import dev.ringout.harness.Demands.Calibration;
import dev.ringout.harness.Demands.WordUse;
import dev.ringout.harness.Limits;
import dev.ringout.harness.NetLimit;
import dev.ringout.harness.Point;
import dev.ringout.intake.Settings.Setting;
import dev.ringout.source.Severity;
import dev.ringout.standards.SwitchContacts;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** The limits sheet. Defaults are the contract's own; no resistance is taken without its unit. */
final class LimitsReader {
  private static final List<String> NAMES =
      List.of(
          "closed max",
          "open min",
          "contact",
          "switch contact",
          "meter",
          "tolerance",
          "temperature",
          "insulation min",
          "insulation volts",
          "re-termination",
          "service loop",
          "insulation test",
          "words",
          "calibration",
          "serial number",
          "test day",
          "independent inspector");

  private static final List<String> YES_OR_NONE = List.of("required", "none");
  private static final List<String> REQUIRED = List.of("required", "not required");

  private static final List<String> OF_NETS = List.of("insulation min", "insulation volts");

  private final Settings settings;

  private LimitsReader(Settings settings) {
    this.settings = settings;
  }

  static Limits read(Settings settings) {
    return new LimitsReader(settings).read();
  }

  private Limits read() {
    settings.all().forEach(LimitsReader::refuseUnknown);
    Limits usual = Limits.usual(SwitchContacts.mostOhmsWhenNew());
    Limits limits =
        usual.toBuilder()
            .closedMaxOhms(ohmsAboveZero("closed max"))
            .openMinOhms(ohmsAboveZero("open min").orElse(usual.openMinOhms()))
            .contactOhms(settings.ohms("contact").orElse(usual.contactOhms()))
            .switchContactOhms(settings.ohms("switch contact").orElse(usual.switchContactOhms()))
            .meterOhms(settings.ohms("meter").orElse(usual.meterOhms()))
            .tolerancePercent(tolerance().orElse(usual.tolerancePercent()))
            .celsius(
                settings.number("temperature", "°C", "C", "degC", "deg C").orElse(usual.celsius()))
            .insulationMinOhms(ohmsAboveZero("insulation min").orElse(usual.insulationMinOhms()))
            .insulationVolts(settings.volts("insulation volts").orElse(usual.insulationVolts()))
            .retermination(settings.length("re-termination"))
            .serviceLoop(settings.length("service loop"))
            .demands(demands())
            .build();
    refuseCrossed(limits);
    return limits;
  }

  private static void refuseUnknown(Setting setting) {
    if (NAMES.stream().anyMatch(name -> Names.key(name).equals(Names.key(setting.name())))) {
      return;
    }
    // A demand that nobody knows would go unmet in silence.
    boolean demands =
        REQUIRED.stream().anyMatch(one -> Names.key(one).equals(Names.key(setting.value())))
            || Names.key(setting.value()).equals("none");
    setting
        .entry()
        .report(
            Settings.NAME.name(),
            demands ? Severity.ERROR : Severity.WARNING,
            "\""
                + setting.name()
                + "\" is not the name of a limit; the names are "
                + String.join(", ", NAMES),
            LikelyMeant.nearest(setting.name(), NAMES));
  }

  /** What is joined, apart and good insulation must not overlap. */
  private void refuseCrossed(Limits limits) {
    if (limits.insulationMinOhms() < limits.openMinOhms()) {
      settings
          .find("insulation min")
          .or(() -> settings.find("open min"))
          .ifPresent(
              setting -> wrong(setting, "\"insulation min\" must not be below \"open min\"", ""));
    }
    if (limits.closedMaxOhms().orElse(limits.fixedClosedMaxOhms()) >= limits.openMinOhms()) {
      settings
          .find("open min")
          .or(() -> settings.find("closed max"))
          .ifPresent(setting -> wrong(setting, "\"open min\" must be above \"closed max\"", ""));
    }
  }

  private OptionalDouble ohmsAboveZero(String name) {
    return settings.find(name).map(LimitsReader::ohmsAboveZero).orElse(OptionalDouble.empty());
  }

  /** A limit of 0 Ω would let everything pass, or nothing. */
  private static OptionalDouble ohmsAboveZero(Setting setting) {
    OptionalDouble ohms = Settings.ohms(setting);
    if (ohms.isPresent() && ohms.getAsDouble() <= 0) {
      wrong(setting, "\"" + setting.name() + "\" must be above 0", "");
      return OptionalDouble.empty();
    }
    return ohms;
  }

  private OptionalDouble tolerance() {
    return TolerancePercent.within(
        settings.number("tolerance", "%"),
        "\"tolerance\"",
        text -> settings.find("tolerance").ifPresent(setting -> wrong(setting, text, "")));
  }

  private static void wrong(Setting setting, String text, String maybe) {
    setting.entry().error(Settings.VALUE.name(), text, maybe);
  }

  private Demands demands() {
    Demands usual = Demands.USUAL;
    return new Demands(
        choice("insulation test", YES_OR_NONE).orElse(usual.insulationTest()),
        words(),
        choice("calibration", REQUIRED)
            .map(required -> required ? Calibration.REQUIRED : Calibration.NOT_REQUIRED)
            .orElse(usual.calibration()),
        choice("serial number", REQUIRED).orElse(usual.serialNumber()),
        choice("test day", REQUIRED).orElse(usual.testDay()),
        choice("independent inspector", REQUIRED).orElse(usual.independentInspector()));
  }

  /** One of two words; absent where the list says nothing, or what can't be understood. */
  private Optional<Boolean> choice(String name, List<String> words) {
    Optional<Setting> setting = settings.find(name).filter(one -> !one.value().isEmpty());
    if (setting.isEmpty()) {
      return Optional.empty();
    }
    for (String word : words) {
      if (Names.key(setting.get().value()).equals(Names.key(word))) {
        return Optional.of(words.indexOf(word) == 0);
      }
    }
    wrong(
        setting.get(),
        "\""
            + setting.get().value()
            + "\" is not what \""
            + name
            + "\" may be: "
            + String.join(" or ", words),
        LikelyMeant.nearest(setting.get().value(), words));
    return Optional.empty();
  }

  private Optional<Set<WordUse>> words() {
    Optional<Setting> setting = settings.find("words").filter(one -> !one.value().isEmpty());
    if (setting.isEmpty()) {
      return Optional.empty();
    }
    Set<WordUse> uses = new TreeSet<>();
    for (String word : setting.get().value().split("[,;+&]|\\band\\b", -1)) {
      String key = Names.key(word);
      Optional<WordUse> use =
          Arrays.stream(WordUse.values())
              .filter(one -> Names.key(one.name()).equals(key))
              .findFirst();
      use.ifPresent(uses::add);
      if (use.isEmpty() && !key.equals("none")) {
        wrong(
            setting.get(),
            "\""
                + setting.get().value()
                + "\" is not what \"words\" may be: none, or any of joins, gaps, insulation",
            "");
        return Optional.empty();
      }
    }
    return Optional.of(Collections.unmodifiableSet(uses));
  }

  private record Given(Setting setting, double value) {
    /** The value as written, with its cell. */
    String shown() {
      String text = Blanks.strip(setting.value() + " " + setting.unit());
      return "\"" + text + "\" (" + setting.place().cell() + ")";
    }
  }

  private static String twice(Point point, Given earlier, Given given) {
    return Text.of(
        "%s of %s is given twice: %s and %s",
        given.setting().name(), point, earlier.shown(), given.shown());
  }

  /**
   * The limits that single nets have of their own, each by a point.
   *
   * @param find gives the points that a net's cell means: a point, or the ends of a signal's wires
   */
  static List<NetLimit> ofNets(Settings settings, Function<String, List<Point>> find) {
    NetRows rows = new NetRows(find);
    settings.ofNets().forEach(rows::read);
    return List.copyOf(rows.limits);
  }

  /** The rows that name a net, which may speak of a point but once. */
  private static final class NetRows {
    private final Function<String, List<Point>> find;
    private final List<NetLimit> limits = new ArrayList<>();
    private final Map<Point, Given> mins = new HashMap<>();
    private final Map<Point, Given> volts = new HashMap<>();

    NetRows(Function<String, List<Point>> find) {
      this.find = find;
    }

    void read(Setting setting) {
      boolean ohms = Names.key(setting.name()).equals(Names.key(OF_NETS.get(0)));
      if (!ohms && !Names.key(setting.name()).equals(Names.key(OF_NETS.get(1)))) {
        reportNotOfNets(setting);
        return;
      }
      List<Point> points = pointsOf(setting, find);
      OptionalDouble value = ohms ? ohmsAboveZero(setting) : Settings.volts(setting);
      if (value.isPresent()) {
        add(points, new Given(setting, value.getAsDouble()), ohms);
      }
    }

    private void add(List<Point> points, Given given, boolean ohms) {
      OptionalDouble value = OptionalDouble.of(given.value());
      for (Point point : points) {
        Given earlier = (ohms ? mins : volts).putIfAbsent(point, given);
        if (earlier != null && earlier.value() != given.value()) {
          wrong(given.setting(), twice(point, earlier, given), "");
          break;
        }
        limits.add(
            new NetLimit(
                point,
                ohms ? value : OptionalDouble.empty(),
                ohms ? OptionalDouble.empty() : value,
                given.setting().place()));
      }
    }
  }

  private static void reportNotOfNets(Setting setting) {
    setting
        .entry()
        .error(
            Settings.NAME.name(),
            "a net has no \""
                + setting.name()
                + "\" of its own here; it may have "
                + String.join(", ", OF_NETS),
            LikelyMeant.nearest(setting.name(), OF_NETS));
  }

  private static List<Point> pointsOf(Setting setting, Function<String, List<Point>> find) {
    String net = setting.entry().text(Settings.NET.name());
    List<Point> points = find.apply(net);
    if (points.isEmpty()) {
      setting
          .entry()
          .error(
              Settings.NET.name(),
              "\"" + net + "\" is not a point or a signal of this harness",
              "");
    }
    return points;
  }
}
