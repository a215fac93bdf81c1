package ovenloom.solver.bench;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** By which an instance is known again, so that nobody takes the reference of one for another's. */
final class Digest {

  private static final int LETTERS = 16;

  private Digest() {}

  static String of(String text) {
    try {
      byte[] all = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(all).substring(0, LETTERS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
