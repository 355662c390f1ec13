package leadlight.joint;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import leadlight.model.Lead;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.RowSpec;

/** Lengths of a joint in millimetres, with their standard uncertainties (JCGM 100:2008, 5.1.2). */
final class SizeMeter {

  private final RowSpec spec;
  private final double pitchMm;
  private final RowGeometry geometry;
  private final FitnessLimits limits;

  SizeMeter(RowSpec spec, RowGeometry geometry, FitnessLimits limits) {
    this.spec = spec;
    this.pitchMm = spec.pitchMm();
    this.geometry = geometry;
    this.limits = limits;
  }

  /** All lengths that this joint gives. */
  Map<Measure, Quantity> measure(JointPatch joint) {
    Map<Measure, Quantity> sizes = new EnumMap<>(Measure.class);
    double uHalf = limits.halfWidthPitchU().value();
    double uShift =
        Math.hypot(joint.lead().uAcrossPx() / joint.pitchPx(), limits.shiftPitchU().value());
    double uAlong = joint.lead().uAlongPx() / joint.pitchPx();
    double shift = farther(joint.offset(), joint.heelOffset());
    double landHalf = landHalf(joint.lead().pin());
    double beyond = Math.abs(shift) + geometry.leadHalf() - landHalf;
    put(sizes, Measure.LEAD_WIDTH, 2 * geometry.leadHalf(), 2 * uHalf);
    put(sizes, Measure.LAND_WIDTH, 2 * landHalf, 2 * uHalf);
    put(sizes, Measure.FOOT_LENGTH, -joint.heelY(), uAlong);
    put(sizes, Measure.LATERAL_SHIFT, shift, uShift);
    put(
        sizes,
        Measure.SIDE_OVERHANG,
        Math.max(0, beyond),
        Math.sqrt(uShift * uShift + 2 * uHalf * uHalf));
    put(sizes, Measure.TOE_OVERHANG, Math.max(0, -joint.ahead()), uAlong);
    sizes.put(Measure.LEAD_ANGLE, angle(joint.lead(), joint, uShift));
    return sizes;
  }

  /** As the connector states it for this land, else as the row shows it. */
  private double landHalf(int pin) {
    OptionalDouble stated = spec.lands().get(pin - 1).widthMm();
    return stated.isPresent() ? stated.getAsDouble() / pitchMm / 2 : geometry.landHalf();
  }

  private static double farther(double one, double other) {
    return Math.abs(one) >= Math.abs(other) ? one : other;
  }

  /** Lead against its land; positive turns the toe towards pin N. */
  private static Quantity angle(Lead lead, JointPatch joint, double uShift) {
    double lengthPitch = Math.max(lead.toePx().distanceTo(lead.heelPx()) / joint.pitchPx(), 0.1);
    double angle = Math.atan((joint.offset() - joint.heelOffset()) / lengthPitch);
    double u = Math.sqrt(2) * uShift / lengthPitch;
    return new Quantity(Math.toDegrees(angle), Math.toDegrees(u), Measure.LEAD_ANGLE.unit());
  }

  private void put(Map<Measure, Quantity> sizes, Measure measure, double pitches, double u) {
    sizes.put(measure, new Quantity(pitches * pitchMm, u * pitchMm, measure.unit()));
  }
}
