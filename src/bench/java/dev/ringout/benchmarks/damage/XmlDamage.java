package dev.ringout.benchmarks.damage;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** XML whose elements, attributes and texts are others, gone, there twice or in each other. */
final class XmlDamage {
  private static final Pattern TOKEN = Pattern.compile("<[^>]*>|[^<]+");
  private static final Pattern ATTRIBUTE = Pattern.compile("([\\w:.-]+)=\"([^\"]*)\"");
  private static final int DEEP = 30_000;

  private final Chance chance;

  XmlDamage(Chance chance) {
    this.chance = chance;
  }

  byte[] damaged(byte[] xml) {
    List<String> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(new String(xml, StandardCharsets.UTF_8));
    while (matcher.find()) {
      tokens.add(matcher.group());
    }
    for (int i = 1 + chance.below(4); i > 0 && tokens.size() > 2; i--) {
      damage(tokens);
    }
    return String.join("", tokens).getBytes(StandardCharsets.UTF_8);
  }

  private void damage(List<String> tokens) {
    int at = 1 + chance.below(tokens.size() - 1);
    String token = tokens.get(at);
    if (!token.startsWith("<")) {
      tokens.set(at, chance.oneIn(3) ? "" : escaped(chance.word()));
      return;
    }
    switch (chance.below(9)) {
      case 0 -> tokens.remove(at);
      case 1 -> tokens.subList(at, Math.min(tokens.size(), end(tokens, at))).clear();
      case 2 -> {
        List<String> twice =
            List.copyOf(tokens.subList(at, Math.min(tokens.size(), end(tokens, at))));
        for (int i = 1 + chance.below(3); i > 0; i--) {
          tokens.addAll(at, twice);
        }
      }
      case 3 -> tokens.add(1 + chance.below(tokens.size() - 1), token);
      case 4 -> {
        if (chance.oneIn(10) && !token.startsWith("</") && !token.endsWith("/>")) {
          tokens.set(at, token.repeat(DEEP));
        }
      }
      default -> tokens.set(at, attributes(token));
    }
  }

  /** The end of the element that begins here. */
  private static int end(List<String> tokens, int at) {
    int depth = 0;
    for (int i = at; i < tokens.size(); i++) {
      String token = tokens.get(i);
      if (token.startsWith("</")) {
        depth--;
      } else if (token.startsWith("<") && !token.endsWith("/>") && !token.startsWith("<?")) {
        depth++;
      }
      if (depth <= 0) {
        return i + 1;
      }
    }
    return tokens.size();
  }

  private String attributes(String token) {
    List<String> names = new ArrayList<>();
    Matcher found = ATTRIBUTE.matcher(token);
    while (found.find()) {
      names.add(found.group());
    }
    if (names.isEmpty()) {
      return token;
    }
    String victim = chance.of(names);
    String name = victim.substring(0, victim.indexOf('='));
    String other = chance.oneIn(5) ? "" : name + "=\"" + escaped(chance.word()) + "\"";
    return token.replace(victim, other);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }
}
