package leadlight.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.life.BenchRules;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.page.photo.PinSpot;
import leadlight.page.words.RecordWords;
import leadlight.photo.Photo;
import leadlight.record.said.RecordedJoint;
import leadlight.record.said.RecordedRow;
import leadlight.record.said.Standing;
import leadlight.record.scoring.Scoring;
import leadlight.report.words.Task;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;

/** What the page shows of a recorded photo. */
final class Shots {

  private static final int QUALITY = 85;

  private final Bench bench;
  private final Messages words;
  private final Sentences sentences;

  Shots(Bench bench) {
    this.bench = bench;
    this.words = bench.setup().words();
    this.sentences = new Sentences(words, LengthUnit.MM);
  }

  /**
   * A joint as the page shows it.
   *
   * @param spot where its number and sign stand in the shown photo
   * @param word the verdict in words
   * @param source whose word it is
   * @param tool the tool's own verdict in words
   * @param task what is to be done, by its id
   * @param title the same in words
   * @param with the tool in words
   * @param what what was found, or why it is not judged
   * @param how how it is done, or settled
   * @param said what people and the bench said, and what was taken back
   * @param opinion true if a person's opinion stands
   * @param bench true if a bench result stands
   */
  record Pin(
      PinSpot spot,
      String word,
      String source,
      String tool,
      String task,
      String title,
      String with,
      List<String> what,
      List<String> how,
      List<String> said,
      boolean opinion,
      boolean bench) {}

  /**
   * A photo as the page shows it.
   *
   * @param verdict id of the verdict that counts
   * @param word the same in words
   * @param counts joints by verdict
   * @param turnDeg by how much it is turned so that the body is above
   * @param steps pins that need hands, in the order of their tasks, then those to settle
   * @param hints what to change about the photo, or why there is no row
   */
  record Shot(
      long scoring,
      String file,
      String stage,
      String verdict,
      String word,
      List<String> counts,
      int widthPx,
      int heightPx,
      double turnDeg,
      List<Pin> pins,
      List<Integer> steps,
      List<String> hints) {}

  Shot of(long id) {
    Scoring scoring = bench.setup().record().scoring(id);
    RecordedRow row = bench.setup().record().row(id);
    List<GradedJoint> standing = row.standing();
    double factor = factor(scoring.photo().widthPx(), scoring.photo().heightPx());
    List<PinSpot> spots = PinSpot.of(standing, factor);
    List<Pin> pins = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      pins.add(pin(row.joints().get(i), spots.get(i)));
    }
    List<String> hints = new ArrayList<>();
    scoring.rowReason().ifPresent(why -> hints.add(sentences.of(why)));
    hints.addAll(sentences.of(scoring.rowNotes()));
    hints.addAll(sentences.of(scoring.fitness()));
    return new Shot(
        id,
        scoring.photo().file(),
        RecordWords.stage(words, scoring.subject()),
        row.verdict().id(),
        words.get(row.joints().isEmpty() ? "desk.no-row" : "desk.verdict." + row.verdict().id()),
        counts(standing),
        (int) Math.round(factor * scoring.photo().widthPx()),
        (int) Math.round(factor * scoring.photo().heightPx()),
        row.outcome() instanceof RowOutcome.Found found ? turn(found) : 0,
        pins,
        steps(standing),
        hints);
  }

  /** The photo, shrunk; empty if it is gone or was changed. */
  Optional<byte[]> picture(long id) {
    Optional<Photo> open = bench.shelf().open(bench.setup().record().scoring(id));
    try {
      return open.map(photo -> jpeg(photo.frame()));
    } finally {
      open.ifPresent(Photo::close);
    }
  }

  static byte[] jpeg(Frame frame) {
    double factor = factor(frame.widthPx(), frame.heightPx());
    try (Frame small = frame.shrunk(factor);
        Canvas canvas = new Canvas(small.widthPx(), small.heightPx(), 0)) {
      canvas.paste(small, 0, 0, small.widthPx(), small.heightPx());
      return canvas.jpeg(QUALITY);
    }
  }

  private static double factor(int widthPx, int heightPx) {
    return Math.min(
        1, BenchRules.builtIn().shownPx().value() / (double) Math.max(widthPx, heightPx));
  }

  private static double turn(RowOutcome.Found found) {
    Lead lead = found.leads().get(found.leads().size() / 2);
    double dx = lead.landToePx().x() - lead.landHeelPx().x();
    double dy = lead.landToePx().y() - lead.landHeelPx().y();
    return Math.round(10 * (90 - Math.toDegrees(Math.atan2(dy, dx)))) / 10.0;
  }

  private List<String> counts(List<GradedJoint> joints) {
    List<String> counts = new ArrayList<>();
    for (Verdict verdict : Verdict.WORST_FIRST) {
      int count = (int) joints.stream().filter(j -> j.verdict() == verdict).count();
      if (count > 0) {
        counts.add(VerdictWords.counted(verdict, count, words));
      }
    }
    return counts;
  }

  private static List<Integer> steps(List<GradedJoint> joints) {
    Map<Integer, Task> tasks = new LinkedHashMap<>();
    joints.forEach(joint -> tasks.put(joint.pin(), Task.of(joint)));
    return tasks.entrySet().stream()
        .filter(entry -> entry.getValue() != Task.LEAVE)
        .sorted(
            Comparator.comparing(
                    (Map.Entry<Integer, Task> entry) -> entry.getValue(), Task.byTool())
                .thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey)
        .toList();
  }

  private Pin pin(RecordedJoint joint, PinSpot spot) {
    Standing standing = joint.standing();
    Task task = Task.of(standing.joint());
    boolean settle = task == Task.SETTLE;
    List<String> what =
        settle
            ? sentences.of(standing.joint().doubts())
            : Sentences.spoken(standing.joint().findings()).stream().map(this::finding).toList();
    List<String> how =
        task.touches()
            ? List.of(words.get("rework." + task.id() + ".how"))
            : List.of(words.get(settle ? "rework.check.how" : "desk.leave"));
    return new Pin(
        spot,
        words.get("desk.pin." + standing.joint().verdict().id()),
        standing.source().id(),
        words.get("desk.pin." + joint.tool().verdict().id()),
        task.id(),
        words.get(
            settle ? "rework.check" : task.touches() ? "rework." + task.id() : "rework.leave"),
        task.tool().isEmpty() ? "" : words.get("tool." + task.tool()),
        what,
        how,
        Views.said(joint, words),
        !joint.overrules().isEmpty(),
        !joint.bench().isEmpty());
  }

  private String finding(Finding finding) {
    String name = words.get("kind." + finding.kind().id());
    String why = String.join("; ", sentences.because(finding));
    return finding.probability() < 1 ? sentences.sure(finding, name) : name + ": " + why;
  }
}
