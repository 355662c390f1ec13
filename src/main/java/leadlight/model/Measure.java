package leadlight.model;

/** What is measured of a joint; the id is the name in files. */
public enum Measure {
  SIDE_OVERHANG("side_overhang_mm", Unit.MM),
  TOE_OVERHANG("toe_overhang_mm", Unit.MM),
  LEAD_WIDTH("lead_width_mm", Unit.MM),
  LAND_WIDTH("land_width_mm", Unit.MM),
  FOOT_LENGTH("foot_length_mm", Unit.MM),
  LAND_AHEAD("land_ahead_mm", Unit.MM),
  LATERAL_SHIFT("lateral_shift_mm", Unit.MM),
  LEAD_ANGLE("lead_angle_deg", Unit.DEGREE),
  BURNT_OUT("burnt_out_share", Unit.SHARE),
  EDGE_BLUR("edge_blur_px", Unit.PX);

  private final String id;
  private final Unit unit;

  Measure(String id, Unit unit) {
    this.id = id;
    this.unit = unit;
  }

  /** The name in files and reports, unit included. */
  public String id() {
    return id;
  }

  /** The unit of its value. */
  public Unit unit() {
    return unit;
  }
}
