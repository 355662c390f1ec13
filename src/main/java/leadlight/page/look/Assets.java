package leadlight.page.look;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** The page's own style and script, and the policy that lets nothing else run. */
public final class Assets {

  private Assets() {}

  public static String text(String name) {
    try (InputStream in = Assets.class.getResourceAsStream("/leadlight/page/" + name)) {
      if (in == null) {
        throw new IllegalArgumentException("no asset " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static String dataUri(String type, byte[] content) {
    return "data:" + type + ";base64," + Base64.getEncoder().encodeToString(content);
  }

  /**
   * A content-security policy (W3C CSP Level 3): pictures from within the file, one style and one
   * script known by their SHA-256, nothing else.
   */
  public static String policy(String css, String script) {
    return policy(css) + "; script-src '" + hash(script) + "'";
  }

  /** The same without any script. */
  public static String policy(String css) {
    return "default-src 'none'; img-src data:; base-uri 'none'; form-action 'none'; style-src '"
        + hash(css)
        + "'";
  }

  private static String hash(String content) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
