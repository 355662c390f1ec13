package leadlight.connector;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.OptionalDouble;
import leadlight.data.Basis;

/**
 * The metal tail that stands on a land; what is not known is absent.
 *
 * @param widthMm width
 * @param thicknessMm thickness
 * @param footLengthMm length of the flat part
 * @param visibleLengthMm how much of the foot shows beyond the body
 * @param landAheadOfToeMm land beyond the lead's open end
 * @param basis what these rest on
 */
public record LeadShape(
    OptionalDouble widthMm,
    OptionalDouble thicknessMm,
    OptionalDouble footLengthMm,
    OptionalDouble visibleLengthMm,
    OptionalDouble landAheadOfToeMm,
    @JsonProperty(required = true) Basis basis) {

  /** Refuses lengths that no lead has. */
  public LeadShape {
    Mm.length("width_mm", widthMm);
    Mm.length("thickness_mm", thicknessMm);
    Mm.length("foot_length_mm", footLengthMm);
    Mm.length("visible_length_mm", visibleLengthMm);
    Mm.length("land_ahead_of_toe_mm", landAheadOfToeMm);
  }
}
