package dev.ringout.serve;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What a page asks. */
public final class Ask {
  private final Method method;
  private final String path;
  private final Map<String, String> query;
  private final String contentType;
  private final byte[] body;
  private final Optional<Guest> guest;
  private final String from;

  /** How it is asked. */
  public enum Method {
    /** To be told. */
    GET,
    /** To have something done. */
    POST
  }

  private Ask(
      Method method,
      String path,
      Map<String, String> query,
      String contentType,
      byte[] body,
      Optional<Guest> guest,
      String from) {
    this.method = method;
    this.path = path;
    this.query = Collections.unmodifiableMap(new LinkedHashMap<>(query));
    this.contentType = contentType;
    this.body = body;
    this.guest = guest;
    this.from = from;
  }

  /** To be told what stands at an address. */
  public static Ask get(String path, Map<String, String> query) {
    return new Ask(Method.GET, path, query, "", new byte[0], Optional.empty(), "");
  }

  /** To have something done with what is sent. */
  public static Ask post(String path, Map<String, String> query, String contentType, byte[] body) {
    return new Ask(Method.POST, path, query, contentType, body.clone(), Optional.empty(), "");
  }

  /** The same with bytes that nobody else has: they may be many. */
  static Ask received(Target target, String contentType, byte[] body) {
    return new Ask(
        Method.POST, target.path(), target.query(), contentType, body, Optional.empty(), "");
  }

  /** The same, asked by a browser that was let in, or by one that was not; from a machine. */
  Ask by(Optional<Guest> browser, String machine) {
    return new Ask(method, path, query, contentType, body, browser, machine);
  }

  /** Who asks; absent where nobody was let in. */
  public Optional<Guest> guest() {
    return guest;
  }

  /** The address of the machine from which it is asked; empty where nobody knows. */
  public String from() {
    return from;
  }

  /** How it is asked. */
  public Method method() {
    return method;
  }

  /** The address, decoded: it starts with a slash and climbs nowhere. */
  public String path() {
    return path;
  }

  /** What stands behind the question mark, decoded, in its order. */
  public Map<String, String> query() {
    return query;
  }

  /** What the body says that it is, without parameters; empty where nothing was sent. */
  public String contentType() {
    return contentType;
  }

  /** How much was sent. */
  public int size() {
    return body.length;
  }

  /** What was sent. */
  public InputStream open() {
    return new ByteArrayInputStream(body);
  }

  /** What was sent. */
  public byte[] bytes() {
    return body.clone();
  }

  /**
   * What was sent, as a text.
   *
   * @throws CharacterCodingException where it is none
   */
  public String utf8() throws CharacterCodingException {
    return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString();
  }
}
