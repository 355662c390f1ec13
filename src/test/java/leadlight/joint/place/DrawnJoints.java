package leadlight.joint.place;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leadlight.joint.cut.JointPatch;
import leadlight.joint.cut.Straightener;
import leadlight.model.BodySide;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.vision.Frame;

/**
 * A row drawn with rectangles, so that every width and place is known: green mask, grey lands of
 * 0.6 pitch, brighter leads of 0.4 pitch, a white band across the land ahead of each toe. The body
 * is above; pin 1 is the leftmost.
 */
public final class DrawnJoints {

  public static final int PITCH = 48;

  /** Half widths in pitches: 14 and 10 pixels to either side of the middle one. */
  public static final double LAND_HALF = 14.5 / PITCH;

  public static final double LEAD_HALF = 10.5 / PITCH;
  private static final int LEADS = 8;
  private static final int LEFT = 60;
  private static final int LAND_TOP = 40;
  private static final int LAND_END = 180;
  private static final int TOE = 148;
  private static final int HEEL = 60;
  private static final int WIDTH = 2 * LEFT + (LEADS - 1) * PITCH;
  private static final int HEIGHT = 220;

  private final byte[] rgb = new byte[3 * WIDTH * HEIGHT];
  private final double[] shift = new double[LEADS];

  /** All joints wetted, all leads in the middle of their lands. */
  public DrawnJoints() {
    fill(0, 0, WIDTH, HEIGHT, 30, 90, 40);
    fill(0, 0, WIDTH, 30, 40, 40, 40);
    for (int i = 0; i < LEADS; i++) {
      int middle = LEFT + i * PITCH;
      fill(middle - 14, LAND_TOP, middle + 15, LAND_END, 120, 120, 120);
      fill(middle - 14, TOE + 6, middle + 15, TOE + 12, 250, 250, 250);
      lead(i, 0);
    }
  }

  /** The same with one lead drawn elsewhere, in pitches; the row is told nothing of it. */
  public DrawnJoints withLeadShifted(int index, double pitches) {
    int middle = LEFT + index * PITCH;
    fill(middle - 14, LAND_TOP, middle + 15, LAND_END, 120, 120, 120);
    lead(index, pitches);
    shift[index] = pitches;
    return this;
  }

  /** The same on a land that looks like a lead's top all along. */
  DrawnJoints withLeadShiftedOnALandLikeIt(int index, double pitches) {
    int middle = LEFT + index * PITCH;
    fill(middle - 14, LAND_TOP, middle + 15, LAND_END, 180, 180, 180);
    lead(index, pitches);
    shift[index] = pitches;
    return this;
  }

  /** Metal from the land of this index to the next. */
  public DrawnJoints withBridgeAfter(int index) {
    int middle = LEFT + index * PITCH;
    fill(middle + 10, 120, middle + PITCH - 9, 128, 200, 200, 200);
    return this;
  }

  /** Alloy over leads and gaps alike, from one index to another. */
  public DrawnJoints floodedBetween(int from, int to) {
    fill(LEFT + from * PITCH, 100, LEFT + to * PITCH, 130, 175, 175, 175);
    return this;
  }

  /** Bare laminate instead of the mask in all gaps, as light as the leads. */
  public DrawnJoints withBareLaminate() {
    for (int i = 0; i + 1 < LEADS; i++) {
      int middle = LEFT + i * PITCH;
      fill(middle + 15, LAND_TOP, middle + PITCH - 14, LAND_END, 200, 175, 120);
    }
    return this;
  }

  /** Metal in the gap after this index that touches neither land. */
  public DrawnJoints withBallAfter(int index) {
    int middle = LEFT + index * PITCH + PITCH / 2;
    fill(middle - 3, 120, middle + 3, 127, 200, 200, 200);
    return this;
  }

  /** Something dark over the joints from one index to another. */
  public DrawnJoints covered(int from, int to) {
    fill(LEFT + from * PITCH - 24, 30, LEFT + to * PITCH + 24, HEIGHT, 200, 160, 90);
    return this;
  }

  private void lead(int index, double pitches) {
    int middle = (int) Math.round(LEFT + (index + pitches) * PITCH);
    int half = 10;
    fill(middle - half, 30, middle + half + 1, TOE, 180, 180, 180);
  }

  private void fill(int x0, int y0, int x1, int y1, int red, int green, int blue) {
    for (int y = y0; y < y1; y++) {
      for (int x = x0; x < x1; x++) {
        int at = 3 * (y * WIDTH + x);
        rgb[at] = (byte) red;
        rgb[at + 1] = (byte) green;
        rgb[at + 2] = (byte) blue;
      }
    }
  }

  public Frame frame() {
    return Frame.ofRgb(WIDTH, HEIGHT, rgb);
  }

  public static RowSpec spec() {
    return RowSpec.plain(LEADS, 0.5, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** The row as its finder would give it: each lead on its land's middle. */
  public static List<Lead> leads() {
    List<Lead> leads = new ArrayList<>();
    for (int i = 0; i < LEADS; i++) {
      double x = LEFT + i * PITCH;
      leads.add(
          new Lead(
              i + 1,
              new PointPx(x, TOE),
              new PointPx(x, HEEL),
              new PointPx(x, LAND_END),
              new PointPx(x, LAND_TOP),
              1,
              0.3,
              0.5));
    }
    return leads;
  }

  /** The row as found. */
  public static RowOutcome.Found row() {
    return new RowOutcome.Found(
        new Homography(96, 0, 60, 0, 96, 148, 0, 0, 1),
        leads(),
        PITCH,
        0,
        96,
        BodySide.ABOVE,
        1,
        0,
        List.of());
  }

  public List<JointPatch> patches(Frame frame) {
    return new Straightener(spec(), leads()).patches(frame);
  }
}
