package leadlight.scene;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.annotation.JsonNaming;
import java.util.ArrayList;
import java.util.List;
import leadlight.model.PointPx;

/**
 * What a scene shows, exactly; written beside the picture.
 *
 * @param towardsBodyPx one millimetre towards the body, in pixels
 * @param joints one per land
 */
@JsonNaming(PropertyNamingStrategies.SnakeCaseStrategy.class)
public record Truth(
    String photo,
    int width,
    int height,
    int leads,
    double pitchMm,
    double[] landUMm,
    double leadWidthMm,
    double leadThicknessMm,
    double footLengthMm,
    double landWidthMm,
    double landLengthMm,
    double landAheadOfToeMm,
    String lamp,
    String mask,
    double edgeBlurPx,
    double[] tiltRad,
    double[] towardsBodyPx,
    int solderBalls,
    boolean fluxResidue,
    boolean fibre,
    List<JointTruth> joints) {

  /**
   * One joint.
   *
   * @param toePx middle of the lead's open end, upper side; absent for a missing lead
   * @param wettedFromToe start and end of the wetted part of the foot, shares from its toe
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record JointTruth(
      @JsonProperty("pin") int pin,
      @JsonProperty("toe_px") double[] toePx,
      @JsonProperty("heel_px") double[] heelPx,
      @JsonProperty("foot_px") double[][] footPx,
      @JsonProperty("land_toe_px") double[] landToePx,
      @JsonProperty("land_heel_px") double[] landHeelPx,
      @JsonProperty("condition") String condition,
      @JsonProperty("side_overhang_of_lead_width") Double sideOverhang,
      @JsonProperty("wetted_from_toe") double[] wettedFromToe,
      @JsonProperty("lifted_mm") Double liftedMm,
      @JsonProperty("bridge_to") Integer bridgeTo,
      @JsonProperty("findings") List<String> findings,
      @JsonProperty("class2") String class2) {}

  static Truth of(RowLayout row, Projection camera, LeadSolid[] leads) {
    SceneSpec spec = row.spec;
    SceneSpec.Part part = row.part;
    PointPx middle = camera.map(spec.camera().aimUMm(), spec.camera().aimVMm(), 0);
    PointPx back = camera.map(spec.camera().aimUMm(), spec.camera().aimVMm() - 1, 0);
    List<JointTruth> joints = new ArrayList<>();
    for (int i = 0; i < row.leads(); i++) {
      joints.add(JointJudge.truth(row, camera, leads[i], i));
    }
    return new Truth(
        spec.name() + ".jpg",
        spec.camera().widthPx(),
        spec.camera().heightPx(),
        row.leads(),
        part.pitchMm(),
        part.landUMm(),
        part.leadWidthMm(),
        part.leadThicknessMm(),
        part.footLengthMm(),
        part.landWidthMm()[row.leads() / 2],
        part.landLengthMm(),
        part.landAheadMm(),
        lampName(spec.lamps()),
        spec.board().mask().id(),
        JointJudge.round(Math.hypot(spec.camera().blurPx(), 0.29)),
        new double[] {spec.camera().tiltXRad(), spec.camera().tiltYRad()},
        JointJudge.round(new PointPx(back.x() - middle.x(), back.y() - middle.y())),
        count(spec, SceneSpec.DirtKind.BALL),
        count(spec, SceneSpec.DirtKind.RESIDUE) > 0,
        count(spec, SceneSpec.DirtKind.FIBRE) > 0,
        joints);
  }

  private static int count(SceneSpec spec, SceneSpec.DirtKind kind) {
    return (int) spec.dirt().stream().filter(d -> d.kind() == kind).count();
  }

  /** The lamps by falling power, the faint room light left out. */
  private static String lampName(List<SceneSpec.Lamp> lamps) {
    double most = lamps.stream().mapToDouble(SceneSpec.Lamp::power).max().orElse(1);
    return lamps.stream()
        .filter(l -> l.power() > 0.35 * most)
        .sorted((a, b) -> Double.compare(b.power(), a.power()))
        .map(Truth::kindName)
        .distinct()
        .reduce((a, b) -> a + "+" + b)
        .orElseThrow();
  }

  private static String kindName(SceneSpec.Lamp lamp) {
    return switch (lamp.kind()) {
      case RING -> lamp.elevationDeg() < 35 ? "lowring" : "ring";
      case COAXIAL -> "axial";
      case DOME -> "dome";
      case PATCH -> lamp.spreadDeg() < 8 ? "torch" : "side";
    };
  }
}
