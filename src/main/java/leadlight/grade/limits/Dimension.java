package leadlight.grade.limits;

/** The lengths that limits are shares of, with the letters of the trade's tables. */
enum Dimension {
  /** W. */
  LEAD_WIDTH,
  /** L, the flat part that lies on the land. */
  FOOT_LENGTH,
  /** T. */
  LEAD_THICKNESS,
  /** G, solder between lead and land. */
  SOLDER_THICKNESS,
  /** P. */
  LAND_WIDTH
}
