package leadlight.serve;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Who may talk to the page's server. The token in the address keeps other programs and people of
 * this computer out; the check of Host keeps out names that were bound to the loopback address (DNS
 * rebinding), that of Origin and Sec-Fetch-Site other pages (WHATWG Fetch, "Origin header"; W3C
 * Fetch Metadata).
 */
final class Guard {

  private static final int TOKEN_BYTES = 24;

  /** Sent with every answer; W3C CSP Level 3: pictures, style and script of this server alone. */
  private static final Map<String, String> HEADERS =
      Map.of(
          "Content-Security-Policy",
          "default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self';"
              + " connect-src 'self'; base-uri 'none'; form-action 'none';"
              + " frame-ancestors 'none'",
          "X-Content-Type-Options",
          "nosniff",
          "Referrer-Policy",
          "no-referrer",
          "Cross-Origin-Resource-Policy",
          "same-origin",
          "Cross-Origin-Opener-Policy",
          "same-origin",
          "Cache-Control",
          "no-store");

  private final String host;
  private final byte[] token;

  /** A guard of a port, with a token nobody can guess. */
  Guard(String address, int port) {
    byte[] random = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(random);
    this.host = address + ":" + port;
    this.token = ascii(Base64.getUrlEncoder().withoutPadding().encodeToString(random));
  }

  /** The page's address. */
  String address() {
    return "http://" + host + "/" + new String(token, StandardCharsets.US_ASCII) + "/";
  }

  /** The part of the address after the token; empty if the request is to be refused. */
  Optional<String> admitted(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    String path = Objects.requireNonNullElse(exchange.getRequestURI().getRawPath(), "");
    String[] parts = path.split("/", 3);
    boolean known = parts.length == 3 && MessageDigest.isEqual(ascii(parts[1]), token);
    boolean here =
        only(headers, "Host").filter(host::equals).isPresent()
            && sameOrigin(headers, exchange.getRequestMethod().equals("POST"))
            && exchange.getRemoteAddress().getAddress().isLoopbackAddress();
    return known && here ? Optional.of(parts[2]) : Optional.empty();
  }

  /** A page of this server sends its own origin with every POST; others never may. */
  private boolean sameOrigin(Headers headers, boolean post) {
    boolean origin =
        headers.containsKey("Origin")
            ? only(headers, "Origin").filter(("http://" + host)::equals).isPresent()
            : !post;
    String site = only(headers, "Sec-Fetch-Site").orElse("none");
    return origin && (site.equals("same-origin") || site.equals("none"));
  }

  /** A header that is there exactly once. */
  private static Optional<String> only(Headers headers, String name) {
    return headers.getOrDefault(name, List.of()).size() == 1
        ? Optional.of(headers.getFirst(name))
        : Optional.empty();
  }

  static void protect(Headers headers) {
    HEADERS.forEach(headers::set);
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
