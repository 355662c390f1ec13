package leadlight.drill;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.data.JsonText;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.page.DrillPage;

/** What is answered to an admitted request, by the path after the token. */
final class Routes {

  /** Posted when the trainee leaves. */
  static final String LEAVE = "leave";

  /** The record cannot be written. */
  static final int TROUBLE = 500;

  private static final int OK = 200;
  private static final int DONE = 204;
  private static final int BAD = 400;
  private static final int NOT_FOUND = 404;
  private static final int CONFLICT = 409;

  private static final Pattern CARD = Pattern.compile("card/(\\d{1,4})");
  private static final Pattern PICTURE = Pattern.compile("picture/(\\d{1,4})\\.jpg");
  private static final String JSON = "application/json; charset=utf-8";

  /** The page, its style, its script and its sign: fixed texts packed into the program. */
  private static final Map<String, Reply> FIXED =
      Map.of(
          "", new Reply(OK, "text/html; charset=utf-8", DrillPage.html()),
          "drill.css", asset("drill.css", "text/css; charset=utf-8"),
          "drill.js", asset("drill.js", "text/javascript; charset=utf-8"),
          "sign.svg", asset("sign.svg", "image/svg+xml"));

  /**
   * An answer to a request.
   *
   * @param status as in RFC 9110
   * @param type media type
   * @param content may be empty
   */
  record Reply(int status, String type, byte[] content) {}

  /** What the page sends with a verdict. */
  record Said(
      @JsonProperty(required = true) int card,
      @JsonProperty(required = true) int pin,
      @JsonProperty(required = true) Verdict verdict,
      Optional<FindingKind> finding,
      @JsonProperty(required = true) long tookMs) {}

  /** What the page sends to close a card. */
  record Closing(@JsonProperty(required = true) int card) {}

  private final Taking taking;
  private final Views views;

  Routes(Taking taking) {
    this.taking = taking;
    this.views = new Views(taking);
  }

  Reply get(String path) {
    Reply fixed = FIXED.get(path);
    if (fixed != null) {
      return fixed;
    }
    Optional<Integer> card = number(CARD, path);
    if (card.isPresent()) {
      return json(views.card(card.get()));
    }
    Optional<Integer> picture = number(PICTURE, path);
    if (picture.isPresent()) {
      return new Reply(OK, "image/jpeg", taking.deck().picture(picture.get()));
    }
    return switch (path) {
      case "state" -> json(views.state());
      case "result" -> taking.next().isEmpty() ? json(views.result()) : missing();
      default -> missing();
    };
  }

  Reply post(String path, String body) {
    try {
      switch (path) {
        case "answer" -> answer(JsonText.read(body, Said.class));
        case "close" -> taking.close(JsonText.read(body, Closing.class).card());
        case LEAVE -> {
          // Only said here; the server ends the serving once this is answered.
        }
        default -> {
          return missing();
        }
      }
      return new Reply(DONE, JSON, new byte[0]);
    } catch (IllegalArgumentException e) {
      return text(BAD, "not as the page sends it");
    } catch (Refused e) {
      return text(CONFLICT, e.getMessage());
    }
  }

  private void answer(Said said) throws Refused {
    taking.answer(said.card(), said.pin(), said.verdict(), said.finding(), said.tookMs());
  }

  /** The number in a path, if it is that of a card. */
  private Optional<Integer> number(Pattern pattern, String path) {
    Matcher matcher = pattern.matcher(path);
    return matcher.matches()
        ? Optional.of(Integer.parseInt(matcher.group(1))).filter(n -> n >= 1 && n <= taking.cards())
        : Optional.empty();
  }

  private static Reply json(Object tree) {
    return new Reply(OK, JSON, JsonText.of(tree).getBytes(StandardCharsets.UTF_8));
  }

  private static Reply missing() {
    return text(NOT_FOUND, "not here");
  }

  static Reply text(int status, String words) {
    return new Reply(status, "text/plain; charset=utf-8", words.getBytes(StandardCharsets.UTF_8));
  }

  private static Reply asset(String name, String type) {
    try (InputStream in = Routes.class.getResourceAsStream(name)) {
      return new Reply(OK, type, in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
