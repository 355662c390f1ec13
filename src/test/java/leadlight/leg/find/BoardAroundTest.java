package leadlight.leg.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import leadlight.model.PointPx;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.DoubtOfLeg;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;

/**
 * A land on a green board, drawn by hand; what lies around it, and what of it is in the picture.
 */
class BoardAroundTest {

  private static final int SIZE = 400;
  private static final double PX_PER_MM = 50;
  private static final byte[] GREEN = {20, 90, 40};
  private static final byte[] STEEL = {(byte) 160, (byte) 160, (byte) 160};

  /** Green, and steel from a column on. */
  private static Frame board(int steelFrom) {
    byte[] rgb = new byte[SIZE * SIZE * 3];
    for (int i = 0; i < SIZE * SIZE; i++) {
      System.arraycopy(i % SIZE >= steelFrom ? STEEL : GREEN, 0, rgb, 3 * i, 3);
    }
    return Frame.ofRgb(SIZE, SIZE, rgb);
  }

  private static Optional<Doubt> said(Frame frame, double x, double y) {
    LegRequest.Leg leg = new LegRequest.Leg(1, 0, 0, 2, 2, 1, 1);
    LandPlace place = new LandPlace(new PointPx(x, y), 0, PX_PER_MM, PX_PER_MM);
    return BoardAround.noSolderSide(frame, List.of(new FoundLeg(leg, 1, place, 1)));
  }

  @Test
  void oneBoardAllRoundMayBeASolderSide() {
    try (Frame frame = board(SIZE)) {
      assertThat(said(frame, 200, 200)).isEmpty();
    }
  }

  @Test
  void aShellBesideTheLandIsNone() {
    try (Frame frame = board(275)) {
      assertThat(said(frame, 200, 200)).get().isInstanceOf(DoubtOfLeg.ShellInView.class);
    }
  }

  @Test
  void aLandInThePicturesCornerMayHaveItsShellOutside() {
    try (Frame frame = board(SIZE)) {
      assertThat(said(frame, 52, 52)).contains(new DoubtOfLeg.ShellNotTold());
    }
  }
}
