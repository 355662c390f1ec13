package leadlight.page;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import leadlight.model.Verdict;
import leadlight.page.words.SafeText;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import leadlight.summary.day.DaySummary;
import leadlight.summary.day.Dpmo;
import leadlight.summary.day.JobLine;
import leadlight.summary.day.PhotoLine;
import leadlight.summary.day.PinStrip;
import leadlight.summary.day.Reason;
import leadlight.summary.day.Retake;
import leadlight.summary.day.Tally;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;

/**
 * The page of a run: one HTML file without script and network. Links lead to files of the run's
 * folder and of runs beside it.
 */
public final class DayPage {

  /** From this share of the strip's worst pin on, a pin is one of the bad ones. */
  private static final double MANY = 0.5;

  /** As many pins as stand beside their heads on a screen of 360 pixels. */
  private static final int PART = 7;

  private final DaySummary day;
  private final String toolVersion;
  private final Messages words;
  private final Sentences sentences;
  private final String css = style();

  private DayPage(DaySummary day, String toolVersion, Messages words) {
    this.day = day;
    this.words = words;
    this.sentences = new Sentences(words, LengthUnit.MM);
    this.toolVersion = toolVersion;
  }

  /** The page, UTF-8. */
  public static byte[] html(DaySummary day, String toolVersion, Messages words) {
    StringOutput output = new StringOutput(1 << 16);
    JtedayGenerated.render(
        new OwaspHtmlTemplateOutput(output), null, new DayPage(day, toolVersion, words), day);
    return output.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String style() {
    try (InputStream in = DayPage.class.getResourceAsStream("day.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String css() {
    return css;
  }

  /** Nothing but the page's own style and its pictures: no script, no network. */
  String policy() {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(css.getBytes(StandardCharsets.UTF_8));
      return "default-src 'none'; img-src 'self' data:; style-src 'sha256-"
          + Base64.getEncoder().encodeToString(hash)
          + "'; base-uri 'none'; form-action 'none'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  String title() {
    return words.get("day.title", day.folder().getFileName());
  }

  Messages words() {
    return words;
  }

  String headline() {
    String seen = findings(day.standing());
    return words.get(
        "day.headline",
        words.counted("day.photos", day.photos()),
        words.counted("day.jobs", day.jobs().size()),
        words.counted("day.joints", day.standing().joints()),
        seen.isEmpty() ? words.get("day.no-defect") : words.get("day.seen", seen));
  }

  String findings(Tally tally) {
    return tally.findingWords(words);
  }

  String made() {
    return words.get("day.made", toolVersion);
  }

  String stage(Subject subject) {
    String stage = words.get("stage." + subject.stage().id());
    return subject.attempt() == 1 ? stage : words.get("stage.again", stage, subject.attempt());
  }

  String stage(Dpmo dpmo) {
    return words.get("stage." + dpmo.stage().map(Stage::id).orElse("last"));
  }

  String row(PinStrip strip) {
    return words.get("day.row", strip.connector(), strip.leads());
  }

  String why(Reason reason) {
    return reason.joints() == 1 ? sentences.of(reason.doubt()) : sentences.general(reason.doubt());
  }

  String why(Retake retake) {
    return SafeText.of(retake.note().map(sentences::of).orElse(retake.refused()));
  }

  List<Verdict> worstFirst() {
    return Verdict.WORST_FIRST;
  }

  String words(Verdict verdict) {
    return words.get("day.verdict." + verdict.id());
  }

  /** "12 sound", "1 to watch". */
  String count(Tally tally, Verdict verdict) {
    return VerdictWords.counted(verdict, tally.count(verdict), words);
  }

  String safe(String outside) {
    return SafeText.of(outside);
  }

  /** The sign of a job: what must not be handed back looks like a defect, whatever forbids it. */
  String sign(JobLine job) {
    return (job.fit() ? job.verdict() : Verdict.DEFECT).id();
  }

  /** How a job stands after the last stage of each of its boards. */
  String stand(JobLine job) {
    List<String> parts = new ArrayList<>();
    parts.add(words.counted("day.boards", job.boards()));
    for (Verdict verdict : Verdict.WORST_FIRST) {
      if (job.tally().count(verdict) > 0) {
        parts.add(count(job.tally(), verdict));
      }
    }
    return words.get(
        job.boards() == 1 ? "day.stand.one" : "day.stand.many", String.join(", ", parts));
  }

  /** The photo's page, else its annotated picture; null if neither is there any more. */
  String link(PhotoLine photo) {
    String json = photo.results().toString();
    String stem = json.substring(0, json.length() - ".json".length());
    for (String ending : List.of(".html", ".annotated.png")) {
      Path file = Path.of(stem + ending);
      if (Files.exists(file)) {
        return relative(file);
      }
    }
    return null;
  }

  private String relative(Path file) {
    List<String> parts = new ArrayList<>();
    for (Path part : day.folder().toAbsolutePath().relativize(file)) {
      parts.add(URLEncoder.encode(part.toString(), StandardCharsets.UTF_8).replace("+", "%20"));
    }
    return String.join("/", parts);
  }

  boolean has(String picture) {
    return Files.exists(day.folder().resolve(picture));
  }

  static List<List<PinStrip.Pin>> parts(PinStrip strip) {
    return strip.parts(PART);
  }

  String shade(PinStrip.Pin pin, PinStrip strip) {
    if (pin.defects() == 0) {
      return "none";
    }
    return pin.defects() >= MANY * strip.worst() ? "many" : "some";
  }

  /** How many were judged, and how many of them are anchor legs. */
  String judged(Dpmo dpmo) {
    return dpmo.legs() == 0
        ? "" + dpmo.opportunities()
        : words.get("day.judged.legs", dpmo.opportunities(), dpmo.legs());
  }

  String million(Dpmo dpmo) {
    return dpmo.opportunities() == 0 ? words.get("day.none") : whole(dpmo.value());
  }

  String interval(Dpmo dpmo) {
    return between(dpmo, dpmo.lower(), dpmo.upper());
  }

  String plainInterval(Dpmo dpmo) {
    return between(dpmo, dpmo.plainLower(), dpmo.plainUpper());
  }

  private String between(Dpmo dpmo, double lower, double upper) {
    return dpmo.opportunities() == 0 ? "" : words.get("day.to", whole(lower), whole(upper));
  }

  private static String whole(double value) {
    return String.format(Locale.ROOT, "%,d", Math.round(value)).replace(',', '\u2009');
  }

  String unjudged(DaySummary summary) {
    int joints = summary.total().joints();
    int unjudged = summary.total().count(Verdict.UNJUDGED);
    return joints == 0
        ? words.get("day.no-joint")
        : words.get(
            "day.unjudged.share", unjudged, joints, words.number(100.0 * unjudged / joints, 1));
  }
}
