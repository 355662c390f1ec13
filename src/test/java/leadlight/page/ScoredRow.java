package leadlight.page;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorLibrary;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.FindingKind;
import leadlight.model.Opinions;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Doubt;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.page.words.PageContext;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.report.words.StatedLimits;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import leadlight.vision.Frame;

/** A sample photo, truly scored once, and variations of the result. */
public final class ScoredRow {

  public static final Connector CONNECTOR = ConnectorLibrary.builtIn().find("video-a-19-slots");
  private static final List<Photo> OPEN = new ArrayList<>();
  public static final ScoredPhoto SCORED = score(Opinions.BOTH);

  /** A name that tries to run, to break out of its place and to turn the text around. */
  static final String HOSTILE =
      "\"'><img src=x onerror=\"window.hacked=1\"><script>window.hacked=2</script>\u202egpj.exe\u0007";

  private ScoredRow() {}

  /** The sample, to be released by {@link #closeAll} when the test class ends. */
  static synchronized Frame frame() {
    Photo photo = read();
    OPEN.add(photo);
    return photo.frame();
  }

  static synchronized void closeAll() {
    OPEN.forEach(Photo::close);
    OPEN.clear();
  }

  private static Photo read() {
    return new PhotoReader().read(Path.of("sample-images/base-station-video-mixed.jpg"));
  }

  static ScoredPhoto score(Opinions opinions) {
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    Settings settings =
        new Settings(
            CONNECTOR.rowSpec(0, OptionalInt.empty()), 2, limits.id(), Optional.empty(), opinions);
    try (Photo photo = read()) {
      return new PhotoScorer(settings, limits).score(photo);
    }
  }

  public static PageContext context(String language, LengthUnit unit) {
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    return new PageContext(
        "test",
        new StatedLimits(limits.id(), true, limits.name(), limits.notes()),
        Messages.of(language),
        unit,
        Optional.of(CONNECTOR));
  }

  /** Pins 5 to 8 with one verdict each, so that all four are on the page. */
  static ScoredPhoto withAllVerdicts() {
    List<GradedJoint> joints = new ArrayList<>(SCORED.joints());
    set(joints, 5, Verdict.ACCEPTABLE, List.of());
    set(
        joints,
        6,
        Verdict.PROCESS_INDICATOR,
        List.of(finding(FindingKind.EXCESS, Verdict.PROCESS_INDICATOR, 6)));
    set(
        joints,
        7,
        Verdict.UNJUDGED,
        List.of(),
        new Doubt.Possible(
            FindingKind.OPEN, 0, 0.4, OptionalDouble.empty(), OptionalDouble.empty()));
    set(joints, 8, Verdict.DEFECT, List.of(finding(FindingKind.BRIDGE, Verdict.DEFECT, 8, 9)));
    return with(SCORED.photo(), joints);
  }

  static ScoredPhoto named(String file) {
    PhotoInfo photo = SCORED.photo();
    return with(
        new PhotoInfo(
            file,
            photo.sha256(),
            photo.widthPx(),
            photo.heightPx(),
            photo.format(),
            photo.bitsPerChannel(),
            photo.exifOrientation(),
            photo.takenAt()),
        SCORED.joints());
  }

  public static Finding finding(FindingKind kind, Verdict verdict, Integer... pins) {
    return new Finding(
        kind,
        List.of(pins),
        verdict,
        0.9,
        OptionalDouble.empty(),
        Optional.empty(),
        List.of(),
        "clause",
        "");
  }

  public static void set(
      List<GradedJoint> joints,
      int pin,
      Verdict verdict,
      List<Finding> findings,
      Doubt... because) {
    GradedJoint old = joints.get(pin - 1);
    joints.set(
        pin - 1,
        new GradedJoint(old.joint(), verdict, findings, old.checks(), List.of(because), List.of()));
  }

  static ScoredPhoto with(PhotoInfo photo, List<GradedJoint> joints) {
    return new ScoredPhoto(
        photo,
        SCORED.settings(),
        SCORED.row(),
        SCORED.view(),
        joints,
        Verdict.DEFECT,
        SCORED.rowNotes(),
        SCORED.fitness(),
        SCORED.notVisible(),
        SCORED.cautions());
  }
}
