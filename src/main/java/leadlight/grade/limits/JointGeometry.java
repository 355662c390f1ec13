package leadlight.grade.limits;

import java.util.OptionalDouble;

/**
 * The lengths of one joint that limits are shares of; what is not known is absent, and a limit that
 * needs it is then not given.
 *
 * @param leadWidthMm W
 * @param footLengthMm L
 * @param leadThicknessMm T
 * @param solderThicknessMm G
 * @param landWidthMm P
 */
public record JointGeometry(
    OptionalDouble leadWidthMm,
    OptionalDouble footLengthMm,
    OptionalDouble leadThicknessMm,
    OptionalDouble solderThicknessMm,
    OptionalDouble landWidthMm) {

  /** Refuses lengths that are not above zero. */
  public JointGeometry {
    for (OptionalDouble length :
        new OptionalDouble[] {
          leadWidthMm, footLengthMm, leadThicknessMm, solderThicknessMm, landWidthMm
        }) {
      if (length.isPresent() && !(length.getAsDouble() > 0 && length.getAsDouble() < 1000)) {
        throw new IllegalArgumentException(
            "a length must lie in (0, 1000) mm, is " + length.getAsDouble());
      }
    }
  }

  /** What a photo gives: lead width and foot length. */
  static JointGeometry of(double leadWidthMm, double footLengthMm) {
    OptionalDouble none = OptionalDouble.empty();
    return new JointGeometry(
        OptionalDouble.of(leadWidthMm), OptionalDouble.of(footLengthMm), none, none, none);
  }

  OptionalDouble get(Dimension dimension) {
    return switch (dimension) {
      case LEAD_WIDTH -> leadWidthMm;
      case FOOT_LENGTH -> footLengthMm;
      case LEAD_THICKNESS -> leadThicknessMm;
      case SOLDER_THICKNESS -> solderThicknessMm;
      case LAND_WIDTH -> landWidthMm;
    };
  }
}
