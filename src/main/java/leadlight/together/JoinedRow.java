package leadlight.together;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.grade.Grader;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.FindingKind;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.model.joint.Familiarity;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.Besides;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.register.Overlay;
import leadlight.register.RegisterTuning;
import leadlight.register.Registrar;
import leadlight.vision.Frame;

/**
 * Joins photos of one row into the first of them: each is registered pin by pin and must show what
 * is this row's own, else nothing is taken from it.
 */
public final class JoinedRow {

  private final SameRow join = new SameRow();
  private final JoinTuning tuning = JoinTuning.builtIn();
  private final AcceptanceSet limits;

  /** Takes the limits to judge by. */
  public JoinedRow(AcceptanceSet limits) {
    this.limits = limits;
  }

  /**
   * A photo with what it showed alone.
   *
   * @param picture the upright picture, stays open
   * @param scored its result
   */
  public record View(Frame picture, ScoredPhoto scored) {}

  /**
   * The result.
   *
   * @param scored the first photo's report with all of them in view
   * @param besides which photos, and which joint is seen in which
   */
  public record Result(ScoredPhoto scored, Besides besides) {}

  /**
   * Joins; the first view's row must have been found for anything to be joined.
   *
   * @throws UserError if a photo is given twice: it says nothing that it did not say before, and
   *     would count as a second opinion
   */
  public Result of(List<View> views) {
    SamePhoto.refuse(views.stream().map(view -> view.scored().photo()).toList());
    ScoredPhoto first = views.get(0).scored();
    List<Optional<Note>> refused = refused(views);
    List<Besides.Other> others = new ArrayList<>();
    List<ScoredPhoto> taken = new ArrayList<>(List.of(first));
    for (int i = 1; i < views.size(); i++) {
      ScoredPhoto other = views.get(i).scored();
      others.add(
          new Besides.Other(
              other.photo().file(), other.photo().sha256(), Besides.Role.SAME_ROW, refused.get(i)));
      if (refused.get(i).isEmpty()) {
        taken.add(other);
      }
    }
    List<List<String>> seenIn = first.joints().stream().map(j -> seenIn(taken, j.pin())).toList();
    return new Result(
        taken.size() == 1 ? first : joined(taken), new Besides(others, seenIn, List.of()));
  }

  /**
   * Why each view is refused, if it is, in the order given; the first never is. One that cannot be
   * told to be the first view's row may be told to be that of another which is: a ring hides what a
   * coaxial lamp shows, and a side lamp shows both.
   */
  private List<Optional<Note>> refused(List<View> views) {
    List<Optional<Note>> refused = new ArrayList<>(List.of(Optional.empty()));
    List<View> same = new ArrayList<>(List.of(views.get(0)));
    for (View view : views.subList(1, views.size())) {
      refused.add(refused(views.get(0), view));
    }
    for (int at = 0; at < same.size(); at++) {
      for (int i = 1; i < views.size(); i++) {
        if (at > 0 && unlike(refused.get(i)) && refused(same.get(at), views.get(i)).isEmpty()) {
          refused.set(i, Optional.empty());
        }
        if (refused.get(i).isEmpty() && !same.contains(views.get(i))) {
          same.add(views.get(i));
        }
      }
    }
    return refused;
  }

  /** Whether a view is refused for want of likeness, which another view may have. */
  private static boolean unlike(Optional<Note> refused) {
    return refused.stream().anyMatch(NoteOfPhoto.OtherRow.class::isInstance);
  }

  private static List<String> seenIn(List<ScoredPhoto> taken, int pin) {
    return taken.stream()
        .filter(p -> joint(p, pin).unfitBecause().isEmpty())
        .map(p -> p.photo().file())
        .toList();
  }

  private static Joint joint(ScoredPhoto photo, int pin) {
    return photo.joints().get(pin - 1).joint();
  }

