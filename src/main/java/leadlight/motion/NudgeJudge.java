package leadlight.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.Nudge;
import leadlight.model.result.Nudge.Motion;
import leadlight.model.result.Nudge.Moved;
import leadlight.model.result.Nudge.Pushed;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.register.Matched;
import leadlight.register.Overlay;
import leadlight.register.RegisterTuning;
import leadlight.register.Registrar;
import leadlight.register.Robust;
import leadlight.vision.Frame;

/** Reads photos of pushed leads against the photo at rest. */
public final class NudgeJudge {

  private static final double UM_PER_MM = 1000;

  private final NudgeTuning tuning = NudgeTuning.builtIn();
  private final RegisterTuning laying;
  private final Registrar registrar;
  private final List<Foot> feet;
  private final double pitchPx;
  private final double umPerPx;

  /**
   * Takes the photo at rest; the frame stays open and unchanged.
   *
   * @param row its row
   */
  public NudgeJudge(Frame rest, RowOutcome.Found row, RowSpec spec) {
    this.laying = RegisterTuning.builtIn();
    this.registrar = new Registrar(laying, rest, row, spec.pitchMm());
    this.pitchPx = registrar.finest().pxPerMm() * spec.pitchMm();
    this.umPerPx = UM_PER_MM / registrar.finest().pxPerMm();
    double width = spec.leadWidthMm().orElse(tuning.usualWidthPitch().value() * spec.pitchMm());
    Homography toMm = row.mmToPx().inverse();
    this.feet =
        row.leads().stream()
            .sorted(Comparator.comparingInt(Lead::pin))
            .map(lead -> Foot.of(lead, toMm, registrar.finest(), width))
            .toList();
  }

  /**
   * One photo read.
   *
   * @param pushed what is said of the photo
   * @param lead what the touched lead did, if one is touched
   */
  public record Read(Pushed pushed, Optional<Moved> lead) {}

  /** Reads a photo in which a lead is pushed. */
  public Read read(Frame photo, String file, String sha256) {
    Overlay overlay = registrar.overlay(photo);
    if (overlay.likeness() < tuning.leastLikeness().value()
        || overlay.ownLikeness() < tuning.leastOwn().value()) {
      double least = Math.min(overlay.likeness(), overlay.ownLikeness());
      return refused(file, sha256, new NoteOfPhoto.OtherRow(Math.max(0, least)));
    }
    Overlay alike = Matched.of(overlay, laying);
    List<Overlay> looks = List.of(alike, Matched.of(registrar.colour(photo, overlay), laying));
    Optional<Pick> pick = PickFinder.find(looks, feet, tuning, pitchPx);
    Optional<Foot> touched = pick.flatMap(this::touched);
    if (touched.isEmpty()) {
      return refused(file, sha256, new NoteOfPhoto.NoPick());
    }
    return judged(alike, pick.orElseThrow(), touched.get(), file, sha256);
  }

  private static Read refused(String file, String sha256, Note why) {
    return new Read(
        new Pushed(file, sha256, OptionalInt.empty(), Optional.empty(), Optional.of(why)),
        Optional.empty());
  }

  /** The lead on the side that the shaft leans away from, a lead's half width from the tip. */
  private Optional<Foot> touched(Pick pick) {
    return feet.stream()
        .filter(foot -> offTip(foot, pick) <= tuning.notTouchedPitch().value())
        .min(Comparator.comparingDouble(foot -> offTip(foot, pick)));
  }

  private double offTip(Foot foot, Pick pick) {
    double from = (pick.tipX() - foot.middle(pick.tipY())) / pitchPx;
    return Math.abs(from * Math.signum(pick.lean()) - tuning.offTipPitch().value());
  }

  private Read judged(Overlay overlay, Pick pick, Foot touched, String file, String sha256) {
    ShiftMeter meter = new ShiftMeter(overlay, tuning, pitchPx, pick.cover());
    Stillness still = stillness(meter, touched);
    PointPx tip = registrar.gridToPhoto().map(pick.tipX(), pick.tipY());
    if (still.moved(tuning)) {
      Note why = new NoteOfPhoto.RowMoved(Math.abs(still.medianUm));
      return new Read(
          new Pushed(
              file, sha256, OptionalInt.of(touched.pin()), Optional.of(tip), Optional.of(why)),
          Optional.of(
              lead(touched, Motion.CANNOT_TELL, 0, still.spreadUm, file, Optional.of(why))));
    }
    int towards = pick.lean() > 0 ? -1 : 1;
    Moved moved = decided(touched, meter.of(touched, towards), towards, still, file);
    Optional<Foot> other =
        moved.motion() == Motion.FIRM
            ? otherThatMayYield(meter, touched, towards, still, file)
            : Optional.empty();
    return new Read(
        new Pushed(file, sha256, OptionalInt.of(touched.pin()), Optional.of(tip), Optional.empty()),
        Optional.of(other.map(foot -> unsure(touched, moved, foot, file)).orElse(moved)));
  }

