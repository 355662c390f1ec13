package leadlight.leg;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.leg.find.LegRequest;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.model.remark.DoubtOfLeg;
import leadlight.model.result.GradedLeg;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.trial.truth.LegsTruth;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;

/** Four pictures of another renderer, fifteen legs; LegBenchmark counts the whole set. */
class LegScorerTest {

  private static final Path PICTURES = Path.of("src/test/resources/leadlight/leg");

  private static List<GradedLeg> scored(LegTruth truth, LegRequest request) {
    try (Photo photo = new PhotoReader().read(truth.photo())) {
      return new LegScorer(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2)
          .score(photo.frame(), request);
    }
  }

  private static LegTruth truth(String name) {
    return LegTruth.of(PICTURES).stream()
        .filter(it -> it.photo().toString().contains(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void legsLieWhereTheyAre() {
    for (LegTruth truth : LegTruth.of(PICTURES)) {
      List<GradedLeg> legs = scored(truth, truth.byConnector());
      assertThat(legs).as(truth.photo().toString()).hasSameSizeAs(truth.legs());
      for (LegsTruth.Leg leg : truth.legs()) {
        assertThat(truth.at(leg, legs, GradedLeg::centre))
            .as("%s %s", truth.photo(), leg)
            .isPresent();
      }
    }
  }

  /** A tenth of a millimetre is a quarter of the ring of copper; single outlines were 0.16 off. */
  @Test
  void landsAreLaidToATenthOfAMillimetre() {
    for (LegTruth truth : LegTruth.of(PICTURES)) {
      List<GradedLeg> legs = scored(truth, truth.byConnector());
      for (LegsTruth.Leg leg : truth.legs()) {
        GradedLeg said = truth.at(leg, legs, GradedLeg::centre).orElseThrow();
        assertThat(said.centre().distanceTo(leg.centre()) / truth.told().pxPerMm())
            .as("%s %s", truth.photo(), leg)
            .isLessThan(0.1);
      }
    }
  }

  @Test
  void aLegIsReadAlikeOnTwoThreads() {
    LegTruth truth = truth("legs-010");
    LegScorer scorer = new LegScorer(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2);
    List<List<GradedLeg>> both =
        java.util.stream.IntStream.range(0, 2)
            .parallel()
            .mapToObj(
                i -> {
                  try (Photo photo = new PhotoReader().read(truth.photo())) {
                    return scorer.score(photo.frame(), truth.byConnector());
                  }
                })
            .toList();
    assertThat(both.get(0)).isNotEmpty().isEqualTo(both.get(1));
  }

  @Test
  void legsOfAPartThatDiffersTurnedHalfRoundAreNumbered() {
    LegTruth truth = truth("legs-010");
    List<GradedLeg> legs = scored(truth, truth.byConnector());
    for (LegsTruth.Leg leg : truth.legs()) {
      assertThat(truth.at(leg, legs, GradedLeg::centre).orElseThrow().number())
          .hasValue(leg.number());
    }
  }

  @Test
  void noFaultyLegIsCalledGoodAndNoGoodOneFaulty() {
    int called = 0;
    for (LegTruth truth : LegTruth.of(PICTURES)) {
      List<GradedLeg> legs = scored(truth, truth.byConnector());
      for (LegsTruth.Leg leg : truth.legs()) {
        Verdict verdict = truth.at(leg, legs, GradedLeg::centre).orElseThrow().verdict();
        if (leg.class2().equals("defect")) {
          assertThat(verdict).as("%s %s", truth.photo(), leg).isNotEqualTo(Verdict.ACCEPTABLE);
          called += verdict == Verdict.DEFECT ? 1 : 0;
        } else if (leg.class2().equals("acceptable")) {
          assertThat(verdict).as("%s %s", truth.photo(), leg).isNotEqualTo(Verdict.DEFECT);
        }
      }
    }
    assertThat(called).as("faulty legs called").isGreaterThanOrEqualTo(2);
  }

  @Test
  void fromTheComponentSideNothingIsVouchedFor() {
    LegTruth truth = truth("legs-040");
    assertThat(truth.side()).isEqualTo(BoardSide.COMPONENT);
    assertThat(scored(truth, truth.byConnector()))
        .allSatisfy(leg -> assertThat(leg.verdict()).isNotEqualTo(Verdict.ACCEPTABLE));
  }

  @Test
  void aPhotoOfTheComponentSideIsNotJudgedAsSolderSide() {
    LegTruth truth = truth("legs-040");
    LegTruth told = truth.toldOf(truth.photo(), BoardSide.SOLDER);
    List<GradedLeg> legs = scored(told, told.bySize(0));
    assertThat(legs)
        .isNotEmpty()
        .allSatisfy(leg -> assertThat(leg.verdict()).isEqualTo(Verdict.UNJUDGED))
        .anySatisfy(
            leg -> assertThat(leg.doubts().get(0)).isInstanceOf(DoubtOfLeg.ShellInView.class));
  }

  @Test
  void aPhotoOfARowShowsNoLegs() {
    Path row =
        Path.of("sample-images").toFile().listFiles((d, n) -> n.endsWith(".jpg"))[0].toPath();
    LegTruth legs = truth("legs-010");
    LegTruth other = legs.toldOf(row, BoardSide.SOLDER);
    assertThat(scored(other, legs.byConnector())).isEmpty();
  }

  @Test
  void limitsThatSayNothingOfLegsVouchForNone() {
    LegTruth truth = truth("legs-023");
    try (Photo photo = new PhotoReader().read(truth.photo())) {
      assertThat(
              new LegScorer(AcceptanceSet.load("nasa-8739-2"), 2)
                  .score(photo.frame(), truth.byConnector()))
          .hasSize(4)
          .allSatisfy(leg -> assertThat(leg.doubts()).contains(new DoubtOfLeg.NoLegLimit()));
    }
  }

  @Test
  void aLandThatTheFrameCutsIsNotJudged() {
    LegTruth truth = truth("legs-010");
    try (Photo photo = new PhotoReader().read(truth.photo());
        Frame cut =
            photo.frame().cropped(0, 0, photo.frame().widthPx() - 70, photo.frame().heightPx())) {
      assertThat(
              new LegScorer(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2)
                  .score(cut, truth.byConnector()))
          .filteredOn(leg -> leg.centre().x() > cut.widthPx() - 30)
          .isNotEmpty()
          .allSatisfy(leg -> assertThat(leg.doubts()).containsExactly(new DoubtOfLeg.LegCropped()));
    }
  }
}
