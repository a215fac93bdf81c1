package ovenloom.solver.batch;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Tells texts apart: the first half of their SHA-256, in hexadecimal. */
public final class Digest {

  private static final int DIGITS = 32;

  private Digest() {}

  public static String of(String text) {
    try {
      byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8));
      return HexFormat.of().formatHex(sum).substring(0, DIGITS);
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError("every Java has SHA-256", e);
    }
  }
}
