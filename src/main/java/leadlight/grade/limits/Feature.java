package leadlight.grade.limits;

import leadlight.model.Unit;

/** What a workmanship limit is set for; the letters are those of the trade's tables. */
public enum Feature {
  /** A. */
  SIDE_OVERHANG(Unit.MM),
  /** B. */
  TOE_OVERHANG(Unit.MM),
  /** C. */
  END_JOINT_WIDTH(Unit.MM),
  /** D, the wetted length along a side of the foot. */
  SIDE_JOINT_LENGTH(Unit.MM),
  /** F; not visible from above. */
  HEEL_FILLET_HEIGHT(Unit.MM),
  /** Spread of the leads' heights before soldering; not visible from above. */
  PLANARITY(Unit.MM),
  /** Bare distance between conductors of different nets. */
  ELECTRICAL_CLEARANCE(Unit.MM),
  /** Anchor leg in a plated hole: fill of the hole; not visible from above. */
  LEG_VERTICAL_FILL(Unit.SHARE),
  /** Anchor leg: wetting around leg and barrel where the solder arrives. */
  LEG_DESTINATION_WETTING(Unit.DEGREE),
  /** Anchor leg: wetting around leg and barrel where the solder was fed. */
  LEG_SOURCE_WETTING(Unit.DEGREE),
  /** Anchor leg: part of the land covered where the solder was fed. */
  LEG_SOURCE_LAND_COVERAGE(Unit.SHARE),
  /** Anchor leg: part of the land covered where the solder arrives. */
  LEG_DESTINATION_LAND_COVERAGE(Unit.SHARE);

  private final Unit unit;

  Feature(Unit unit) {
    this.unit = unit;
  }

  /** The unit of its limits. */
  Unit unit() {
    return unit;
  }
}
