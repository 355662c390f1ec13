package leadlight.serve;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * An answer to a request.
 *
 * @param status as in RFC 9110
 * @param type media type
 * @param content may be empty
 * @param policy content-security policy of a page that brings its own style within it; else the
 *     server's own holds
 */
public record Reply(int status, String type, byte[] content, Optional<String> policy) {

  /** All is well. */
  public static final int OK = 200;

  /** Done, and nothing to say. */
  static final int DONE = 204;

  /** Not as a page of ours sends it. */
  public static final int BAD = 400;

  /** Nothing is there. */
  static final int NOT_FOUND = 404;

  /** Cannot be done now; the text says why. */
  public static final int CONFLICT = 409;

  /** The record cannot be written. */
  static final int TROUBLE = 500;

  private static final String JSON = "application/json; charset=utf-8";

  /** An answer under the server's own policy. */
  public Reply(int status, String type, byte[] content) {
    this(status, type, content, Optional.empty());
  }

  /** A tree as JSON. */
  public static Reply json(String tree) {
    return new Reply(OK, JSON, tree.getBytes(StandardCharsets.UTF_8));
  }

  /** Nothing but that it was done. */
  public static Reply done() {
    return new Reply(DONE, JSON, new byte[0]);
  }

  /** A page. */
  public static Reply html(byte[] page) {
    return new Reply(OK, "text/html; charset=utf-8", page);
  }

  /** A picture. */
  public static Reply jpeg(byte[] picture) {
    return new Reply(OK, "image/jpeg", picture);
  }

  /** Plain words. */
  public static Reply text(int status, String words) {
    return new Reply(status, "text/plain; charset=utf-8", words.getBytes(StandardCharsets.UTF_8));
  }

  /** Nothing is there. */
  public static Reply missing() {
    return text(NOT_FOUND, "not here");
  }

  /** A fixed text packed into the program beside a class. */
  public static Reply asset(Class<?> beside, String name, String type) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalArgumentException("no asset " + name);
      }
      return new Reply(OK, type, in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
