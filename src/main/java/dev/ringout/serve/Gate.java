package dev.ringout.serve;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Looks at the lines before a body: whether a request comes from the page that is served here. */
final class Gate {
  private static final Set<String> METHODS = Set.of("GET", "HEAD", "POST");

  /** What must not stand twice: of two readers each would take another one. */
  private static final List<String> ONCE =
      List.of(
          "Host",
          "Origin",
          "Content-Length",
          "Content-Type",
          "Transfer-Encoding",
          "Sec-Fetch-Site");

  private final String scheme;
  private final List<String> hosts;

  /**
   * A gate.
   *
   * @param scheme how it is spoken to, as a browser writes it: {@code http://}
   * @param hosts what this address is called, each with its port as a browser writes it
   */
  Gate(String scheme, List<String> hosts) {
    this.scheme = scheme;
    this.hosts = List.copyOf(hosts);
  }

  /** Lets a request through, or refuses it. */
  void check(HttpExchange exchange) throws Refused {
    Headers headers = exchange.getRequestHeaders();
    refuseIf(!exchange.getProtocol().equals("HTTP/1.1"), Refusal.PROTOCOL);
    refuseIf(ONCE.stream().anyMatch(name -> values(headers, name).size() > 1), Refusal.HEADERS);
    String host = one(headers, "Host").orElse("");
    refuseIf(!hosts.contains(host), Refusal.HOST);
    refuseIf(!METHODS.contains(exchange.getRequestMethod()), Refusal.METHOD);
    boolean post = exchange.getRequestMethod().equals("POST");
    checkSite(headers, post);
    Optional<String> origin = one(headers, "Origin");
    refuseIf(post && origin.isEmpty(), Refusal.FOREIGN);
    refuseIf(origin.isPresent() && !origin.get().equals(scheme + host), Refusal.FOREIGN);
    boolean counted = headers.containsKey("Content-Length");
    boolean chunked = headers.containsKey("Transfer-Encoding");
    refuseIf(counted && chunked, Refusal.HEADERS);
    refuseIf(
        chunked && !one(headers, "Transfer-Encoding").orElse("").equals("chunked"),
        Refusal.HEADERS);
    refuseIf(!post && hasBody(headers), Refusal.HEADERS);
    refuseIf(values(headers, "Upgrade").stream().anyMatch(Gate::isWebSocket), Refusal.UPGRADE);
  }

  /** A browser says itself where a request comes from; pages can't make it say otherwise. */
  private static void checkSite(Headers headers, boolean post) throws Refused {
    Optional<String> site = one(headers, "Sec-Fetch-Site");
    boolean ours = site.map(one -> one.equals("same-origin")).orElse(true);
    boolean typed = !post && site.map(one -> one.equals("none")).orElse(false);
    refuseIf(!ours && !typed, Refusal.FOREIGN);
  }

  /** What a body says that it is, without a parameter, where the rule takes it. */
  static String contentType(Headers headers, BodyRule rule) throws Refused {
    String said = one(headers, "Content-Type").orElse("").toLowerCase(Locale.ROOT);
    int end = said.indexOf(';');
    String type = (end < 0 ? said : said.substring(0, end)).strip();
    String parameter = end < 0 ? "" : said.substring(end + 1).strip();
    boolean plain = parameter.isEmpty() || parameter.equals("charset=utf-8");
    refuseIf(!plain || !rule.contentTypes().contains(type), Refusal.TYPE);
    return type;
  }

  /** Whether more is sent than the lines before a body. */
  static boolean hasBody(Headers headers) {
    return headers.containsKey("Transfer-Encoding")
        || !one(headers, "Content-Length").orElse("0").equals("0");
  }

  private static boolean isWebSocket(String upgrade) {
    return upgrade.toLowerCase(Locale.ROOT).contains("websocket");
  }

  private static List<String> values(Headers headers, String name) {
    return headers.getOrDefault(name, List.of());
  }

  private static Optional<String> one(Headers headers, String name) {
    return values(headers, name).stream().findFirst();
  }

  private static void refuseIf(boolean refused, Refusal why) throws Refused {
    if (refused) {
      throw new Refused(why);
    }
  }
}
