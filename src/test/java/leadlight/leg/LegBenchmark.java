package leadlight.leg;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.leg.find.LegRequest;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.model.result.GradedLeg;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Counts what is said of anchor legs whose truth is known: {@code mvn test -Dtest=LegBenchmark
 * -Dlegs=FOLDER}. Figures are kept in {@code docs/legs.md}.
 */
@EnabledIfSystemProperty(named = "legs", matches = ".+")
class LegBenchmark {

  private final Map<String, Integer> counts = new TreeMap<>();

  @Test
  void verdictsAgainstTruth() {
    LegScorer scorer = new LegScorer(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2);
    for (LegTruth truth : LegTruth.of(Path.of(System.getProperty("legs")))) {
      try (Photo photo = new PhotoReader().read(truth.photo())) {
        List<GradedLeg> legs = scorer.score(photo.frame(), truth.byConnector());
        count(truth, legs);
      }
    }
    counts.forEach((what, count) -> System.out.println(what + ": " + count));
  }

  /** What is said of component sides that are told to be solder sides. */
  @Test
  void wrongSidesAgainstTruth() {
    LegScorer scorer = new LegScorer(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2);
    for (LegTruth truth : LegTruth.of(Path.of(System.getProperty("legs")))) {
      if (truth.side() == BoardSide.SOLDER) {
        continue;
      }
      LegTruth told = new LegTruth(truth.photo(), BoardSide.SOLDER, truth.part(), truth.json());
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

  private void count(LegTruth truth, List<GradedLeg> legs) {
    String side = truth.side().id() + " side, ";
    int right = 0;
    for (LegTruth.TrueLeg leg : truth.legs()) {
      Optional<GradedLeg> found = truth.at(leg, legs, GradedLeg::centre);
      add(side + "legs " + (found.isPresent() ? "found" : "not found"));
      if (found.isEmpty()) {
        continue;
      }
      right++;
      GradedLeg said = found.get();
      if (said.number().isPresent()) {
        add(side + "numbers " + (said.number().getAsInt() == leg.number() ? "right" : "wrong"));
      } else {
        add(side + "numbers not told");
      }
      if (leg.cut()) {
        continue;
      }
      add(side + "truly " + leg.verdict() + ", said " + said.verdict().id());
      double off = Math.abs(said.wetted().value() - leg.wettedDeg());
      add(side + "wetted degrees " + (off <= 20 ? "within" : "beyond") + " 20");
      add(side + "wetted degrees " + (off <= 2 * said.wetted().u() ? "within" : "beyond") + " 2 u");
      if (leg.verdict().equals("defect") && said.verdict() == Verdict.ACCEPTABLE) {
        System.out.println("passed: " + truth.photo().getFileName() + " " + leg);
      }
    }
    for (int i = right; i < legs.size(); i++) {
      add(side + "legs where there are none");
    }
  }
}
