package dev.ringout.serve;

import dev.ringout.source.OwnerOnly;
import java.io.IOException;
import java.io.InputStream;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.Base64;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;

/** By what a bench is known to who comes over a network: a key and its certificate (PKCS #12). */
public final class ShopCertificate {
  private static final String STORE = "PKCS12";
  private static final String FILE = "bench.p12";
  private static final String PASSPHRASE = "passphrase";
  private static final int RANDOM_BYTES = 24;

  /** Browsers refuse those of a name that are valid for longer; from memory. */
  private static final String VALID_DAYS = "397";

  private static final long MOST_SECONDS = 120;

  private final SSLContext tls;
  private final X509Certificate certificate;

  private ShopCertificate(SSLContext tls, X509Certificate certificate) {
    this.tls = tls;
    this.certificate = certificate;
  }

  /** A certificate that can't be used, in words. */
  public static final class Unusable extends Exception {
    private static final long serialVersionUID = 1L;

    Unusable(String text) {
      super(text);
    }

    /** Why. */
    public String text() {
      return String.valueOf(getMessage());
    }
  }

  /**
   * Reads one that the shop has made, or has had made.
   *
   * @throws Unusable where it is none, or the passphrase is not its own
   */
  public static ShopCertificate read(Path file, String passphrase) throws Unusable {
    char[] secret = passphrase.toCharArray();
    try (InputStream in = Files.newInputStream(file)) {
      KeyStore keys = KeyStore.getInstance(STORE);
      keys.load(in, secret);
      KeyManagerFactory managers =
          KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
      managers.init(keys, secret);
      SSLContext tls = SSLContext.getInstance("TLS");
      tls.init(managers.getKeyManagers(), null, null);
      return new ShopCertificate(tls, certificate(file, keys));
    } catch (IOException e) {
      boolean wrong = e.getCause() instanceof GeneralSecurityException;
      throw new Unusable(
          wrong
              ? "the passphrase is not that of " + file
              : file + " can't be read as a PKCS #12 file: " + e.getMessage());
    } catch (GeneralSecurityException e) {
      throw new Unusable(file + " is no PKCS #12 file of a key with its certificate");
    }
  }

  private static X509Certificate certificate(Path file, KeyStore keys)
      throws GeneralSecurityException, Unusable {
    for (String alias : Collections.list(keys.aliases())) {
      if (keys.isKeyEntry(alias)
          && keys.getCertificate(alias) instanceof X509Certificate certificate) {
        return certificate;
      }
    }
    throw new Unusable(file + " holds no key with its certificate");
  }

  /**
   * The one in a folder, which is made where there is none yet: signed by itself, so whoever comes
   * compares its fingerprint.
   *
   * @param name by which browsers call the bench
   * @throws Unusable where it can't be made
   */
  public static ShopCertificate in(Path folder, String name, InetAddress address) throws Unusable {
    Path file = folder.resolve(FILE);
    Path passphrase = folder.resolve(PASSPHRASE);
    try {
      if (!Files.exists(file)) {
        Files.createDirectories(folder, OwnerOnly.folder());
        make(folder, file, passphrase, name, address);
      }
      return read(file, Files.readString(passphrase).strip());
    } catch (IOException e) {
      throw new Unusable(
          "the certificate in " + folder + " can't be made or read: " + e.getMessage());
    }
  }

  private static void make(
      Path folder, Path file, Path passphrase, String name, InetAddress address)
      throws IOException, Unusable {
    byte[] random = new byte[RANDOM_BYTES];
    new SecureRandom().nextBytes(random);
    Files.deleteIfExists(passphrase);
    Files.createFile(passphrase, OwnerOnly.file());
    Files.writeString(
        passphrase, Base64.getUrlEncoder().withoutPadding().encodeToString(random) + "\n");
    Path part = folder.resolve(FILE + ".part");
    Files.deleteIfExists(part);
    String said = run(command(part, passphrase, name, address));
    if (!Files.exists(part)) {
      throw new Unusable("the Java runtime's keytool made no certificate: " + said);
    }
    Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
  }

  /** The passphrase stands in a file: words of a command are seen by every user of the machine. */
  private static List<String> command(Path to, Path passphrase, String name, InetAddress address) {
    String ip = address.getHostAddress().replaceFirst("%.*$", "");
    boolean named = !name.equals(ip) && !(address instanceof Inet6Address && name.startsWith("["));
    return List.of(
        Path.of(System.getProperty("java.home", ""), "bin", "keytool").toString(),
        "-genkeypair",
        "-alias",
        "bench",
        "-keyalg",
        "EC",
        "-groupname",
        "secp256r1",
        "-sigalg",
        "SHA256withECDSA",
        "-validity",
        VALID_DAYS,
        "-dname",
        "CN=ringout bench",
        "-ext",
        "SAN=" + (named ? "dns:" + name + "," : "") + "ip:" + ip,
        "-storetype",
        STORE,
        "-keystore",
        to.toString(),
        "-storepass:file",
        passphrase.toString());
  }

  private static String run(List<String> command) throws IOException, Unusable {
    Process keytool = new ProcessBuilder(command).redirectErrorStream(true).start();
    keytool.getOutputStream().close();
    try {
      String said = new String(keytool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (!keytool.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
        throw new Unusable("the Java runtime's keytool does not come to an end");
      }
      return said.lines().findFirst().orElse("");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new Unusable("interrupted");
    } finally {
      keytool.destroy();
    }
  }

  /** For the server. */
  public SSLContext tls() {
    return tls;
  }

  /** Until when it is valid. */
  public Instant until() {
    return certificate.getNotAfter().toInstant();
  }

  /** Whether it is valid at a time. */
  public boolean isValidAt(Instant now) {
    return !now.isBefore(certificate.getNotBefore().toInstant()) && now.isBefore(until());
  }

  /** The SHA-256 of it, as browsers show it: bytes in hexadecimal with colons between. */
  public String fingerprint() {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(certificate.getEncoded());
      return HexFormat.ofDelimiter(":").formatHex(digest).toUpperCase(Locale.ROOT);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
