package leadlight.joint;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.model.Evidence;
import leadlight.model.FaultChances;
import leadlight.model.Joint;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.RowOutcome;
import leadlight.model.RowPictures;
import leadlight.model.RowSpec;
import leadlight.model.RowView;
import leadlight.vision.Frame;

/**
 * Measures each joint of a found row: sizes with uncertainties, what its picture gives, and how
 * strongly the photo speaks for each finding. Stateless and safe for several threads.
 */
public final class JointMeter {

  private final Judgement judgement = Judgement.builtIn();
  private final FitnessLimits limits = FitnessLimits.builtIn();
  private final DirtLimits dirtLimits = DirtLimits.builtIn();
  private final PlacementModel placementModel = PlacementModel.builtIn();

  /**
   * A measured row.
   *
   * @param joints the joints, pin 1 first
   * @param view what people are shown of them
   * @param pictures what the second reader looks at
   */
  public record MeasuredRow(List<Joint> joints, RowView view, RowPictures pictures) {

    /** Copies the list. */
    public MeasuredRow {
      joints = List.copyOf(joints);
    }
  }

  /** Measures all joints. */
  public MeasuredRow measure(Frame frame, RowSpec spec, RowOutcome.Found row) {
    RowSignals signals = RowSignals.of(frame, spec, row, placementModel);
    return new MeasuredRow(
        joints(frame, spec, signals),
        new RowViewMaker(signals).view(),
        RowPicturesMaker.of(signals.straight().levelled(), signals.placed().typical()));
  }

  private List<Joint> joints(Frame frame, RowSpec spec, RowSignals signals) {
    EvidenceMaker solder = new EvidenceMaker(judgement, signals);
    DirtEvidence dirt = new DirtEvidence(DirtSignals.of(signals, dirtLimits), dirtLimits);
    List<PlacedLead> leads = signals.placed().leads();
    SizeMeter sizes = new SizeMeter(spec, signals.placed().geometry(), placementModel.shifts());
    List<Map<Measure, Quantity>> rowSizes = new ArrayList<>();
    for (int i = 0; i < leads.size(); i++) {
      rowSizes.add(sizes.measure(signals.patches().get(i), leads.get(i)));
    }
    PlacementEvidence placement =
        new PlacementEvidence(dirtLimits.placement(), dirtLimits.freeTo().value(), rowSizes);
    Covers covers = new Covers(signals.gaps(), limits.coveredFrom().value());
    List<Joint> joints = new ArrayList<>();
    for (int i = 0; i < signals.patches().size(); i++) {
      JointPatch patch = signals.patches().get(i);
      JointFitness fitness = JointFitness.of(frame, patch, signals.geometry(), limits);
      Optional<String> unfit = fitness.unfitBecause(limits);
      boolean covered = covers.covers(i);
      Map<Measure, Quantity> size = rowSizes.get(i);
      FaultChances chances = solder.chances(i, share -> PlacementEvidence.over(share, size));
      List<Evidence> evidence = new ArrayList<>(solder.of(i, chances, unfit.isEmpty()));
      if (unfit.isEmpty()) {
        List<Evidence> others = List.copyOf(evidence);
        evidence.addAll(dirt.of(i, others));
        evidence.addAll(placement.of(size, others));
      }
      joints.add(
          new Joint(
              leads.get(i).lead(),
              measures(size, fitness),
              covered ? List.of() : evidence,
              covered ? Optional.of(Covers.REASON) : unfit,
              Optional.of(chances.withBall(DirtEvidence.ball(evidence))),
              Optional.empty()));
    }
    return joints;
  }

  /** Sizes, and the fitness of the picture beside them. */
  private static Map<Measure, Quantity> measures(
      Map<Measure, Quantity> sizes, JointFitness fitness) {
    Map<Measure, Quantity> all = new EnumMap<>(sizes);
    all.put(Measure.BURNT_OUT, new Quantity(fitness.burntShare(), 0, Measure.BURNT_OUT.unit()));
    all.put(Measure.EDGE_BLUR, new Quantity(fitness.blurPx(), 0, Measure.EDGE_BLUR.unit()));
    return all;
  }

  /**
   * The numbers that judgement rests on, one map a joint, pin 1 first; the last joint has no gap to
   * a next pin, hence fewer entries. For fitting judgement data outside the program.
   */
  public List<Map<String, Double>> features(Frame frame, RowSpec spec, RowOutcome.Found row) {
    return RowSignals.of(frame, spec, row, placementModel).flat();
  }

  /** What the second reader looks at, without the measures. */
  public RowPictures pictures(Frame frame, RowSpec spec, RowOutcome.Found row) {
    return RowPicturesMaker.of(StraightRow.of(frame, spec, row).levelled());
  }
}
