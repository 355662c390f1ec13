package leadlight.leg;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.leg.find.FoundLeg;
import leadlight.leg.find.LegFinder;
import leadlight.leg.find.LegRequest;
import leadlight.leg.find.LegTuning;
import leadlight.leg.read.LegReader;
import leadlight.model.BoardSide;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.DoubtOfLeg;
import leadlight.model.result.GradedLeg;
import leadlight.vision.Frame;

/** From a photo to judged anchor legs. Safe for threads. */
public final class LegScorer {

  private final LegTuning tuning = LegTuning.builtIn();
  private final LegJudging judging = LegJudging.builtIn();
  private final LegReader reader = LegReader.builtIn();
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
    List<FoundLeg> legs = new LegFinder(frame, tuning, request.side()).find(request);
    List<LegReader.Reading> read = legs.stream().map(leg -> reader.read(frame, leg)).toList();
    LegGrader grader =
        new LegGrader(
            limits,
            productClass,
            request.side(),
            otherSide(request.side(), read),
            judging,
            frame.widthPx(),
            frame.heightPx());
    return IntStream.range(0, legs.size())
        .mapToObj(i -> grader.grade(legs.get(i), read.get(i)))
        .toList();
  }

  /** Why a photo that is said to show the solder side is not taken for one. */
  private Optional<Doubt> otherSide(BoardSide told, List<LegReader.Reading> read) {
    double chance = read.stream().mapToDouble(LegReader.Reading::componentSide).average().orElse(0);
    return told == BoardSide.SOLDER && chance >= judging.componentFrom().value()
        ? Optional.of(new DoubtOfLeg.ShellInView(chance))
        : Optional.empty();
  }
}
