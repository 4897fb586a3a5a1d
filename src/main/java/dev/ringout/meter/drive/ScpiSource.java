package dev.ringout.meter.drive;

import dev.ringout.meter.Exchange.Kind;
import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.MeterIdentity;
import dev.ringout.meter.MeterProfile;
import dev.ringout.meter.MeterProfile.Fence;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Sample;
import dev.ringout.meter.Shown;
import dev.ringout.meter.link.Channel;
import dev.ringout.meter.link.Channels;
import dev.ringout.meter.link.Transcript;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A meter that takes commands. Behind each query something is asked whose answer can be no other:
 * an answer that is late, or comes twice, then never stands for another.
 */
final class ScpiSource implements SampleSource {
  /** More errors than any queue holds: then it is no queue. */
  private static final int MOST_ERRORS = 100;

  /** What takes more answers than one is given up after so many times the longest wait. */
  private static final int LONGEST_ANSWERS = 5;

  private static final int LATE_LINES = 20;
  private static final int MOST_IDENTITIES = 6;
  private static final int LONGEST_SETTING = 1000;

  /** A word or a number of the meter's state. */
  private static final Pattern SETTING = Pattern.compile("[\\x21-\\x7e][\\x20-\\x7e]{0,79}");

  private static final int HIGHEST_FENCE = 255;
  private static final Pattern ERROR = Pattern.compile("\\s*([+-]?\\d{1,6})\\s*(,.*)?");

  /** Not all have the comma and the quotes of SCPI-99 where there is none. */
  private static final Pattern NO_ERROR =
      Pattern.compile("(?i)\\s*(?:[+-]?0+\\s)?\\s*\"?no error\\W*");

  private static final Pattern IDENTITY = Pattern.compile("[\\x20-\\x7e]*[A-Za-z][\\x20-\\x7e]*");

  private final MeterAddress address;
  private final MeterProfile profile;
  private final MeterProfile.Scpi words;
  private final boolean fourWire;
  private final Channels channels;
  private final Transcript transcript;
  private Optional<Channel> channel = Optional.empty();
  private Optional<String> identity = Optional.empty();
  private Fence fence;

  /** What was answered after set-up to each question how it is set; nothing where it knows none. */
  private final Map<String, String> settings = new LinkedHashMap<>();

  private int fenceNumber;
  private String lastQuery = "";
  private long endMillis = Long.MAX_VALUE;

  ScpiSource(
      MeterAddress address,
      MeterProfile profile,
      MeterProfile.Scpi words,
      boolean fourWire,
      Channels channels,
      Transcript transcript) {
    this.address = address;
    this.profile = profile;
    this.words = words;
    this.fourWire = fourWire;
    this.channels = channels;
    this.transcript = transcript;
    this.fence = words.fence();
    this.fenceNumber = (int) (transcript.ticks().millis() % HIGHEST_FENCE);
  }

  @Override
  public void open() throws MeterTrouble {
    connect();
    try {
      chooseFence();
      setUp();
      askSettings();
    } catch (MeterTrouble e) {
      close();
      throw e;
    }
  }

  @Override
  public void endAt(long millis) {
    endMillis = millis;
  }

  private void refuseIfLate() throws MeterTrouble {
    if (transcript.ticks().millis() > endMillis) {
      throw transcript.trouble(new Failure.Unsettled(0, ""));
    }
  }

  private void connect() throws MeterTrouble {
    close();
    refuseIfLate();
    channel = Optional.of(channels.open(address, profile, transcript));
    try {
      identify();
    } catch (MeterTrouble e) {
      close();
      throw e;
    }
  }

  private Channel channel() throws MeterTrouble {
    return channel.orElseThrow(() -> transcript.trouble(new Failure.Gone(address.text())));
  }

  /**
   * Asks which meter it is until the same is said twice: half of an answer would be another meter
   * ever after.
   */
  private void identify() throws MeterTrouble {
    String last = "";
    String before = "";
    for (int i = 0; i < MOST_IDENTITIES; i++) {
      String line = askIdentity();
      if (identity.isPresent() && line.equals(identity.get())) {
        return;
      }
      if (line.equals(before)) {
        if (identity.isPresent()) {
          throw transcript.trouble(new Failure.OtherMeter(identity.get(), line));
        }
        identity = Optional.of(line);
        return;
      }
      last = before;
      before = line;
    }
    throw transcript.trouble(new Failure.OtherMeter(last, before));
  }

  /** What comes before the identity is late, or a greeting. */
  private String askIdentity() throws MeterTrouble {
    channel().dropPending();
    send("*IDN?");
    lastQuery = "*IDN?";
    String line = "";
    long latest = latestMillis();
    for (int i = 0; i < LATE_LINES && transcript.ticks().millis() < latest; i++) {
      line = receiveAfter(line, lastQuery);
      if (isIdentity(line, words.read(line).isReadable())) {
        return line;
      }
      transcript.add(Kind.DROPPED, line);
    }
    throw transcript.trouble(new Failure.Garbage("*IDN?", line));
  }

