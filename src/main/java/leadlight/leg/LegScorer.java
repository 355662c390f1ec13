package leadlight.leg;

import java.util.List;
import java.util.Optional;
import leadlight.grade.AcceptanceSet;
import leadlight.model.BoardSide;
import leadlight.model.Doubt;
import leadlight.model.GradedLeg;
import leadlight.vision.Frame;

/** From a photo to judged anchor legs. Safe for threads. */
public final class LegScorer {

  private final LegTuning tuning = LegTuning.builtIn();
  private final LegJudgement judgement = LegJudgement.builtIn();
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
    LegMeter meter = new LegMeter(judgement);
    List<FoundLeg> legs = new LegFinder(frame, tuning, request.side()).find(request);
    Optional<Doubt> noSide =
        request.side() == BoardSide.COMPONENT
            ? Optional.of(new Doubt.ComponentSide())
            : BoardAround.noSolderSide(frame, legs);
    LegGrader grader =
        new LegGrader(
            limits,
            productClass,
            request.side(),
            noSide,
            judgement,
            frame.widthPx(),
            frame.heightPx());
    return legs.stream().map(leg -> grader.grade(leg, meter.measure(frame, leg))).toList();
  }
}
