package leadlight.drill.sitting;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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

  /** In front of the keys of words that the page's script has. */
  private static final String PAGE = "drill.page.";

  private static final Pattern SPECIMEN = Pattern.compile("specimen/(\\d{1,4})");
  private static final Pattern PICTURE = Pattern.compile("picture/(\\d{1,4})\\.jpg");

  /** The page's style, script and sign: fixed texts packed into the program. */
  private static final Map<String, Reply> FIXED =
      Map.of(
          "drill.css",
              Reply.asset(Routes.class, "/leadlight/drill/drill.css", "text/css; charset=utf-8"),
          "drill.js",
              Reply.asset(
                  Routes.class, "/leadlight/drill/drill.js", "text/javascript; charset=utf-8"),
          "sign.svg", Reply.asset(Routes.class, "/leadlight/drill/sign.svg", "image/svg+xml"));

  /** What the page sends with a verdict. */
  record Said(
      @JsonProperty(required = true) int specimen,
      @JsonProperty(required = true) int pin,
      @JsonProperty(required = true) Verdict verdict,
      Optional<FindingKind> finding,
      @JsonProperty(required = true) long tookMs) {}

  /** What the page sends to close a specimen. */
  record Closing(@JsonProperty(required = true) int specimen) {}

  private final Judging judging;
  private final Views views;

  Routes(Judging judging) {
    this.judging = judging;
    this.views = new Views(judging);
  }

  Reply get(String path) {
    Reply fixed = FIXED.get(path);
    if (fixed != null) {
      return fixed;
    }
    Optional<Integer> specimen = number(SPECIMEN, path);
    if (specimen.isPresent()) {
      return json(views.specimen(specimen.get()));
    }
    Optional<Integer> picture = number(PICTURE, path);
    if (picture.isPresent()) {
      return Reply.jpeg(judging.set().picture(picture.get()));
    }
    return switch (path) {
      case "" -> Reply.html(DrillPage.html(judging.words()));
      case "words" -> json(pageWords());
      case "state" -> json(views.state());
      case "result" -> judging.next().isEmpty() ? json(views.result()) : Reply.missing();
      default -> Reply.missing();
    };
  }

  /** The words that the page's script puts together. */
  private Map<String, String> pageWords() {
    Map<String, String> said = new TreeMap<>();
    judging.words().keys().stream()
        .filter(key -> key.startsWith(PAGE))
        .forEach(key -> said.put(key.substring(PAGE.length()), judging.words().get(key)));
    return said;
  }

  Reply post(String path, String body) {
    try {
      switch (path) {
        case "answer" -> answer(JsonText.read(body, Said.class));
        case "close" -> judging.close(JsonText.read(body, Closing.class).specimen());
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
    judging.answer(said.specimen(), said.pin(), said.verdict(), said.finding(), said.tookMs());
  }

  /** The number in a path, if it is that of a specimen. */
  private Optional<Integer> number(Pattern pattern, String path) {
    Matcher matcher = pattern.matcher(path);
    return matcher.matches()
        ? Optional.of(Integer.parseInt(matcher.group(1)))
            .filter(n -> n >= 1 && n <= judging.specimens())
        : Optional.empty();
  }

  private static Reply json(Object tree) {
    return Reply.json(JsonText.of(tree));
  }
}
