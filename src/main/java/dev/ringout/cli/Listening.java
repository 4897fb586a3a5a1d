package dev.ringout.cli;

import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.UnknownHostException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a shop's benches are listened for: a name or an address of this machine, as tablets call
 * it.
 *
 * @param name as a browser writes it
 */
record Listening(String name, InetAddress address, int port) {
  private static final int USUAL_PORT = 8443;
  private static final int LAST_PORT = 65_535;

  private static final Pattern WRITTEN =
      Pattern.compile("(\\[[0-9A-Fa-f:.]+\\]|[A-Za-z0-9][A-Za-z0-9.-]*)(?::(\\d{1,5}))?");

  /**
   * Of what was typed: {@code bench1.shop:8443}.
   *
   * @throws IOException in words, where it is no name of this machine
   */
  static Listening of(String typed) throws IOException {
    Matcher written = WRITTEN.matcher(typed);
    if (!written.matches()) {
      throw new IOException(typed + " is no HOST or HOST:PORT");
    }
    int port = written.group(2) == null ? USUAL_PORT : Integer.parseInt(written.group(2));
    if (port > LAST_PORT) {
      throw new IOException(port + " is no port; expected one from 1 to " + LAST_PORT);
    }
    String name = written.group(1).toLowerCase(Locale.ROOT);
    return new Listening(name, own(name), port);
  }

  private static InetAddress own(String name) throws IOException {
    try {
      for (InetAddress address : InetAddress.getAllByName(name)) {
        if (address.isAnyLocalAddress()) {
          throw new IOException(
              name
                  + " is every address: say the name or address by which tablets call this machine");
        }
        if (NetworkInterface.getByInetAddress(address) != null) {
          return address;
        }
      }
    } catch (UnknownHostException e) {
      throw new IOException("there is no machine called " + name);
    }
    throw new IOException(name + " is another machine");
  }
}
