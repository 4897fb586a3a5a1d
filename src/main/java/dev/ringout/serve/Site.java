package dev.ringout.serve;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The files of the page, each at its address. */
public final class Site {
  /** No file yet. */
  public static final Site EMPTY = new Site(Map.of());

  private final Map<String, Page> pages;

  private Site(Map<String, Page> pages) {
    this.pages = Collections.unmodifiableMap(new LinkedHashMap<>(pages));
  }

  /** The same, and one more: {@code with("/", "text/html; charset=utf-8", bytes)}. */
  public Site with(String path, String contentType, byte[] bytes) {
    Map<String, Page> more = new LinkedHashMap<>(pages);
    more.put(path, new Page(Reply.of(200, contentType, bytes), tag(bytes)));
    return new Site(more);
  }

  Optional<Page> at(String path) {
    return Optional.ofNullable(pages.get(path));
  }

  private static String tag(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return "\"" + Base64.getUrlEncoder().withoutPadding().encodeToString(digest) + "\"";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** One file, and what tells it from an earlier one. */
  record Page(Reply reply, String tag) {
    /** The file, or that it is still the one that the browser has. */
    Reply told(List<String> has) {
      Reply whole = has.contains(tag) ? Reply.of(304, reply.contentType(), new byte[0]) : reply;
      return whole.with("ETag", tag).with("Cache-Control", "no-cache");
    }
  }
}
