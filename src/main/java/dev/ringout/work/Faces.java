package dev.ringout.work;

import dev.ringout.harness.Item;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.standards.ContactSizes;
import dev.ringout.standards.FacePositions;
import dev.ringout.standards.FacePositions.Insert;
import dev.ringout.standards.FacePositions.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Finds the face of an item: from the positions that the list gives, else from those of its insert
 * arrangement. A face is never made up: drawn the wrong way round it miswires the whole connector.
 */
final class Faces {
  private static final Pattern PIN_HALF =
      Pattern.compile("\\b(male|pins?|pin (insert|contacts|half))\\b");
  private static final Pattern SOCKET_HALF =
      Pattern.compile("\\b(female|sockets?|socket (insert|contacts|half))\\b");
  private static final Pattern PART_WITH_HALF = Pattern.compile("^[A-Z]{1,2}-?[0-9]+(P|S)$");

  private final FacePositions published;
  private final ContactSizes sizes;
  private final Map<Point, PinDetail> pins;

  Faces(Map<Point, PinDetail> pins, FacePositions published, ContactSizes sizes) {
    this.published = published;
    this.sizes = sizes;
    this.pins = pins;
  }

  /**
   * A face, or why there is none.
   *
   * @param why absent where there is nothing to say: nobody expects a face of a splice
   */
  record Found(Optional<Face> face, Optional<NoFace> why) {
    static Found none(NoFace why) {
      return new Found(Optional.empty(), Optional.of(why));
    }
  }

  Found of(Optional<Item> item, boolean connector, List<Point> points) {
    List<Spot> listed = new ArrayList<>();
    List<String> unplaced = new ArrayList<>();
    for (Point point : points) {
      Optional<PinDetail> pin =
          Optional.ofNullable(pins.get(point))
              .filter(one -> one.xMillimetres().isPresent() && one.yMillimetres().isPresent());
      if (pin.isPresent()) {
        listed.add(
            new Spot(
                point.pin(),
                pin.get().xMillimetres().getAsDouble(),
                pin.get().yMillimetres().getAsDouble()));
      } else if (!point.pin().equals(Point.SHELL)) {
        unplaced.add(point.pin());
      }
    }
    if (!listed.isEmpty()) {
      return found(listed, connector, "the list's sheet Pins", unplaced);
    }
    if (!connector) {
      return new Found(Optional.empty(), Optional.empty());
    }
    Optional<Insert> insert = item.flatMap(one -> published.find(one.arrangement()));
    if (insert.isEmpty()) {
      return Found.none(NoFace.IN_NO_TABLE);
    }
    return ofInsert(insert.get(), item, points);
  }

  private Found ofInsert(Insert insert, Optional<Item> item, List<Point> points) {
    List<Spot> spots = insert.spots();
    List<String> names = spots.stream().map(Spot::contact).toList();
    List<String> unplaced =
        points.stream()
            .map(Point::pin)
            .filter(pin -> !names.contains(pin) && !pin.equals(Point.SHELL))
            .toList();
    Optional<Boolean> socketHalf = socketHalf(item, points);
    if (socketHalf.isEmpty()) {
      return Found.none(NoFace.PINS_OR_SOCKETS);
    }
    return found(
        socketHalf.get() ? spots : spots.stream().map(Spot::mirrored).toList(),
        true,
        insert.citation(),
        unplaced);
  }

  private static Found found(
      List<Spot> spots, boolean connector, String source, List<String> unplaced) {
    return new Found(
        Optional.of(new Face(List.copyOf(spots), connector, source, List.copyOf(unplaced))),
        Optional.empty());
  }

  /** Whether it is the half with sockets; absent where nothing says, or two say different. */
  private Optional<Boolean> socketHalf(Optional<Item> item, List<Point> points) {
    int pinsSaid = 0;
    int socketsSaid = 0;
    String words =
        item.map(one -> one.kind() + " " + one.part() + " " + one.note())
            .orElse("")
            .toLowerCase(Locale.ROOT);
    pinsSaid += PIN_HALF.matcher(words).find() ? 1 : 0;
    socketsSaid += SOCKET_HALF.matcher(words).find() ? 1 : 0;
    var half =
        PART_WITH_HALF.matcher(item.map(Item::arrangement).orElse("").toUpperCase(Locale.ROOT));
    if (half.find()) {
      pinsSaid += "P".equals(half.group(1)) ? 1 : 0;
      socketsSaid += "S".equals(half.group(1)) ? 1 : 0;
    }
    for (Point point : points) {
      String part = Optional.ofNullable(pins.get(point)).map(PinDetail::contact).orElse("");
      Optional<ContactSizes.ContactSize> size = sizes.find(part);
      pinsSaid += size.filter(one -> one.isPin(part)).isPresent() ? 1 : 0;
      socketsSaid += size.filter(one -> one.isSocket(part)).isPresent() ? 1 : 0;
    }
    if (pinsSaid > 0 == socketsSaid > 0) {
      return Optional.empty();
    }
    return Optional.of(socketsSaid > 0);
  }
}
