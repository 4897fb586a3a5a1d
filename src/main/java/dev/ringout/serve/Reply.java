package dev.ringout.serve;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** What is answered. */
public final class Reply {
  private static final Pattern CONTENT_TYPE =
      Pattern.compile("[a-z]+/[a-z0-9.+-]+(; charset=utf-8)?");

  private final int status;
  private final String contentType;
  private final byte[] bytes;
  private final Policy policy;
  private final Map<String, String> headers;
  private final Optional<Coming> coming;

  private Reply(
      int status,
      String contentType,
      byte[] bytes,
      Policy policy,
      Map<String, String> headers,
      Optional<Coming> coming) {
    if (status < 200 || status > 599) {
      throw new IllegalArgumentException("no status of an answer: " + status);
    }
    if (!CONTENT_TYPE.matcher(contentType).matches()) {
      throw new IllegalArgumentException("no type of content: " + contentType);
    }
    this.status = status;
    this.contentType = contentType;
    this.bytes = bytes;
    this.policy = policy;
    this.headers = Collections.unmodifiableMap(new LinkedHashMap<>(headers));
    this.coming = coming;
  }

  private Reply(int status, String contentType, byte[] bytes, Policy policy) {
    this(status, contentType, bytes, policy, Map.of(), Optional.empty());
  }

  /** Who comes in with this answer; nobody where the browser goes out. */
  record Coming(Optional<String> who, int since) {}

  /** Any kind of content: a picture, a file. */
  public static Reply of(int status, String contentType, byte[] bytes) {
    return new Reply(status, contentType, bytes.clone(), Policy.PAGE);
  }

  /** A document. */
  public static Reply json(int status, String document) {
    return new Reply(status, "application/json", utf8(document), Policy.PAGE);
  }

  /** One sentence. */
  public static Reply text(int status, String sentence) {
    return new Reply(status, "text/plain; charset=utf-8", utf8(sentence), Policy.PAGE);
  }

  /** A whole page to be read or printed, with styles and pictures in it; no script in it runs. */
  public static Reply paper(byte[] html) {
    return new Reply(200, "text/html; charset=utf-8", html.clone(), Policy.PAPER);
  }

  /** The same, to be kept as a file of this name. */
  public Reply savedAs(String fileName) {
    return with("Content-Disposition", "attachment; " + FileName.parameters(fileName));
  }

  /** The same, shown; where somebody keeps it, under this name. */
  public Reply shownAs(String fileName) {
    return with("Content-Disposition", "inline; " + FileName.parameters(fileName));
  }

  /**
   * The same; and the browser is somebody's from now on, with a new cookie.
   *
   * @param since what its {@code who} is known by
   */
  public Reply lettingIn(String who, int since) {
    return coming(new Coming(Optional.of(who), since));
  }

  /** The same; and the browser is nobody's any more. */
  public Reply lettingOut() {
    return coming(new Coming(Optional.empty(), 0));
  }

  private Reply coming(Coming who) {
    return new Reply(status, contentType, bytes, policy, headers, Optional.of(who));
  }

  Optional<Coming> coming() {
    return coming;
  }

  /** The status. */
  public int status() {
    return status;
  }

  /** What it is. */
  public String contentType() {
    return contentType;
  }

  /** What it says. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** What it says, as a text in UTF-8. */
  public String utf8() {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  /** The bytes themselves: to be written and not changed. */
  byte[] raw() {
    return bytes;
  }

  Policy policy() {
    return policy;
  }

  Map<String, String> headers() {
    return headers;
  }

  /** Only this room gives names of headers; a value can't start a line of its own. */
  Reply with(String name, String value) {
    if (!value.chars().allMatch(c -> c >= ' ' && c < 0x7f)) {
      throw new IllegalArgumentException("no value of a header: " + name);
    }
    Map<String, String> more = new LinkedHashMap<>(headers);
    more.put(name, value);
    return new Reply(status, contentType, bytes, policy, more, coming);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
