package leadlight.drill.skill;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;

/**
 * Figures of drills, with their sources: {@code models/drill/drill.json}.
 *
 * @param due the schedule's steps
 * @param soundShare share of sound joints in a set
 * @param recentSittings sittings that figures of today rest on
 * @param fit which scenes show their joints
 * @param borderline what is near a limit in class 2
 * @param class3Overhang when side overhang is acceptable or a defect in class 3
 */
public record DrillRules(
    @JsonProperty(required = true) Steps due,
    @JsonProperty(required = true) Share soundShare,
    @JsonProperty(required = true) Count recentSittings,
    @JsonProperty(required = true) Fit fit,
    @JsonProperty(required = true) Borderline borderline,
    @JsonProperty(required = true) Band class3Overhang) {

  /** Compartments. */
  public record Steps(
      @JsonProperty(required = true) int count, @JsonProperty(required = true) String source) {}

  /** A share. */
  public record Share(
      @JsonProperty(required = true) double value, @JsonProperty(required = true) String source) {}

  /** A number of things. */
  public record Count(
      @JsonProperty(required = true) int value, @JsonProperty(required = true) String source) {}

  /** What a scene must have. */
  public record Fit(
      @JsonProperty(required = true) double leastPxPerPitch,
      @JsonProperty(required = true) double mostBlurOfPitch,
      @JsonProperty(required = true) String source) {}

  /** Ranges {least, most}. */
  public record Borderline(
      @JsonProperty(required = true) double[] overhangOfLeadWidth,
      @JsonProperty(required = true) double[] bareShareOfFoot,
      @JsonProperty(required = true) String source) {}

  /** Acceptable up to one figure, a defect above the other; between them not counted. */
  public record Band(
      @JsonProperty(required = true) double acceptable,
      @JsonProperty(required = true) double defect,
      @JsonProperty(required = true) String source) {}

  private static final DrillRules BUILT_IN =
      DataFile.builtIn("drill/drill.json").read(DrillRules.class);

  public static DrillRules builtIn() {
    return BUILT_IN;
  }
}