  private static boolean isIdentity(String line, boolean isValue) {
    return !isValue
        && IDENTITY.matcher(line).matches()
        && !ERROR.matcher(line).matches()
        && !NO_ERROR.matcher(line).matches();
  }

  /** Not every meter has the common commands: then the error queue has to do. */
  private void chooseFence() throws MeterTrouble {
    if (fence != Fence.NUMBER) {
      return;
    }
    try {
      numberFence("").forEach(late -> transcript.add(Kind.DROPPED, late));
    } catch (MeterTrouble e) {
      if (!e.failure().isOfTheLink()) {
        throw e;
      }
      fence = Fence.ERRORS;
      transcript.add(Kind.LINK, "no *ESE?: the error queue tells answers apart");
      connect();
    }
  }

  private void setUp() throws MeterTrouble {
    drainErrors();
    for (String line : words.setUp()) {
      sendAndCheck(line);
    }
    sendAndCheck(fourWire && !words.fourWire().isEmpty() ? words.fourWire() : words.twoWire());
  }

  /** A meter that does not know a question answers nothing, and is not asked it again. */
  private void askSettings() throws MeterTrouble {
    for (String asked : fence == Fence.NONE ? List.<String>of() : words.settings()) {
      try {
        send(asked);
        lastQuery = asked;
        String line = channel().receive(Math.min(LONGEST_SETTING, profile.timing().answerMillis()));
        if (error().isEmpty() && SETTING.matcher(line).matches()) {
          settings.put(asked, line);
        }
      } catch (MeterTrouble e) {
        if (!e.failure().isOfTheLink()) {
          throw e;
        }
        transcript.add(Kind.LINK, "no " + asked + ": nobody asks again how it is set");
        connect();
        setUp();
      }
    }
  }

  /** A key at the meter that was pressed since makes its value mean something else. */
  private void refuseIfSetOtherwise() throws MeterTrouble {
    for (Map.Entry<String, String> setting : settings.entrySet()) {
      lastQuery = setting.getKey();
      Answer answer = ask(setting.getKey());
      if (!answer.between().isEmpty()) {
        throw transcript.trouble(new Failure.Unasked(setting.getKey(), answer.between().get(0)));
      }
      if (!answer.line().equals(setting.getValue())) {
        throw transcript.trouble(
            new Failure.SetOtherwise(setting.getKey(), setting.getValue(), answer.line()));
      }
    }
  }

  private void sendAndCheck(String line) throws MeterTrouble {
    if (!line.isEmpty()) {
      send(line);
      lastQuery = line;
      refuseIfQueued();
    }
  }

  private long latestMillis() {
    return transcript.ticks().millis() + (long) LONGEST_ANSWERS * profile.timing().answerMillis();
  }

  /** What is in the queue by now is of before. */
  private void drainErrors() throws MeterTrouble {
    long latest = latestMillis();
    String after = lastQuery;
    Optional<String> last = error();
    for (int i = 0; last.isPresent(); i++) {
      if (i == MOST_ERRORS || transcript.ticks().millis() > latest) {
        throw transcript.trouble(new Failure.Queued(after, last.get()));
      }
      last = error();
    }
  }

  /** The oldest error; absent where there is none. */
  private Optional<String> error() throws MeterTrouble {
    if (words.errors().isEmpty()) {
      return Optional.empty();
    }
    for (int i = 0; i < LATE_LINES; i++) {
      Answer answer = ask(words.errors());
      Matcher error = ERROR.matcher(answer.line());
      if (answer.between().isEmpty()) {
        if (NO_ERROR.matcher(answer.line()).matches()) {
          return Optional.empty();
        }
        if (!error.matches()) {
          throw transcript.trouble(new Failure.Unasked(words.errors(), answer.line()));
        }
        return isNone(error) ? Optional.empty() : Optional.of(answer.line());
      }
      // The queue has given an error away by now: among what came it may be.
      Optional<String> given = answer.all().filter(ScpiSource::isErrorWithItsText).findFirst();
      if (given.isPresent()) {
        return given;
      }
    }
    throw transcript.trouble(new Failure.Unasked(words.errors(), ""));
  }

  private static boolean isNone(Matcher error) {
    return Integer.parseInt(error.group(1).replace("+", "")) == 0;
  }

  private static boolean isErrorWithItsText(String line) {
    Matcher error = ERROR.matcher(line);
    return error.matches() && error.group(2) != null && !isNone(error);
  }

  @Override
  public void confirm() throws MeterTrouble {
    refuseIfQueued();
    refuseIfSetOtherwise();
    // A cable can be put into another meter without the link's noticing.
    if (!askIdentity().equals(identity.orElse(""))) {
      identify();
    }
  }

  private void refuseIfQueued() throws MeterTrouble {
    String after = lastQuery;
    Optional<String> error = error();
    if (error.isPresent()) {
      drainErrors();
      throw transcript.trouble(new Failure.Queued(after, error.get()));
    }
  }

