package dev.ringout.seal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;

/** Ed25519 keys (RFC 8032) in PEM files (RFC 7468, RFC 8410), and signatures by them. */
public final class Keys {
  private static final String ALGORITHM = "Ed25519";
  private static final String PRIVATE = "PRIVATE KEY";
  private static final String PROTECTED = "ENCRYPTED PRIVATE KEY";
  private static final String PUBLIC = "PUBLIC KEY";

  /** No file of one key is so long. */
  private static final int MOST_BYTES = 1 << 16;

  /** What is signed to see whether two keys are a pair. */
  private static final String PROBE = "ringout";

  /**
   * The points of small order of the curve (RFC 8032, 5.1), in every encoding: one signature by
   * such a key holds for many texts, so none is anybody's. Written from memory; a test computes
   * them.
   */
  private static final Set<String> SMALL_ORDER =
      Set.of(
          "0000000000000000000000000000000000000000000000000000000000000000",
          "0000000000000000000000000000000000000000000000000000000000000080",
          "0100000000000000000000000000000000000000000000000000000000000000",
          "0100000000000000000000000000000000000000000000000000000000000080",
          "26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05",
          "26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc85",
          "c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a",
          "c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac03fa",
          "ecffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f",
          "ecffffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff",
          "edffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f",
          "edffffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff",
          "eeffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f",
          "eeffffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff");

  private static final int POINT_BYTES = 32;

  private Keys() {}

  /** A file that holds no such key, in words for the user. */
  public static final class Unusable extends Exception {
    private static final long serialVersionUID = 1L;

    Unusable(String text) {
      super(text);
    }
  }

  /** A new pair of keys. */
  public static KeyPair create() {
    try {
      return KeyPairGenerator.getInstance(ALGORITHM).generateKeyPair();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Java 15 and later have " + ALGORITHM, e);
    }
  }

  /** A private key as PEM. */
  public static String pem(PrivateKey key) {
    return pem(PRIVATE, key.getEncoded());
  }

  /** A public key as PEM. */
  public static String pem(PublicKey key) {
    return pem(PUBLIC, key.getEncoded());
  }

  private static String pem(String what, byte[] bytes) {
    return "-----BEGIN "
        + what
        + "-----\n"
        + Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(bytes)
        + "\n-----END "
        + what
        + "-----\n";
  }

  /**
   * A private key as PEM, which only who knows the passphrase can read (PKCS #8, RFC 5958, by
   * PBES2, RFC 8018).
   *
   * @throws Unusable where the passphrase is empty, or has letters that not every keyboard has
   */
  public static String pem(PrivateKey key, String passphrase) throws Unusable {
    return pem(PROTECTED, ProtectedKey.encoded(key, passphrase));
  }

  /** Whether a file holds a private key that is protected by a passphrase. */
  public static boolean isProtected(Path file) {
    try {
      return isProtected(text(file));
    } catch (Unusable e) {
      // Why it can't be read is said when it is used.
      return false;
    }
  }

  private static boolean isProtected(String text) {
    return text.contains("-----BEGIN " + PROTECTED + "-----");
  }

  private static PrivateKey privateKey(Path file, Optional<String> passphrase) throws Unusable {
    String text = text(file);
    byte[] encoded;
    if (!isProtected(text)) {
      encoded = bytes(file, text, PRIVATE);
    } else if (passphrase.isPresent()) {
      encoded = ProtectedKey.decoded(file, bytes(file, text, PROTECTED), passphrase.get());
    } else {
      throw new Unusable(file + " is protected by a passphrase; give it with --passphrase FILE");
    }
    try {
      return KeyFactory.getInstance(ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(encoded));
    } catch (GeneralSecurityException e) {
      throw new Unusable(file + " holds no Ed25519 private key");
    }
  }

  /** The public key of a PEM file. */
  public static PublicKey publicKey(Path file) throws Unusable {
    try {
      return publicKey(bytes(file, text(file), PUBLIC));
    } catch (GeneralSecurityException e) {
      throw new Unusable(file + " holds no Ed25519 public key");
    }
  }

