package dev.ringout.serve;

import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsParameters;
import java.net.InetAddress;
import java.util.List;
import java.util.function.LongSupplier;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLParameters;

/**
 * Where a bench is served to a shop's network.
 *
 * @param address of this machine
 * @param port 0 for any that is free
 * @param name by which browsers call it: a host's, or the address itself
 * @param tls with the certificate of that name
 * @param stay how long who signed in stays in
 * @param millis since some moment; never set back
 */
public record ShopDoor(
    InetAddress address, int port, String name, SSLContext tls, Stay stay, LongSupplier millis) {

  /** TLS 1.3 (RFC 8446) and 1.2 (RFC 5246), with those ciphers that the Java runtime takes. */
  private static final List<String> PROTOCOLS = List.of("TLSv1.3", "TLSv1.2");

  HttpsConfigurator configurator() {
    return new HttpsConfigurator(tls) {
      @Override
      public void configure(HttpsParameters parameters) {
        SSLParameters chosen = getSSLContext().getDefaultSSLParameters();
        chosen.setProtocols(PROTOCOLS.toArray(String[]::new));
        parameters.setSSLParameters(chosen);
      }
    };
  }
}
