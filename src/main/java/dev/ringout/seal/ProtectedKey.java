package dev.ringout.seal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.util.HexFormat;
import javax.crypto.Cipher;
import javax.crypto.EncryptedPrivateKeyInfo;
import javax.crypto.SecretKey;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.IvParameterSpec;
import javax.crypto.spec.PBEKeySpec;
import javax.crypto.spec.PBEParameterSpec;

/**
 * A private key behind a passphrase (PKCS #8, RFC 5958; PBES2, RFC 8018), as other tools read it.
 */
final class ProtectedKey {
  private static final String ALGORITHM = "PBEWithHmacSHA256AndAES_256";
  private static final int SALT_BYTES = 16;
  private static final int BLOCK_BYTES = 16;

  /** How often a guess is to be reckoned through; common practice, no source. */
  private static final int ROUNDS = 600_000;

  /** Some seconds; no tool asks for more, and who does wants the program to hang. */
  private static final int MOST_ROUNDS = 5_000_000;

  private static final int INTEGER = 0x02;
  private static final int OCTETS = 0x04;
  private static final int NOTHING = 0x05;
  private static final int OBJECT_IDENTIFIER = 0x06;
  private static final int SEQUENCE = 0x30;
  private static final int LONG = 0x80;

  /** 1.2.840.113549.1.5.13 and .12, 1.2.840.113549.2.9 (RFC 8018, C). */
  private static final byte[] PBES2 = name("2a864886f70d01050d");

  private static final byte[] PBKDF2 = name("2a864886f70d01050c");
  private static final byte[] HMAC_SHA256 = name("2a864886f70d0209");

  /** 2.16.840.1.101.3.4.1.42 (NIST). */
  private static final byte[] AES256_CBC = name("60864801650304012a");

  private ProtectedKey() {}

  static byte[] encoded(PrivateKey key, String passphrase) throws Keys.Unusable {
    if (!passphrase.matches("[\\x20-\\x7e]+")) {
      throw new Keys.Unusable(
          "a passphrase is of letters, digits and signs of ASCII, and not empty");
    }
    byte[] salt = new byte[SALT_BYTES];
    byte[] start = new byte[BLOCK_BYTES];
    SecureRandom random = new SecureRandom();
    random.nextBytes(salt);
    random.nextBytes(start);
    try {
      Cipher cipher = Cipher.getInstance(ALGORITHM);
      cipher.init(
          Cipher.ENCRYPT_MODE,
          secret(ALGORITHM, passphrase),
          new PBEParameterSpec(salt, ROUNDS, new IvParameterSpec(start)));
      return der(SEQUENCE, scheme(salt, start), der(OCTETS, cipher.doFinal(key.getEncoded())));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Java has " + ALGORITHM, e);
    }
  }

  /** How it is hidden (RFC 8018, A.4); Java 17 writes no such thing itself. */
  private static byte[] scheme(byte[] salt, byte[] start) {
    byte[] rounds = BigInteger.valueOf(ROUNDS).toByteArray();
    byte[] derivation =
        der(
            SEQUENCE,
            PBKDF2,
            der(
                SEQUENCE,
                der(OCTETS, salt),
                der(INTEGER, rounds),
                der(SEQUENCE, HMAC_SHA256, der(NOTHING))));
    byte[] encryption = der(SEQUENCE, AES256_CBC, der(OCTETS, start));
    return der(SEQUENCE, PBES2, der(SEQUENCE, derivation, encryption));
  }

  /** One thing of DER (X.690, 8.1): what it is, how long, and what is in it. */
  private static byte[] der(int tag, byte[]... inside) {
    ByteArrayOutputStream content = new ByteArrayOutputStream();
    for (byte[] one : inside) {
      content.writeBytes(one);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(tag);
    if (content.size() >= LONG) {
      out.write(LONG | 2);
      out.write(content.size() >> 8);
    }
    out.write(content.size());
    out.writeBytes(content.toByteArray());
    return out.toByteArray();
  }

  private static byte[] name(String hex) {
    return der(OBJECT_IDENTIFIER, HexFormat.of().parseHex(hex));
  }

  static byte[] decoded(Path file, byte[] encoded, String passphrase) throws Keys.Unusable {
    try {
      EncryptedPrivateKeyInfo info = new EncryptedPrivateKeyInfo(encoded);
      String algorithm = info.getAlgParameters().toString();
      if (info.getAlgParameters().getParameterSpec(PBEParameterSpec.class).getIterationCount()
          > MOST_ROUNDS) {
        throw new Keys.Unusable(file + " asks for more work on its passphrase than any key does");
      }
      Cipher cipher = Cipher.getInstance(algorithm);
      cipher.init(Cipher.DECRYPT_MODE, secret(algorithm, passphrase), info.getAlgParameters());
      return info.getKeySpec(cipher).getEncoded();
    } catch (GeneralSecurityException e) {
      throw new Keys.Unusable("the passphrase is not that of " + file);
    } catch (IOException | RuntimeException e) {
      // The decoder throws whatever it stumbles over in what is no key.
      throw new Keys.Unusable(file + " is protected in a way that is not read, or damaged");
    }
  }

  private static SecretKey secret(String algorithm, String passphrase)
      throws GeneralSecurityException {
    return SecretKeyFactory.getInstance(algorithm)
        .generateSecret(new PBEKeySpec(passphrase.toCharArray()));
  }
}