  /**
   * Why a photo is not joined: no row in it, another row, one that is counted otherwise, or a make
   * on which its chances were never shown to be right.
   */
  private Optional<Note> refused(View first, View other) {
    if (first.scored().row() instanceof RowOutcome.NotFound none) {
      return Optional.of(none.reason());
    }
    if (other.scored().row() instanceof RowOutcome.NotFound none) {
      return Optional.of(none.reason());
    }
    if (unfamiliar(other.scored()) && !unfamiliar(first.scored())) {
      return Optional.of(new NoteOfRow.Unfamiliar());
    }
    RowOutcome.Found row = (RowOutcome.Found) first.scored().row();
    RowOutcome.Found there = (RowOutcome.Found) other.scored().row();
    Overlay overlay =
        new Registrar(
                RegisterTuning.builtIn(),
                first.picture(),
                row,
                first.scored().settings().row().pitchMm())
            .overlay(other.picture(), there.mmToPx());
    boolean same =
        overlay.ownLikeness() >= tuning.leastOwn().value()
            && overlay.margin() >= tuning.leastMargin().value()
            && overlay.margin() >= tuning.marginOfOwn().value() * overlay.ownLikeness()
            && SamePins.are(overlay, row, there);
    return same
        ? Optional.empty()
        : Optional.of(new NoteOfPhoto.OtherRow(Math.max(0, overlay.ownLikeness())));
  }

  private ScoredPhoto joined(List<ScoredPhoto> taken) {
    ScoredPhoto first = taken.get(0);
    Settings settings = first.settings();
    List<Joint> joints = new ArrayList<>();
    for (GradedJoint graded : first.joints()) {
      joints.add(join.joined(taken.stream().map(p -> joint(p, graded.pin())).toList()));
    }
    Grader grader = new Grader(limits, settings.productClass(), settings.opinions());
    Grader.GradedRow together =
        grader.grade(
            settings.row(), joints, SameRow.make(taken.stream().map(JoinedRow::make).toList()));
    List<GradedJoint> graded = contradicted(together.joints(), taken);
    return new ScoredPhoto(
        first.photo(),
        settings,
        first.row(),
        first.view(),
        graded,
        graded.stream().map(GradedJoint::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED),
        grader.notes(together.notes(), graded),
        first.fitness(),
        first.notVisible(),
        first.cautions());
  }

  /**
   * Joints that one photo alone shows sound and another faulty are left to the bench: joined
   * chances would settle them one way or the other, and each way several photos were worse than
   * one.
   */
  private static List<GradedJoint> contradicted(
      List<GradedJoint> joints, List<ScoredPhoto> photos) {
    return joints.stream()
        .map(joint -> differ(joint, photos).map(d -> unjudged(joint, d)).orElse(joint))
        .toList();
  }

  private static GradedJoint unjudged(GradedJoint joint, Doubt doubt) {
    return new GradedJoint(
        joint.joint(), Verdict.UNJUDGED, List.of(), joint.checks(), List.of(doubt), List.of());
  }

  private static Optional<Doubt> differ(GradedJoint joint, List<ScoredPhoto> photos) {
    int pin = joint.pin();
    Optional<ScoredPhoto> sound = first(photos, pin, Verdict.ACCEPTABLE, Verdict.PROCESS_INDICATOR);
    return first(photos, pin, Verdict.DEFECT)
        .flatMap(
            bad -> {
              FindingKind kind = bad.joints().get(pin - 1).findings().get(0).kind();
              return sound.isPresent()
                  ? Optional.of(
                      new Doubt.PhotosDiffer(sound.get().photo().file(), kind, bad.photo().file()))
                  : unlessCalled(joint, kind);
            });
  }

  /** What one photo calls no others make good by seeing nothing surely. */
  private static Optional<Doubt> unlessCalled(GradedJoint joint, FindingKind kind) {
    return joint.verdict() == Verdict.DEFECT || joint.verdict() == Verdict.UNJUDGED
        ? Optional.empty()
        : Optional.of(new Doubt.ToSettle(kind));
  }

  private static Optional<ScoredPhoto> first(
      List<ScoredPhoto> photos, int pin, Verdict... verdicts) {
    return photos.stream()
        .filter(photo -> List.of(verdicts).contains(photo.joints().get(pin - 1).verdict()))
        .findFirst();
  }

  private static boolean unfamiliar(ScoredPhoto photo) {
    return photo.rowNotes().stream().anyMatch(NoteOfRow.Unfamiliar.class::isInstance);
  }

  /** How familiar a photo was, as its notes say. */
  static Familiarity make(ScoredPhoto photo) {
    return new Familiarity(
        unfamiliar(photo) ? 1 : 0, photo.settings().opinions() != Opinions.MEASURES);
  }
}
