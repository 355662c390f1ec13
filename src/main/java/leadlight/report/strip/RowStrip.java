package leadlight.report.strip;

import java.util.List;
import leadlight.model.joint.GradedJoint;
import leadlight.report.paint.Block;
import leadlight.report.paint.Pen;
import leadlight.report.paint.TextStyle;
import leadlight.report.paint.VerdictMark;
import leadlight.report.words.PictureWords;
import leadlight.vision.Frame;

/**
 * The row (or a part of a long one) straightened, with its marks around it: nothing is drawn on the
 * strip itself. Below it come ticks, pin numbers, verdict marks and the findings in words.
 */
public final class RowStrip implements Block {

  private static final TextStyle NUMBER = TextStyle.STRONG;
  private static final int CAPTION_PX = 30;
  private static final int TICK_PX = 9;
  private static final int NUMBER_PX = 22;
  private static final int MARK_PX = 22;
  private static final int MARK_LANE_PX = 30;
  private static final int LEVEL_PX = 26;
  private static final int BELOW_PX = 16;
  private static final double SLANT_RAD = Math.toRadians(50);
  private static final int OUTSIDE = 0xe4e4e4;
  private static final double[] BAR_MM = {10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05};
  private static final double LONGEST_BAR_PX = 130;

  private final StripGeometry geometry;
  private final List<Integer> strip;
  private final List<GradedJoint> joints;
  private final Frame picture;
  private final PictureWords said;
  private final Callouts callouts;

  public RowStrip(
      StripGeometry geometry,
      List<Integer> strip,
      List<GradedJoint> joints,
      Frame picture,
      PictureWords said) {
    this.geometry = geometry;
    this.strip = strip;
    this.joints = joints;
    this.picture = picture;
    this.said = said;
    this.callouts = Callouts.of(joints, strip, index -> geometry.acrossPx(strip, index), said);
  }

  @Override
  public int heightPx() {
    return CAPTION_PX
        + geometry.heightPx()
        + TICK_PX
        + NUMBER_PX
        + MARK_LANE_PX
        + calloutsPx()
        + BELOW_PX;
  }

  private int calloutsPx() {
    if (callouts.level()) {
      return callouts.levels() * LEVEL_PX;
    }
    return (int) Math.ceil(callouts.widestPx() * Math.sin(SLANT_RAD)) + LEVEL_PX;
  }

  @Override
  public void paint(Pen pen, int x, int y) {
    int width = geometry.widthPx(strip);
    int height = geometry.heightPx();
    int top = y + CAPTION_PX;
    pen.text(TextStyle.NOTE, caption(), x, y + 17);
    pen.rect(OUTSIDE, x, top, width, height);
    pen.canvas().pasteStraightened(picture, geometry.toPhoto(strip), x, top, width, height);
    pen.frame(Pen.RULE, x, top, width, height);
    pen.text(TextStyle.NOTE, said.get("body-side"), x + width + 12, top + 14);
    pen.text(TextStyle.NOTE, said.get("open-side"), x + width + 12, top + height - 4);
    scaleBar(pen, x + width + 12, top + height - 40);
    int below = top + height;
    bars(pen, x, below + TICK_PX + NUMBER_PX + MARK_LANE_PX / 2);
    for (int index : strip) {
      pin(pen, x + geometry.acrossPx(strip, index), top, below, joints.get(index));
    }
    labels(pen, x, below + TICK_PX + NUMBER_PX + MARK_LANE_PX);
  }

  private String caption() {
    return said.get(
        "strip",
        strip.get(0) + 1,
        strip.get(strip.size() - 1) + 1,
        said.size(geometry.enlargement()));
  }

  private void pin(Pen pen, double x, int top, int below, GradedJoint joint) {
    int tick = (int) Math.round(x) - 1;
    pen.rect(Pen.INK, tick, below + 1, 2, TICK_PX - 2);
    pen.rect(Pen.INK, tick, top - TICK_PX + 2, 2, TICK_PX - 3);
    pen.textAround(NUMBER, "" + joint.pin(), x, below + TICK_PX + 16);
    VerdictMark.draw(
        pen, joint.verdict(), x, below + TICK_PX + NUMBER_PX + MARK_LANE_PX / 2.0, MARK_PX);
  }

  /** Bridged pins are tied together behind their marks, runs of one finding below them. */
  private void bars(Pen pen, int x, int middle) {
    for (Callouts.Label label : callouts.labels()) {
      int from = x + (int) Math.round(label.xPx());
      int length = (int) Math.round(label.endPx() - label.xPx());
      if (label.bridge()) {
        pen.rect(Pen.INK, from, middle - 3, length, 6);
      } else if (length > 0) {
        pen.rect(Pen.INK, from, middle + MARK_LANE_PX / 2, length, 2);
        pen.rect(Pen.INK, from + length - 2, middle + MARK_LANE_PX / 2 - 3, 2, 3);
      }
    }
  }

  private void labels(Pen pen, int x, int top) {
    for (int i = 0; i < callouts.labels().size(); i++) {
      Callouts.Label label = callouts.labels().get(i);
      double at = x + label.leaderPx();
      int leader = (int) Math.round(at) - 1;
      int from = label.bridge() ? top - MARK_LANE_PX / 2 : top - 2;
      if (callouts.level()) {
        List<String> lines = callouts.lines(i);
        int first = top + callouts.level(i) * LEVEL_PX + LEVEL_PX - 6;
        int bottom = first + (lines.size() - 1) * LEVEL_PX;
        pen.rect(Pen.INK, leader, from, 2, bottom - from);
        for (int k = 0; k < lines.size(); k++) {
          double beside = at + Callouts.BESIDE_LEADER_PX;
          pen.text(Callouts.STYLE, lines.get(k), beside, first + k * LEVEL_PX - 1);
        }
      } else {
        pen.rect(Pen.INK, leader, from, 2, top + 6 - from);
        String cut = callouts.cut(i, SLANT_RAD);
        pen.slanted(Callouts.STYLE, cut, at - 2, top + 18, SLANT_RAD);
      }
    }
  }

  private void scaleBar(Pen pen, int x, int y) {
    for (double mm : BAR_MM) {
      int length = (int) Math.round(mm * geometry.pxPerMm());
      if (length <= LONGEST_BAR_PX) {
        pen.rect(Pen.INK, x, y, length, 4);
        pen.rect(Pen.INK, x, y - 5, 2, 14);
        pen.rect(Pen.INK, x + length - 2, y - 5, 2, 14);
        String text = said.decimal(mm, 3) + " mm";
        pen.text(TextStyle.BODY_BOLD, text, x, y - 10);
        return;
      }
    }
  }
}
