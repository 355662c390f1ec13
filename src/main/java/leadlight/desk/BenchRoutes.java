package leadlight.desk;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.data.JsonText;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.page.BenchPage;
import leadlight.photo.Deadline;
import leadlight.photo.Photo;
import leadlight.record.BenchTest;
import leadlight.record.LifeEvent;
import leadlight.record.Subject;
import leadlight.serve.Reply;
import leadlight.summary.BoardStanding;
import leadlight.text.Messages;

/** What is answered to an admitted request of the bench page, by the path after the token. */
final class BenchRoutes {

  /** Posted when the serving is to end. */
  static final String LEAVE = "leave";

  /** Camera pictures: a picture of 12 million pixels as JPEG of high quality fits. */
  private static final int MOST_PICTURE = 32 << 20;

  private static final int MOST_WORDS = 1 << 16;

  private static final Pattern SHOT = Pattern.compile("shot/(\\d{1,9})");
  private static final Pattern PICTURE = Pattern.compile("picture/(\\d{1,9})\\.jpg");
  private static final Pattern NUDGE = Pattern.compile("nudge/(\\d{1,9})");
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss-SSS", Locale.ROOT);

  private static final Map<String, Reply> FIXED =
      Map.of(
          "bench.css", Reply.asset(BenchRoutes.class, "bench.css", "text/css; charset=utf-8"),
          "sign.svg", Reply.asset(BenchRoutes.class, "sign.svg", "image/svg+xml"),
          "bench.js", Reply.asset(BenchRoutes.class, "bench.js", "text/javascript; charset=utf-8"));

  /** Which board comes onto the bench. */
  record Choice(
      @JsonProperty(required = true) String job,
      @JsonProperty(required = true) String board,
      @JsonProperty(required = true) String stage,
      @JsonProperty(required = true) int attempt,
      Optional<String> port) {}

  /** Which preset. */
  record Word(@JsonProperty(required = true) String word) {}

  /** What the bench said. */
  record Said(
      @JsonProperty(required = true) long scoring,
      @JsonProperty(required = true) int pin,
      @JsonProperty(required = true) String test,
      @JsonProperty(required = true) String result,
      OptionalInt other) {}

  /** What a person says. */
  record Opinion(
      @JsonProperty(required = true) long scoring,
      @JsonProperty(required = true) int pin,
      @JsonProperty(required = true) String verdict,
      @JsonProperty(required = true) String reason) {}

  /** What is taken back. */
  record Back(
      @JsonProperty(required = true) long scoring,
      @JsonProperty(required = true) int pin,
      @JsonProperty(required = true) boolean opinion) {}

  /** What is noted of the board. */
  record Noted(
      @JsonProperty(required = true) String kind,
      @JsonProperty(required = true) String words,
      @JsonProperty(required = true) List<Integer> pins,
      Optional<Boolean> good) {}

  private final Bench bench;
  private final Views views;
  private final Shots shots;
  private final Messages words;
  private final Optional<WatchedFolder> folder;

  BenchRoutes(Bench bench) {
    this.bench = bench;
    this.views = new Views(bench);
    this.shots = new Shots(bench);
    this.words = bench.setup().words();
    this.folder = bench.setup().watched().map(WatchedFolder::new);
  }

  static int mostBytes(String path) {
    boolean picture = path.equals("glance") || path.equals("take") || path.startsWith("nudge/");
    return picture ? MOST_PICTURE : MOST_WORDS;
  }

  Reply get(String path) {
    Reply fixed = FIXED.get(path);
    if (fixed != null) {
      return fixed;
    }
    Matcher shot = SHOT.matcher(path);
    if (shot.matches()) {
      return known(() -> Reply.json(JsonText.of(shots.of(Long.parseLong(shot.group(1))))));
    }
    Matcher picture = PICTURE.matcher(path);
    if (picture.matches()) {
      return known(
          () ->
              shots
                  .picture(Long.parseLong(picture.group(1)))
                  .map(Reply::jpeg)
                  .orElseGet(Reply::missing));
    }
    return switch (path) {
      case "" -> Reply.html(BenchPage.html(words));
      case "words" -> Reply.json(JsonText.of(deskWords()));
      case "state" -> Reply.json(JsonText.of(views.state()));
      case "newest" -> newest();
      case "newest.jpg" -> newestPicture();
      case "life" -> life();
      default -> Reply.missing();
    };
  }

  /** A number that is none of the record's is nothing that is here. */
  private static Reply known(java.util.function.Supplier<Reply> made) {
    try {
      return made.get();
    } catch (UserError e) {
      return Reply.missing();
    }
  }

  /** The words that the page's script puts together. */
  private Map<String, String> deskWords() {
    Map<String, String> desk = new TreeMap<>();
    words.keys().stream()
        .filter(key -> key.startsWith("desk."))
        .forEach(key -> desk.put(key.substring("desk.".length()), words.get(key)));
    return desk;
  }

