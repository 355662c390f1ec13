package leadlight.leg.measure;

import static org.assertj.core.api.Assertions.assertThat;

import leadlight.leg.find.FoundLeg;
import leadlight.leg.find.LandPlace;
import leadlight.leg.find.LegRequest;
import leadlight.model.PointPx;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;

/** A sheet's end in soldered land, drawn by hand: what is a line all round it, and what is none. */
class PartingLineTest {

  private static final int SIZE = 140;
  private static final LegRequest.Leg LEG = new LegRequest.Leg(1, 0, 0, 2, 2, 1.6, 1.6);
  private static final PartingTuning TUNING = PartingTuning.builtIn();
  private static final int[] LEG_METAL = {210, 205, 195};
  private static final int[] SOLDER = {150, 150, 150};
  private static final int[] BLACK = {30, 30, 30};
  private static final int[] GREEN = {60, 140, 60};

  /** A leg of 30 by 70 pixels in solder, sides of it drawn as lines. */
  private static double depth(int[] line, int widthPx, boolean left, boolean others) {
    byte[] rgb = new byte[SIZE * SIZE * 3];
    for (int i = 0; i < SIZE * SIZE; i++) {
      int x = i % SIZE - SIZE / 2;
      int y = i / SIZE - SIZE / 2;
      int out = Math.max(Math.abs(x) - 15, Math.abs(y) - 35);
      boolean onLeft = x <= -15 && Math.abs(y) <= 35;
      boolean drawn = onLeft ? left : others;
      int[] colour = out < 0 ? LEG_METAL : out < widthPx && drawn ? line : SOLDER;
      for (int channel = 0; channel < 3; channel++) {
        rgb[3 * i + channel] = (byte) colour[channel];
      }
    }
    LandPlace place = new LandPlace(new PointPx(SIZE / 2.0, SIZE / 2.0), 0, 48, 48);
    FoundLeg leg = new FoundLeg(LEG, 1, place, 1);
    try (Frame frame = Frame.ofRgb(SIZE, SIZE, rgb)) {
      LegCut cut = new LegCut(frame, leg);
      return new PartingLine(TUNING, cut, LEG, SOLDER[0]).depth();
    }
  }

  @Test
  void aThinDarkLineAllRoundPartsTheLeg() {
    assertThat(depth(BLACK, 2, true, true)).isGreaterThan(TUNING.partedFrom().value());
  }

  @Test
  void solderThatMeetsTheLegLeavesNoLine() {
    assertThat(depth(BLACK, 2, false, false)).isLessThan(TUNING.doubtFrom().value());
  }

  @Test
  void alongOneSideALineIsAGapAndNotAllRound() {
    assertThat(depth(BLACK, 2, true, false)).isLessThan(TUNING.partedFrom().value());
  }

  @Test
  void aLineThatLacksOneSideIsDoubtedWhicheverSideItIs() {
    assertThat(depth(BLACK, 2, false, true)).isGreaterThan(TUNING.doubtFrom().value());
  }

  @Test
  void aFilletThatMirrorsTheBoardIsNoLine() {
    assertThat(depth(GREEN, 2, true, true)).isLessThan(TUNING.doubtFrom().value());
  }

  @Test
  void aBroadShadeOnSteepSolderIsNoLine() {
    assertThat(depth(BLACK, 12, true, true)).isLessThan(TUNING.doubtFrom().value());
  }
}
