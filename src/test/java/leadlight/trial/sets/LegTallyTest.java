package leadlight.trial.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import leadlight.model.BoardSide;
import leadlight.model.FindingKind;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.Unit;
import leadlight.model.Verdict;
import leadlight.model.remark.DoubtOfLeg;
import leadlight.model.result.GradedLeg;
import leadlight.trial.truth.LegsTruth;
import org.junit.jupiter.api.Test;

class LegTallyTest {

  private static LegsTruth.Leg leg(int number, double x, String class2, boolean cut) {
    return new LegsTruth.Leg(number, new PointPx(x, 0), "filled", 300, 1, 0, cut, class2);
  }

  private static GradedLeg said(int number, double x, Verdict verdict, double wettedDeg) {
    Quantity share = new Quantity(1, 0.1, Unit.SHARE);
    return new GradedLeg(
        OptionalInt.of(number),
        new PointPx(x, 0),
        List.of(),
        1,
        verdict,
        verdict == Verdict.DEFECT ? List.of(FindingKind.OPEN) : List.of(),
        new Quantity(wettedDeg, 20, Unit.DEGREE),
        share,
        share,
        verdict == Verdict.UNJUDGED ? List.of(new DoubtOfLeg.LegCropped()) : List.of(),
        List.of());
  }

  private static LegsTruth photo(LegsTruth.Leg... legs) {
    LegsTruth.Size size = new LegsTruth.Size(1, 2);
    return new LegsTruth(
        Path.of("a.jpg"), BoardSide.SOLDER, "usb-c-16", 100, size, size, List.of(legs));
  }

  @Test
  void aLegIsCountedByWhatIsTrueOfIt() {
    LegTally tally = new LegTally();
    tally.add(
        photo(
            leg(1, 0, "defect", false),
            leg(2, 100, "acceptable", false),
            leg(3, 200, "acceptable", false),
            leg(4, 300, "acceptable", true)),
        List.of(
            said(1, 3, Verdict.ACCEPTABLE, 310),
            said(1, 100, Verdict.DEFECT, 100),
            said(4, 300, Verdict.UNJUDGED, 300),
            said(0, 900, Verdict.UNJUDGED, 300)));

    List<String> lines = tally.lines();
    assertThat(lines.get(2)).startsWith("| solder | 2 | 3 | 1/1 100.0 %");
    assertThat(lines)
        .contains(
            "wrong numbers: 1",
            "legs said where there is none: 1",
            "passed: a.jpg leg 1, filled",
            "called in error: a.jpg leg 2, filled");
  }
}
