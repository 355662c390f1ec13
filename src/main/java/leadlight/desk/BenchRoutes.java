package leadlight.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.data.JsonText;
import leadlight.life.LegsFile;
import leadlight.life.ShotRow;
import leadlight.model.UserError;
import leadlight.page.BenchPage;
import leadlight.page.BoardPage;
import leadlight.photo.Deadline;
import leadlight.photo.Photo;
import leadlight.serve.Reply;
import leadlight.summary.board.BoardStanding;
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
        default -> new PostedWords(bench).take(path, new String(body, StandardCharsets.UTF_8));
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

  /** The timeline of the board on the bench. */
  private static final class LifePage {

    private final Bench bench;
    private final BoardStanding board;

    LifePage(Bench bench, BoardStanding board) {
      this.bench = bench;
      this.board = board;
    }

    byte[] html() {
      return BoardPage.html(
          board,
          bench.setup().words(),
          shot -> ShotRow.of(bench.shelf(), shot.scoring(), shot.row()),
          event -> LegsFile.picture(bench.shelf(), event),
          bench.setup().writer().context().toolVersion(),
          bench.setup().record().seal().toString());
    }

    String policy() {
      return BoardPage.ownPolicy();
    }
  }
}
