package leadlight.joint;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import leadlight.joint.cut.TypicalJoint;
import leadlight.joint.dirt.DirtLimits;
import leadlight.joint.judge.DirtEvidence;
import leadlight.joint.judge.EvidenceMaker;
import leadlight.joint.judge.FitnessLimits;
import leadlight.joint.judge.JointFitness;
import leadlight.joint.judge.Judgement;
import leadlight.joint.judge.MetalAcrossRule;
import leadlight.joint.judge.PlacementEvidence;
import leadlight.joint.place.PlacedLead;
import leadlight.joint.place.PlacementModel;
import leadlight.joint.place.StraightRow;
import leadlight.joint.signal.Covers;
import leadlight.joint.signal.DirtSignals;
import leadlight.joint.signal.RowSignals;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Evidence;
import leadlight.model.joint.Joint;
import leadlight.model.picture.RowPictures;
import leadlight.model.picture.RowView;
import leadlight.model.remark.Doubt;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.numeric.Logistic;
import leadlight.vision.Frame;

/**
 * Measures each joint of a found row: sizes with uncertainties, what its picture gives, and how
 * strongly the photo speaks for each finding. Stateless and safe for several threads.
 */
public final class JointMeter {

  /** From here on an answer is rather yes than no. */
  private static final double RATHER_YES = 0.5;

  private final Judgement judgement = Judgement.builtIn();
  private final MetalAcrossRule metal = MetalAcrossRule.builtIn();
  private final FitnessLimits limits = FitnessLimits.builtIn();
  private final DirtLimits dirtLimits = DirtLimits.builtIn();
  private final PlacementModel placementModel = PlacementModel.builtIn();

  /**
   * A measured row.
   *
   * @param joints the joints, pin 1 first
   * @param unfamiliar chance that the photo is of a make on which telling soldered from set down
   *     was never shown to work
   * @param view what people are shown of them
   */
  public record MeasuredRow(List<Joint> joints, double unfamiliar, RowView view) {

    /** Copies the list. */
    public MeasuredRow {
      joints = List.copyOf(joints);
    }
  }

  /** Cuts the joints out of the photo, which must stay open while they are measured. */
  public CutRow cut(Frame frame, RowSpec spec, RowOutcome.Found row) {
    return new CutRow(frame, spec, row);
  }

  /** Joints cut out of a photo, to be read and measured: one without the other, or both at once. */
  public final class CutRow {

    private final Frame frame;
    private final RowSpec spec;
    private final RowOutcome.Found row;
    private final StraightRow straight;
    private final TypicalJoint typical;

    private CutRow(Frame frame, RowSpec spec, RowOutcome.Found row) {
      this.frame = frame;
      this.spec = spec;
      this.row = row;
      this.straight = StraightRow.of(frame, spec, row);
      this.typical = TypicalJoint.of(straight.levelled());
    }

    /** What the second reader looks at. */
    public RowPictures pictures() {
      return RowPicturesMaker.of(straight.levelled(), typical);
    }

    /** The row's dark level, 0 to 255. */
    public double dark() {
      return straight.light().dark();
    }

    /** The row's bright level, 0 to 255; above it where a flat photo has hardly any range. */
    public double bright() {
      return straight.light().dark() + straight.light().range();
    }

    /** Measures all joints. */
    public MeasuredRow measured() {
      RowSignals signals = signals();
      return new MeasuredRow(
          new JointJudge(frame, spec, signals).joints(),
          unfamiliar(signals),
          new RowViewMaker(signals).view());
    }

    /**
     * The numbers that judgement rests on, one map a joint, pin 1 first; the last joint has no gap
     * to a next pin, hence fewer entries. For fitting judgement data outside the program.
     */
    public List<Map<String, Double>> features() {
      return signals().flat();
    }

    private RowSignals signals() {
      return RowSignals.of(straight, typical, spec, row.leads(), placementModel);
    }
  }

