package leadlight.joint.judge;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.joint.cut.JointPatch;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.Zone;
import leadlight.model.PointPx;
import leadlight.model.remark.Doubt;
import leadlight.model.row.Lead;
import leadlight.numeric.Quantiles;
import leadlight.vision.Frame;
import leadlight.vision.blur.BlurMeter;

/**
 * What a joint's own piece of the photo gives.
 *
 * @param pitchPx pixels a pitch
 * @param blurPx edge sigma around the joint; absent if no edge shows it
 * @param burntShare share of the joint that is burnt out
 * @param uBurntShare its standard uncertainty
 */
public record JointFitness(
    double pitchPx, OptionalDouble blurPx, double burntShare, double uBurntShare) {

  /** Half-width to standard uncertainty of a rectangular distribution (JCGM 100:2008, 4.3.7). */
  private static final double RECTANGULAR = Math.sqrt(3);

  /** Joints to each side whose focus is a joint's own, too (common practice, no source). */
  private static final int NEIGHBOURS = 2;

  public static JointFitness of(
      Frame photo, JointPatch joint, RowGeometry geometry, FitnessLimits limits) {
    double land = geometry.landHalf();
    double[] levels =
        new Zone(joint.light(), -land, land, geometry.heelY(), joint.ahead()).values();
    double level = limits.burntLevel().value();
    double play = limits.burntPlay().value();
    double surely = shareFrom(level + play, levels);
    double perhaps = shareFrom(level - play, levels);
    return new JointFitness(
        joint.pitchPx(),
        blurPx(photo, joint, limits.blurPitchPxMost().value()),
        shareFrom(level, levels),
        ((perhaps - surely) / 2 + 1.0 / levels.length) / RECTANGULAR);
  }

  /**
   * Where a joint is in focus, pixels: joints of one row stand on one board, so that focus changes
   * evenly along it, and a joint's edges are also soft where its solder is. So the median of its
   * own blur and its neighbours', two to each side, as long as its own is within what the meter
   * spreads; beyond that, and at the ends of the row, where one side only is known, never less than
   * its own.
   */
  public static OptionalDouble focusPx(List<JointFitness> row, int i, FitnessLimits limits) {
    OptionalDouble own = row.get(i).blurPx;
    if (own.isEmpty()) {
      return own;
    }
    int from = Math.max(0, i - NEIGHBOURS);
    int to = Math.min(row.size(), i + NEIGHBOURS + 1);
    double median =
        Quantiles.middle(
            row.subList(from, to).stream()
                .flatMapToDouble(joint -> joint.blurPx.stream())
                .toArray());
    boolean spread = own.getAsDouble() <= limits.blurSpreadTo().value() * median;
    boolean bothSides = to - from == 2 * NEIGHBOURS + 1;
    return OptionalDouble.of(spread && bothSides ? median : Math.max(own.getAsDouble(), median));
  }

  private static double shareFrom(double from, double[] levels) {
    return Arrays.stream(levels).filter(level -> level >= from).count() / (double) levels.length;
  }

  private static OptionalDouble blurPx(Frame photo, JointPatch joint, double pitchPxMost) {
    Lead lead = joint.lead();
    double margin = joint.pitchPx();
    PointPx a = lead.landToePx();
    PointPx b = lead.heelPx();
    int x0 = inside(Math.min(a.x(), b.x()) - margin, photo.widthPx());
    int y0 = inside(Math.min(a.y(), b.y()) - margin, photo.heightPx());
    int x1 = inside(Math.max(a.x(), b.x()) + margin, photo.widthPx());
    int y1 = inside(Math.max(a.y(), b.y()) + margin, photo.heightPx());
    return x1 <= x0 || y1 <= y0
        ? OptionalDouble.empty()
        : BlurMeter.edgeSigmaPx(
            photo, x0, y0, x1 - x0, y1 - y0, halvings(joint.pitchPx(), pitchPxMost));
  }

  /** How often a picture is halved until its pitch is at most so many pixels. */
  static int halvings(double pitchPx, double mostPx) {
    return (int) Math.max(0, Math.ceil(Math.log(pitchPx / mostPx) / Math.log(2)));
  }

  private static int inside(double place, int size) {
    return (int) Math.max(0, Math.min(size - 1, Math.round(place)));
  }

  /**
   * Why fillets cannot be judged here, if they cannot. A focus that does not show is no focus.
   *
   * @param focusPx as {@link #focusPx} has it
   */
  public Optional<Doubt> unfitBecause(OptionalDouble focusPx, FitnessLimits limits) {
    if (pitchPx < limits.fineFromPitchPx().value()) {
      return Optional.of(new Doubt.TooFewPixels(pitchPx, limits.fineFromPitchPx().value()));
    }
    if (burntShare > limits.burntMost().value()) {
      return Optional.of(new Doubt.Glare(burntShare));
    }
    if (focusPx.isEmpty()) {
      return Optional.of(new Doubt.FocusUnknown());
    }
    double blurPitch = focusPx.getAsDouble() / pitchPx;
    return blurPitch > limits.fineToBlurPitch().value()
        ? Optional.of(new Doubt.Blurred(blurPitch))
        : Optional.empty();
  }
}
