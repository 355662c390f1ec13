package leadlight.leg;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.leg.find.LegRequest;
import leadlight.model.BoardSide;
import leadlight.model.result.GradedLeg;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Counts what is said of the wrong side: {@code mvn test -Dtest=LegBenchmark -Dlegs=FOLDER}.
 * Figures are kept in {@code docs/legs.md}; those of the right side come from {@code trial --sets
 * legs}.
 */
@EnabledIfSystemProperty(named = "legs", matches = ".+")
class LegBenchmark {

  private final Map<String, Integer> counts = new TreeMap<>();

  /** What is said of component sides that are told to be solder sides. */
  @Test
  void wrongSidesAgainstTruth() {
    LegScorer scorer = new LegScorer(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2);
    for (LegTruth truth : LegTruth.of(Path.of(System.getProperty("legs")))) {
      if (truth.side() == BoardSide.SOLDER) {
        continue;
      }
      LegTruth told = truth.toldOf(truth.photo(), BoardSide.SOLDER);
      try (Photo photo = new PhotoReader().read(truth.photo())) {
        for (LegRequest request : List.of(told.byConnector(), told.bySize(0))) {
          List<GradedLeg> legs = scorer.score(photo.frame(), request);
          String start =
              "truly "
                  + truth.side().id()
                  + " side, told solder, "
                  + (request.pattern() ? "connector" : "sizes")
                  + ": ";
          add(start + (legs.isEmpty() ? "pictures without legs" : "pictures with legs"));
          legs.forEach(leg -> add(start + "legs said " + leg.verdict().id()));
          legs.stream()
              .flatMap(leg -> leg.doubts().stream())
              .forEach(doubt -> add(start + "doubt " + doubt.code()));
        }
      }
    }
    counts.forEach((what, count) -> System.out.println(what + ": " + count));
  }

  private void add(String what) {
    counts.merge(what, 1, Integer::sum);
  }
}