  @Override
  public MeterIdentity identity() {
    String text = identity.orElse("");
    boolean practice = text.equals(MeterIdentity.OF_PRACTICE);
    return new MeterIdentity(address.text(), text, profile.name(), practice);
  }

  @Override
  public void forget() throws MeterTrouble {
    channel().dropPending();
  }

  @Override
  public Sample next(long millis) throws MeterTrouble {
    long end = transcript.ticks().millis() + Math.max(millis, 1);
    String stray = "";
    while (true) {
      long asked = transcript.ticks().millis();
      lastQuery = words.query();
      Answer answer = askAfter(stray);
      if (answer.between().isEmpty()) {
        if (fence == Fence.ERRORS) {
          refuseIfQueued();
        }
        return sample(asked, answer.line());
      }
      // All that belongs to nothing is read away by now: the next answer can be believed again.
      transcript.add(Kind.DROPPED, answer.line());
      stray = answer.between().get(0);
      if (transcript.ticks().millis() >= end) {
        throw transcript.trouble(new Failure.Unasked("*ESE?", stray));
      }
    }
  }

  /** Where the time ends while strays come, they are why. */
  private Answer askAfter(String stray) throws MeterTrouble {
    try {
      return ask(words.query());
    } catch (MeterTrouble e) {
      if (stray.isEmpty() || !e.failure().isEndOfTime()) {
        throw e;
      }
      throw transcript.trouble(new Failure.Unasked("*ESE?", stray));
    }
  }

  /**
   * What came to a question.
   *
   * @param line the first that came
   * @param between what else came before it was sure that nothing more would; then none of it can
   *     be believed
   */
  private record Answer(String line, List<String> between) {
    Stream<String> all() {
      return Stream.concat(Stream.of(line), between.stream());
    }
  }

  private Answer ask(String query) throws MeterTrouble {
    String pending = channel().dropPending();
    if (!pending.isEmpty() && fence != Fence.NUMBER) {
      throw transcript.trouble(new Failure.Unasked("", pending.strip()));
    }
    send(query);
    String line = receive(query);
    boolean isOdd = query.equals(words.query()) && !words.read(line).isReadable();
    return new Answer(line, fence == Fence.NUMBER ? numberFence(isOdd ? line : "") : List.of());
  }

  private Sample sample(long asked, String line) throws MeterTrouble {
    Shown shown = words.read(line);
    Optional<Failure> objection = Objection.to(words.query(), line, shown);
    if (objection.isPresent()) {
      throw transcript.trouble(objection.get());
    }
    return new Sample(asked, transcript.ticks().millis(), transcript.ticks().now(), line, shown);
  }

  /**
   * Asks what can have one answer alone; gives what came before it.
   *
   * @param odd what came and answers nothing, or empty
   */
  private List<String> numberFence(String odd) throws MeterTrouble {
    fenceNumber = fenceNumber % HIGHEST_FENCE + 1;
    send("*ESE " + fenceNumber);
    send("*ESE?");
    List<String> before = new ArrayList<>();
    while (before.size() < LATE_LINES) {
      String line = receiveOrStray(before.isEmpty() ? odd : before.get(0));
      if (line.equals("" + fenceNumber) || line.equals("+" + fenceNumber)) {
        return before;
      }
      before.add(line);
    }
    throw transcript.trouble(new Failure.Unasked("*ESE?", before.get(0)));
  }

  /** A stray makes the value before worth nothing, and no more than that. */
  private String receiveOrStray(String before) throws MeterTrouble {
    try {
      return receiveAfter(before, "*ESE?").strip();
    } catch (MeterTrouble e) {
      if (!e.failure().isStray()) {
        throw e;
      }
      return "";
    }
  }

  private void send(String line) throws MeterTrouble {
    refuseIfLate();
    channel().send(line);
  }

  /** Where something came before and answered nothing, that is told, and no silence. */
  private String receiveAfter(String before, String asked) throws MeterTrouble {
    try {
      return receive(asked);
    } catch (MeterTrouble e) {
      if (before.isEmpty() || !e.failure().isSilence()) {
        throw e;
      }
      throw new MeterTrouble(new Failure.Garbage(asked, before), e.talk());
    }
  }

  /** A query that fails answers nothing; what was asked is told with it. */
  private String receive(String asked) throws MeterTrouble {
    try {
      return channel().receive(profile.timing().answerMillis());
    } catch (MeterTrouble e) {
      throw new MeterTrouble(e.failure().asking(asked), e.talk());
    }
  }

  @Override
  public void recover() throws MeterTrouble {
    if (!cleared()) {
      connect();
    }
    setUp();
  }

  /**
   * A device clear makes the meter forget the question, where the link has one and still stands.
   */
  private boolean cleared() {
    try {
      if (channel.isPresent() && channel.get().clear()) {
        identify();
        return true;
      }
    } catch (MeterTrouble e) {
      transcript.add(Kind.LINK, "not cleared");
    }
    return false;
  }

  @Override
  public boolean isByItsKey() {
    return false;
  }

  @Override
  public void close() {
    channel.ifPresent(Channel::close);
    channel = Optional.empty();
  }
}