  /**
   * The public key of an encoding (DER, RFC 8410).
   *
   * @throws GeneralSecurityException where it is none, or one of small order
   */
  public static PublicKey publicKey(byte[] encoded) throws GeneralSecurityException {
    PublicKey key =
        KeyFactory.getInstance(ALGORITHM).generatePublic(new X509EncodedKeySpec(encoded));
    if (SMALL_ORDER.contains(point(encoded)) || SMALL_ORDER.contains(point(key.getEncoded()))) {
      throw new GeneralSecurityException("a key of small order");
    }
    return key;
  }

  /** The last bytes of an encoding are the point (RFC 8410, 4). */
  private static String point(byte[] encoded) {
    return HexFormat.of()
        .formatHex(encoded, Math.max(0, encoded.length - POINT_BYTES), encoded.length);
  }

  private static byte[] bytes(Path file, String text, String what) throws Unusable {
    String begin = "-----BEGIN " + what + "-----";
    int start = text.indexOf(begin);
    int end = text.indexOf("-----END " + what + "-----");
    if (start < 0 || end < start) {
      throw new Unusable(file + " has no part \"" + begin + "\"");
    }
    try {
      return Base64.getMimeDecoder().decode(text.substring(start + begin.length(), end));
    } catch (IllegalArgumentException e) {
      throw new Unusable(file + " is damaged between its lines BEGIN and END");
    }
  }

  private static String text(Path file) throws Unusable {
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new Unusable(file + " is no file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return new String(in.readNBytes(MOST_BYTES), StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      throw new Unusable(file + " can't be read: " + e.getMessage());
    }
  }

  /**
   * A pair of keys by its private file; the public one stands beside it with {@code .pub}, and is
   * what a signature can be checked with.
   */
  public static KeyPair pair(Path privateFile) throws Unusable {
    return pair(KeyFile.of(privateFile));
  }

  /** The same where the private key may be protected. */
  public static KeyPair pair(KeyFile file) throws Unusable {
    Path privateFile = file.file();
    PrivateKey secret = privateKey(privateFile, file.passphrase());
    Path open = privateFile.resolveSibling(privateFile.getFileName() + ".pub");
    KeyPair pair = new KeyPair(publicKey(open), secret);
    if (!verify(PROBE, sign(PROBE, secret), pair.getPublic())) {
      throw new Unusable(open + " is not the public key of " + privateFile);
    }
    return pair;
  }

  /** Whether others than its owner may read a file, as far as the system tells. */
  public static boolean isOpenToOthers(Path file) {
    try {
      return Files.getPosixFilePermissions(file).stream()
          .anyMatch(
              right ->
                  right == PosixFilePermission.GROUP_READ
                      || right == PosixFilePermission.OTHERS_READ);
    } catch (IOException | UnsupportedOperationException e) {
      // Where a system knows no such rights, it has others that are not looked at.
      return false;
    }
  }

  /** A signature of a text in UTF-8. */
  public static byte[] sign(String text, PrivateKey key) {
    try {
      Signature signature = Signature.getInstance(ALGORITHM);
      signature.initSign(key);
      signature.update(text.getBytes(StandardCharsets.UTF_8));
      return signature.sign();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Java 15 and later have " + ALGORITHM, e);
    }
  }

  /** Whether a signature is one of a text by a key. */
  public static boolean verify(String text, byte[] bytes, PublicKey key) {
    try {
      Signature signature = Signature.getInstance(ALGORITHM);
      signature.initVerify(key);
      signature.update(text.getBytes(StandardCharsets.UTF_8));
      return signature.verify(bytes);
    } catch (GeneralSecurityException e) {
      return false;
    }
  }

  /**
   * By what a key is known: the first half of the SHA-256 of its encoding (DER, RFC 8410), in
   * groups that can be read aloud.
   */
  public static String fingerprint(PublicKey key) {
    String hex = Digest.of(key.getEncoded());
    return hex.substring(0, 32).replaceAll("(.{4})(?=.)", "$1 ");
  }
}
