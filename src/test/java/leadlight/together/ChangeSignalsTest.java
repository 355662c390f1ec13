package leadlight.together;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.picture.Plane;
import leadlight.model.row.Lead;
import leadlight.register.Cut;
import leadlight.register.Overlay;
import leadlight.register.RowGrid;
import org.junit.jupiter.api.Test;

/** Three leads at 40 pixels a pitch; the middle one may take solder between the photos. */
class ChangeSignalsTest {

  private static final ChangeTuning TUNING = ChangeTuning.builtIn();
  private static final int WIDTH = 200;
  private static final int HEIGHT = 140;
  private static final double PITCH_MM = 0.5;
  private static final RowGrid GRID = new RowGrid(0, 0, 80, WIDTH, HEIGHT);
  private static final Homography TO_MM = GRID.toMm();
  private static final int MIDDLE = 1;

  /** What differs between two photos: the lamp's fall-off, its level, and solder. */
  private record Shot(double gain, double fallOff, double level, boolean soldered) {}

  private static final Shot BEFORE = new Shot(1, 0, 0, false);

  /** So bright that all metal is white. */
  private static final Shot BURNT = new Shot(3, 0, 0, false);

  private static double light(double x, double y, Shot shot) {
    double light = 60 + 6 * Math.sin(x / 9) * Math.cos(y / 7);
    for (int lead = 0; lead < 3; lead++) {
      double off = x - 60 - 40 * lead;
      boolean land = Math.abs(off) < 12 && y > 30 && y < 100;
      boolean top = Math.abs(off) < 7 && y < 80;
      double bump = 130 + 3 * off;
      light = land ? bump : light;
      light = land && shot.soldered && lead == MIDDLE ? 190 - 2 * (y - 60) : light;
      light = top ? 170 + 5 * Math.sin(y / 4) : light;
    }
    return Math.min(255, light * (shot.gain + shot.fallOff * x / WIDTH) + shot.level);
  }

  private static Cut cut(Shot shot) {
    float[] data = new float[WIDTH * HEIGHT];
    boolean[] seen = new boolean[data.length];
    for (int i = 0; i < data.length; i++) {
      data[i] = (float) light(i % WIDTH, i / WIDTH, shot);
      seen[i] = true;
    }
    return new Cut(GRID, new Plane(WIDTH, HEIGHT, data), seen);
  }

  private static List<double[]> signals(Shot after) {
    return signals(after, BEFORE);
  }

  private static List<double[]> signals(Shot after, Shot before) {
    return signals(new Overlay(cut(after), cut(before), TO_MM, 1, 1, 1));
  }

  private static List<LandZones> zones() {
    // The photo is the grid itself.
    List<Lead> leads = List.of(lead(1), lead(2), lead(3));
    return LandZones.of(leads, GRID, PITCH_MM, TO_MM, TUNING.zones());
  }

  private static List<double[]> signals(Overlay overlay) {
    List<LandZones> zones = zones();
    SteadyLight light = new SteadyLight(overlay, zones, TUNING.light());
    ChangeSignals signals = new ChangeSignals(overlay, light, TUNING.flat().value());
    return zones.stream().map(signals::of).toList();
  }

  private static Lead lead(int pin) {
    double x = 20 + 40.0 * pin;
    return new Lead(
        pin,
        new PointPx(x, 80),
        new PointPx(x, 35),
        new PointPx(x, 100),
        new PointPx(x, 30),
        1,
        0,
        0);
  }

  private static double chance(double[] signals) {
    return new Placed().soldered(signals).orElse(Double.NaN);
  }

  @Test
  void aRowUnderTheSameLightIsUnchanged() {
    for (double[] joint : signals(BEFORE)) {
      assertThat(chance(joint)).isLessThan(0.05);
    }
  }

  @Test
  void aLampThatFadesAlongTheRowAndAnotherExposureChangeNothing() {
    for (double[] joint : signals(new Shot(0.7, 0.4, 12, false))) {
      assertThat(chance(joint)).isLessThan(0.1);
    }
  }

  @Test
  void solderAtOneJointIsSeenAtThatOneAlone() {
    List<double[]> joints = signals(new Shot(0.8, 0.2, 5, true));
    assertThat(chance(joints.get(MIDDLE))).isGreaterThan(0.9);
    assertThat(chance(joints.get(0))).isLessThan(0.1);
    assertThat(chance(joints.get(2))).isLessThan(0.1);
  }

  @Test
  void whatIsBurntOutInBothPhotosIsNotCalledUnchanged() {
    for (double[] joint : signals(BURNT, BURNT)) {
      assertThat(chance(joint)).isNaN();
    }
  }

  @Test
  void aJointOfWhichOneSideLiesOutsideAPhotoIsNotCalledUnchanged() {
    Cut before = cut(BEFORE);
    for (int i : zones().get(MIDDLE).left().pixels(WIDTH, HEIGHT)) {
      before.seen()[i] = false;
    }
    List<double[]> joints = signals(new Overlay(cut(BEFORE), before, TO_MM, 1, 1, 1));
    assertThat(chance(joints.get(MIDDLE))).isNaN();
    assertThat(chance(joints.get(0))).isLessThan(0.05);
  }

  @Test
  void whereAllThatCannotHaveChangedIsWhiteItVouchesForNoLight() {
    Shot white = new Shot(1, 0, 230, false);
    Overlay overlay = new Overlay(cut(white), cut(white), TO_MM, 1, 1, 1);
    assertThat(new SteadyLight(overlay, zones(), TUNING.light()).noise()).isInfinite();
  }
}
