package dev.ringout.serve;

import java.util.LinkedHashMap;
import java.util.Map;

/** What the server of the JDK reads once, before it is first used. What somebody has set stays. */
final class JdkSettings {
  private static final Map<String, String> SETTINGS = settings();

  private JdkSettings() {}

  static void set() {
    SETTINGS.forEach(
        (name, value) -> {
          if (System.getProperty(name) == null) {
            System.setProperty(name, value);
          }
        });
  }

  private static Map<String, String> settings() {
    Map<String, String> settings = new LinkedHashMap<>();
    // Else an answer waits 40 ms for the other side's acknowledgement.
    settings.put("sun.net.httpserver.nodelay", "true");
    // Seconds; browsers let go of a connection after 300, and a step may take as long.
    settings.put("sun.net.httpserver.idleInterval", "330");
    settings.put("sun.net.httpserver.maxReqHeaders", "64");
    settings.put("sun.net.httpserver.maxReqHeaderSize", "32768");
    settings.put("jdk.httpserver.maxConnections", "512");
    return settings;
  }
}
