package leadlight.joint;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import leadlight.joint.cut.JointPatch;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.place.PlacedLead;
import leadlight.joint.place.PlacementModel;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.row.RowSpec;

/** Lengths of a joint in millimetres, with their standard uncertainties (JCGM 100:2008, 5.1.2). */
public final class SizeMeter {

  private final RowSpec spec;
  private final double pitchMm;
  private final RowGeometry geometry;
  private final PlacementModel.Shifts model;

  public SizeMeter(RowSpec spec, RowGeometry geometry, PlacementModel.Shifts model) {
    this.spec = spec;
    this.pitchMm = spec.pitchMm();
    this.geometry = geometry;
    this.model = model;
  }

  /** All lengths that this joint gives. */
  public Map<Measure, Quantity> measure(JointPatch joint, PlacedLead placed) {
    Map<Measure, Quantity> sizes = new EnumMap<>(Measure.class);
    int pin = placed.lead().pin();
    double uLead = uHalf(spec.leadWidthMm().isPresent());
    double uLand = uHalf(spec.lands().get(pin - 1).widthMm().isPresent());
    double uAlong = placed.lead().uAlongPx() / joint.pitchPx();
    PlacedLead.Shift shift = placed.farther();
    double landHalf = landHalf(pin);
    put(sizes, Measure.LEAD_WIDTH, 2 * geometry.leadHalf(), 2 * uLead);
    put(sizes, Measure.LAND_WIDTH, 2 * landHalf, 2 * uLand);
    put(
        sizes,
        Measure.FOOT_LENGTH,
        placed.toeAhead() - joint.heelY() - model.footBias().value(),
        Math.hypot(uAlong, model.footU().value()));
    put(sizes, Measure.LAND_AHEAD, joint.ahead() - placed.toeAhead(), uAlong);
    put(sizes, Measure.LATERAL_SHIFT, shift.pitches(), shift.u());
    put(
        sizes,
        Measure.SIDE_OVERHANG,
        Math.abs(shift.pitches()) + geometry.leadHalf() - landHalf - marginBias(pin),
        Math.sqrt(shift.u() * shift.u() + uLead * uLead + uLand * uLand));
    put(sizes, Measure.TOE_OVERHANG, Math.max(0, placed.toeAhead() - joint.ahead()), uAlong);
    sizes.put(Measure.LEAD_ANGLE, angle(placed));
    return sizes;
  }

  private double uHalf(boolean stated) {
    return (stated ? model.statedU() : model.halfWidthU()).value();
  }

  /** Widths as measured err to one side, stated ones do not; places of displaced leads do. */
  private double marginBias(int pin) {
    boolean stated =
        spec.leadWidthMm().isPresent() && spec.lands().get(pin - 1).widthMm().isPresent();
    return model.shiftBias().value() + (stated ? 0 : model.marginBias().value());
  }

  /** As the connector states it for this land, else as the row shows it. */
  private double landHalf(int pin) {
    OptionalDouble stated = spec.lands().get(pin - 1).widthMm();
    return stated.isPresent() ? stated.getAsDouble() / pitchMm / 2 : geometry.landHalf();
  }

  /** Lead against its land; positive turns the toe towards pin N. */
  private static Quantity angle(PlacedLead placed) {
    double turn = placed.toe().pitches() - placed.end().pitches();
    double angle = Math.atan(turn / placed.lengthPitches());
    double u = Math.hypot(placed.toe().u(), placed.end().u()) / placed.lengthPitches();
    return new Quantity(Math.toDegrees(angle), Math.toDegrees(u), Measure.LEAD_ANGLE.unit());
  }

  private void put(Map<Measure, Quantity> sizes, Measure measure, double pitches, double u) {
    sizes.put(measure, new Quantity(pitches * pitchMm, u * pitchMm, measure.unit()));
  }
}
