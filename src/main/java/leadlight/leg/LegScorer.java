package leadlight.leg;

import java.util.List;
import java.util.Optional;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.leg.find.BoardAround;
import leadlight.leg.find.FoundLeg;
import leadlight.leg.find.LegFinder;
import leadlight.leg.find.LegRequest;
import leadlight.leg.find.LegTuning;
import leadlight.leg.measure.LegJudgement;
import leadlight.leg.measure.LegMeter;
import leadlight.leg.measure.PartingTuning;
import leadlight.model.BoardSide;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.DoubtOfLeg;
import leadlight.model.result.GradedLeg;
import leadlight.vision.Frame;

/** From a photo to judged anchor legs. Safe for threads. */
public final class LegScorer {

  private final LegTuning tuning = LegTuning.builtIn();
  private final LegJudgement judgement = LegJudgement.builtIn();
  private final PartingTuning parting = PartingTuning.builtIn();
  private final AcceptanceSet limits;
  private final int productClass;

  /**
   * Takes the limits and the class.
   *
   * @param productClass 1, 2 or 3
   */
  public LegScorer(AcceptanceSet limits, int productClass) {
    this.limits = limits;
    this.productClass = productClass;
  }

  /** The legs that were found, in the order of their numbers; none if none shows. */
  public List<GradedLeg> score(Frame frame, LegRequest request) {
    LegMeter meter = new LegMeter(judgement, parting);
    List<FoundLeg> legs = new LegFinder(frame, tuning, request.side()).find(request);
    Optional<Doubt> noSide =
        request.side() == BoardSide.COMPONENT
            ? Optional.of(new DoubtOfLeg.ComponentSide())
            : BoardAround.noSolderSide(frame, legs);
    LegGrader grader =
        new LegGrader(
            limits,
            productClass,
            request.side(),
            noSide,
            judgement,
            parting,
            frame.widthPx(),
            frame.heightPx());
    return legs.stream().map(leg -> grader.grade(leg, meter.measure(frame, leg))).toList();
  }
}
