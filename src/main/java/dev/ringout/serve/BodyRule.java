package dev.ringout.serve;

import java.util.List;

/**
 * What may be sent to an address.
 *
 * @param mostBytes how much; what is longer is refused
 * @param contentTypes what it may say that it is, without parameters
 */
public record BodyRule(int mostBytes, List<String> contentTypes) {
  private static final int MIB = 1024 * 1024;

  /** A document, as nearly every address takes it. */
  public static final BodyRule JSON = new BodyRule(64 * 1024, List.of("application/json"));

  /** A file of any kind: a wire list. */
  public static final BodyRule FILE = new BodyRule(32 * MIB, List.of("application/octet-stream"));

  /** A picture. */
  public static final BodyRule PICTURE = new BodyRule(8 * MIB, List.of("image/jpeg", "image/png"));

  /** A rule with its types. */
  public BodyRule {
    contentTypes = List.copyOf(contentTypes);
  }
}