  private Reply life() {
    Optional<BoardStanding> standing = bench.standing();
    if (standing.isEmpty()) {
      return Reply.text(Reply.CONFLICT, words.get("desk.choose-first"));
    }
    LifePage page = new LifePage(bench, standing.get());
    return new Reply(Reply.OK, "text/html; charset=utf-8", page.html(), Optional.of(page.policy()));
  }

  /** A picture that lies in the folder. */
  record Lying(String stamp, String file, Glance glance) {}

  private Reply newest() {
    Optional<WatchedFolder.Newest> newest = folder.flatMap(WatchedFolder::newest);
    if (newest.isEmpty() || !bench.hasRow()) {
      return Reply.json("{}");
    }
    try {
      byte[] content = Files.readAllBytes(newest.get().file());
      return Reply.json(
          JsonText.of(
              new Lying(
                  newest.get().stamp(),
                  newest.get().file().getFileName().toString(),
                  Glance.of(content, bench))));
    } catch (IOException e) {
      return Reply.json("{}");
    }
  }

  private Reply newestPicture() {
    Optional<WatchedFolder.Newest> newest = folder.flatMap(WatchedFolder::newest);
    if (newest.isEmpty()) {
      return Reply.missing();
    }
    try (Photo photo = new Deadline().read(newest.get().file())) {
      return Reply.jpeg(Shots.jpeg(photo.frame()));
    } catch (UserError e) {
      return Reply.missing();
    }
  }

  Reply post(String path, byte[] body) {
    try {
      Matcher nudge = NUDGE.matcher(path);
      if (nudge.matches()) {
        return Reply.json(
            JsonText.of(new NudgeShot(bench).read(body, Long.parseLong(nudge.group(1)))));
      }
      return switch (path) {
        case "glance" ->
            bench.hasRow()
                ? Reply.json(JsonText.of(Glance.of(body, bench)))
                : Reply.text(Reply.CONFLICT, words.get("desk.row-first"));
        case "take" -> Reply.json("{\"scoring\":" + take(body) + "}");
        case LEAVE -> Reply.done();
        default -> words(path, new String(body, StandardCharsets.UTF_8));
      };
    } catch (IllegalArgumentException e) {
      return Reply.text(Reply.BAD, "not as the page sends it");
    } catch (Refused | UserError e) {
      return Reply.text(Reply.CONFLICT, e.getMessage());
    }
  }

  private long take(byte[] body) throws Refused {
    if (body.length > 0) {
      return bench.take(body, "bench-" + STAMP.format(bench.now()) + ".jpg");
    }
    WatchedFolder.Newest newest =
        folder
            .flatMap(WatchedFolder::newest)
            .orElseThrow(() -> new Refused(words.get("desk.no-picture")));
    try {
      return bench.take(Files.readAllBytes(newest.file()), newest.file().getFileName().toString());
    } catch (IOException e) {
      throw new Refused(words.get("desk.no-picture"));
    }
  }

  private Reply words(String path, String body) throws Refused {
    switch (path) {
      case "subject" -> {
        Choice choice = JsonText.read(body, Choice.class);
        bench.choose(
            new Subject(
                choice.job().strip(),
                choice.board().strip(),
                Bench.stage(choice.stage()),
                choice.attempt(),
                choice.port()));
      }
      case "preset" -> bench.choose(JsonText.read(body, Word.class).word());
      case "bench" -> {
        Said said = JsonText.read(body, Said.class);
        bench.said(said.scoring(), said.pin(), test(said.test()), said.result(), said.other());
      }
      case "opinion" -> {
        Opinion opinion = JsonText.read(body, Opinion.class);
        if (opinion.reason().isBlank()) {
          throw new Refused(words.get("desk.say-why"));
        }
        bench.overruled(
            opinion.scoring(), opinion.pin(), verdict(opinion.verdict()), opinion.reason());
      }
      case "back" -> {
        Back back = JsonText.read(body, Back.class);
        bench.takeBack(back.scoring(), back.pin(), back.opinion());
      }
      case "note" -> {
        Noted noted = JsonText.read(body, Noted.class);
        bench.note(kind(noted.kind()), noted.words(), noted.pins(), noted.good());
      }
      default -> {
        return Reply.missing();
      }
    }
    return Reply.done();
  }

  private static BenchTest test(String id) {
    return one(BenchTest.values(), test -> test.id().equals(id));
  }

  private static Verdict verdict(String id) {
    return one(Verdict.values(), verdict -> verdict != Verdict.UNJUDGED && verdict.id().equals(id));
  }

  private static LifeEvent.Kind kind(String id) {
    return one(LifeEvent.Kind.values(), kind -> kind.id().equals(id));
  }

  private static <T> T one(T[] all, java.util.function.Predicate<T> test) {
    return Arrays.stream(all)
        .filter(test)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("not as the page sends it"));
  }
}
