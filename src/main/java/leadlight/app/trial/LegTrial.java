package leadlight.app.trial;

import java.nio.file.Path;
import java.util.List;
import leadlight.connector.ConnectorLibrary;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.leg.ConnectorLegs;
import leadlight.leg.LegScorer;
import leadlight.leg.find.LegRequest;
import leadlight.model.result.GradedLeg;
import leadlight.photo.Deadline;
import leadlight.photo.Photo;
import leadlight.pipeline.InOrder;
import leadlight.trial.sets.LegTally;
import leadlight.trial.truth.LegsTruth;
import leadlight.vision.Threads;

/**
 * Counts photos of anchor legs whose truth is known. Told, as a user would, are side and connector;
 * of a single leg its number and sizes.
 */
public final class LegTrial {

  /** The class that truth files speak of. */
  private static final int PRODUCT_CLASS = 2;

  private LegTrial() {}

  /** The table of a folder. */
  public static List<String> lines(Path folder, AcceptanceSet limits, int threads) {
    Threads.set(1);
    LegScorer scorer = new LegScorer(limits, PRODUCT_CLASS);
    LegTally tally = new LegTally();
    InOrder.each(
        LegsTruth.of(folder),
        threads,
        truth -> new Said(truth, said(truth, scorer)),
        said -> tally.add(said.truth, said.legs));
    return tally.lines();
  }

  private record Said(LegsTruth truth, List<GradedLeg> legs) {}

  private static List<GradedLeg> said(LegsTruth truth, LegScorer scorer) {
    try (Photo photo = new Deadline().read(truth.photo())) {
      return scorer.score(photo.frame(), request(truth));
    }
  }

  /** What to look for: the connector's legs, or a single one by number and sizes. */
  public static LegRequest request(LegsTruth truth) {
    if (truth.legs().size() == 1) {
      return new LegRequest(
          truth.side(),
          List.of(
              new LegRequest.Leg(
                  truth.legs().get(0).number(),
                  0,
                  0,
                  truth.landMm().widthMm(),
                  truth.landMm().heightMm(),
                  truth.holeMm().widthMm(),
                  truth.holeMm().heightMm())),
          false,
          LegRequest.LeadsAt.UNKNOWN);
    }
    return new LegRequest(
        truth.side(),
        ConnectorLegs.of(ConnectorLibrary.builtIn().find(truth.part())),
        true,
        LegRequest.LeadsAt.UNKNOWN);
  }
}