  private Moved unsure(Foot touched, Moved moved, Foot other, String file) {
    return lead(
        touched,
        Motion.CANNOT_TELL,
        moved.shiftUm().orElseThrow(),
        moved.uUm().orElseThrow(),
        file,
        Optional.of(new NoteOfPhoto.OtherMayYield(other.pin())));
  }

  /**
   * The lead on the pick's other side, if it may give way to it. On which side of its tip a pick
   * pushes is told by how it leans alone; if it was the other lead that was pushed, nothing is
   * known of the one that held still.
   */
  private Optional<Foot> otherThatMayYield(
      ShiftMeter meter, Foot touched, int towards, Stillness still, String file) {
    return feet.stream()
        .filter(foot -> beyondPick(foot, touched, towards))
        .filter(
            foot ->
                decided(foot, meter.of(foot, -towards), -towards, still, file).motion()
                    != Motion.FIRM)
        .findFirst();
  }

  /** Whether a lead is the next one on the side that the pick comes from. */
  private boolean beyondPick(Foot foot, Foot touched, int towards) {
    double apart = (foot.middle(foot.toeY()) - touched.middle(touched.toeY())) * -towards / pitchPx;
    return apart > 0 && apart < 1 + tuning.notTouchedPitch().value();
  }

  private Moved decided(
      Foot foot, ShiftMeter.Shift shift, int towards, Stillness still, String file) {
    double um = shift.toePx() * umPerPx - still.medianUm;
    double pick = tuning.fromPickPitch().value() * pitchPx * umPerPx;
    double far = tuning.relative().value() * um;
    double apart = shift.apartPx() * umPerPx / 2;
    double bound = shift.boundPx() * umPerPx;
    double u =
        Math.sqrt(
            still.spreadUm * still.spreadUm
                + pick * pick
                + far * far
                + apart * apart
                + bound * bound);
    double along = um * towards;
    double sided = tuning.sided().value() * u;
    boolean moves =
        along - sided > tuning.loosenedFromUm().value()
            && shift.ratio() < tuning.clearlyMoved().value();
    boolean firm =
        Math.abs(um) + sided < tuning.firmToUm().value()
            && shift.ratio() > tuning.clearlyFirm().value();
    if (moves || firm) {
      return lead(foot, moves ? Motion.MOVES : Motion.FIRM, um, u, file, Optional.empty());
    }
    boolean unclear = shift.ratio() >= tuning.clearlyMoved().value();
    Note why =
        unclear ? new NoteOfPhoto.MotionUnclear() : new NoteOfPhoto.MotionBetween(Math.abs(um), u);
    return lead(foot, Motion.CANNOT_TELL, um, u, file, Optional.of(why));
  }

  private Moved lead(
      Foot foot, Motion motion, double um, double u, String file, Optional<Note> why) {
    return new Moved(
        foot.pin(),
        motion,
        OptionalDouble.of(um),
        OptionalDouble.of(u),
        OptionalDouble.of(2 * tuning.sided().value() * u),
        Optional.of(file),
        why);
  }

  /** How still the other leads lie: where the pair of photos sets its own limit. */
  private record Stillness(double medianUm, double spreadUm, int leads) {

    /** Whether the untouched leads moved together, by more than a soldered lead yields. */
    boolean moved(NudgeTuning tuning) {
      double u = spreadUm / Math.sqrt(Math.max(1, leads));
      return Math.abs(medianUm) - tuning.sided().value() * u > tuning.loosenedFromUm().value();
    }
  }

  private Stillness stillness(ShiftMeter meter, Foot touched) {
    double[] shifts =
        feet.stream()
            .filter(foot -> Math.abs(foot.pin() - touched.pin()) > 1)
            .flatMapToDouble(foot -> meter.still(foot).stream())
            .map(px -> px * umPerPx)
            .sorted()
            .toArray();
    if (shifts.length < 2) {
      // One foot has no spread: how still the pair is, is not known.
      return new Stillness(0, tuning.firmToUm().value(), 0);
    }
    double median = shifts[shifts.length / 2];
    double[] sizes = Arrays.stream(shifts).map(s -> Math.abs(s - median)).sorted().toArray();
    return new Stillness(median, Robust.spread(sizes[sizes.length / 2]), shifts.length);
  }

  /**
   * What several photos say together. Of photos that show one lead touched, the one that shows it
   * move counts, then the one that shows it firm, then any.
   */
  public Nudge together(List<Read> reads) {
    List<Moved> leads = new ArrayList<>();
    for (Foot foot : feet) {
      leads.add(
          reads.stream()
              .flatMap(read -> read.lead().stream())
              .filter(moved -> moved.pin() == foot.pin())
              .min(
                  Comparator.comparing(Moved::motion)
                      .thenComparing(moved -> moved.uUm().orElse(Double.MAX_VALUE)))
              .orElseGet(() -> Moved.notTouched(foot.pin())));
    }
    return new Nudge(reads.stream().map(Read::pushed).toList(), leads);
  }
}