  /** One photo, one make: its joints' log odds are averaged. */
  private double unfamiliar(RowSignals signals) {
    return Logistic.of(
        signals.joints().stream()
            .mapToDouble(joint -> judgement.unfamiliar().logOdds(joint))
            .average()
            .orElseThrow());
  }

  /** Judges each joint of a row on its own, given what the row has in common. */
  private final class JointJudge {

    private final Frame frame;
    private final RowSignals signals;
    private final List<PlacedLead> leads;
    private final List<Map<Measure, Quantity>> sizes = new ArrayList<>();
    private final EvidenceMaker solder;
    private final DirtEvidence dirt;
    private final PlacementEvidence placement;
    private final Covers covers;
    private final List<JointFitness> fitness;

    JointJudge(Frame frame, RowSpec spec, RowSignals signals) {
      this.frame = frame;
      this.signals = signals;
      this.leads = signals.placed().leads();
      SizeMeter meter = new SizeMeter(spec, signals.placed().geometry(), placementModel.shifts());
      for (int i = 0; i < leads.size(); i++) {
        sizes.add(meter.measure(signals.patches().get(i), leads.get(i)));
      }
      this.solder = new EvidenceMaker(judgement, metal, signals);
      this.dirt = new DirtEvidence(DirtSignals.of(signals, dirtLimits), dirtLimits);
      this.placement =
          new PlacementEvidence(dirtLimits.placement(), dirtLimits.freeTo().value(), sizes);
      this.covers = new Covers(signals.gaps(), limits.coveredFrom().value());
      this.fitness =
          signals.patches().stream()
              .parallel()
              .map(patch -> JointFitness.of(frame, patch, signals.geometry(), limits))
              .toList();
    }

    List<Joint> joints() {
      return IntStream.range(0, leads.size()).parallel().mapToObj(this::joint).toList();
    }

    private Joint joint(int i) {
      JointFitness fit = fitness.get(i);
      Optional<Doubt> unfit =
          covers.covers(i)
              ? Optional.of(new Doubt.Covered())
              : fit.unfitBecause(JointFitness.focusPx(fitness, i, limits), limits);
      Map<Measure, Quantity> size = sizes.get(i);
      Chances chances = solder.chances(i, share -> PlacementEvidence.over(share, size));
      List<Evidence> evidence = new ArrayList<>(solder.of(i, chances));
      if (unfit.isEmpty()) {
        List<Evidence> others = List.copyOf(evidence);
        evidence.addAll(dirt.of(i, others));
        evidence.addAll(placement.of(size, others));
      }
      return new Joint(
          placed(leads.get(i).lead(), chances),
          measures(size, fit),
          evidence,
          unfit,
          Optional.of(chances.with(Question.BALL, DirtEvidence.ball(evidence))),
          Optional.empty());
    }
  }

  /** A lead that no fillet centres on its land is placed less surely. */
  private Lead placed(Lead lead, Chances chances) {
    boolean held = Math.max(chances.of(Question.MISSING), chances.lackingSolder()) < RATHER_YES;
    return held ? lead : lead.lessSureAcross(placementModel.shifts().lackWidens().value());
  }

  /** Sizes, and the fitness of the picture beside them. */
  private Map<Measure, Quantity> measures(Map<Measure, Quantity> sizes, JointFitness fitness) {
    Map<Measure, Quantity> all = new EnumMap<>(sizes);
    all.put(
        Measure.BURNT_OUT,
        new Quantity(fitness.burntShare(), fitness.uBurntShare(), Measure.BURNT_OUT.unit()));
    double uShare = limits.shareOfBlurDoubted().value();
    fitness
        .blurPx()
        .ifPresent(
            blur ->
                all.put(
                    Measure.EDGE_BLUR,
                    new Quantity(blur, uShare * blur, Measure.EDGE_BLUR.unit())));
    return all;
  }
}
