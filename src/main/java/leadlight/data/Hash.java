package leadlight.data;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) as lower-case hex. */
public final class Hash {

  private static final int CHUNK = 1 << 16;

  private Hash() {}

  /** Hash of bytes. */
  public static String sha256(byte[] content) {
    return hex(digest().digest(content));
  }

  /**
   * Hash of a file, read piece by piece.
   *
   * @throws IOException if it cannot be read to its end
   */
  public static String sha256(Path file) throws IOException {
    MessageDigest digest = digest();
    byte[] chunk = new byte[CHUNK];
    try (InputStream in = Files.newInputStream(file)) {
      for (int length = in.read(chunk); length >= 0; length = in.read(chunk)) {
        digest.update(chunk, 0, length);
      }
    }
    return hex(digest.digest());
  }

  private static String hex(byte[] hash) {
    return HexFormat.of().formatHex(hash);
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
