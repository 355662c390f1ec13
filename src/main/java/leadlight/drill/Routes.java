package leadlight.drill;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.data.JsonText;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.page.DrillPage;
import leadlight.serve.Reply;

/** What is answered to an admitted request, by the path after the token. */
final class Routes {

  /** Posted when the trainee leaves. */
  static final String LEAVE = "leave";

  private static final Pattern CARD = Pattern.compile("card/(\\d{1,4})");
  private static final Pattern PICTURE = Pattern.compile("picture/(\\d{1,4})\\.jpg");

  /** The page, its style, its script and its sign: fixed texts packed into the program. */
  private static final Map<String, Reply> FIXED =
      Map.of(
          "", Reply.html(DrillPage.html()),
          "drill.css", Reply.asset(Routes.class, "drill.css", "text/css; charset=utf-8"),
          "drill.js", Reply.asset(Routes.class, "drill.js", "text/javascript; charset=utf-8"),
          "sign.svg", Reply.asset(Routes.class, "sign.svg", "image/svg+xml"));

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
      return Reply.jpeg(taking.deck().picture(picture.get()));
    }
    return switch (path) {
      case "state" -> json(views.state());
      case "result" -> taking.next().isEmpty() ? json(views.result()) : Reply.missing();
      default -> Reply.missing();
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
          return Reply.missing();
        }
      }
      return Reply.done();
    } catch (IllegalArgumentException e) {
      return Reply.text(Reply.BAD, "not as the page sends it");
    } catch (Refused e) {
      return Reply.text(Reply.CONFLICT, e.getMessage());
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
    return Reply.json(JsonText.of(tree));
  }
}
