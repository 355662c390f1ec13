package leadlight.scene;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.PointPx;

/**
 * What a scene shows, exactly; written beside the picture.
 *
 * @param towardsBodyPx one millimetre towards the body, in pixels
 * @param joints one per land
 */
public record Truth(
    String photo,
    int width,
    int height,
    int leads,
    double pitchMm,
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
  public record JointTruth(
      int pin,
      double[] toePx,
      double[] heelPx,
      double[][] footPx,
      double[] landToePx,
      double[] landHeelPx,
      String condition,
      Double sideOverhangOfLeadWidth,
      double[] wettedFromToe,
      Double liftedMm,
      Integer bridgeTo,
      List<String> findings,
      String class2) {}

  static Truth of(RowLayout row, Projection camera, LeadSolid[] leads) {
    SceneSpec spec = row.spec;
    SceneSpec.Part part = row.part;
    PointPx middle = camera.map(spec.camera().aimAlongRowMm(), spec.camera().aimAlongLeadMm(), 0);
    PointPx back = camera.map(spec.camera().aimAlongRowMm(), spec.camera().aimAlongLeadMm() - 1, 0);
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
        part.leadWidthMm(),
        part.leadThicknessMm(),
        part.footLengthMm(),
        part.landWidthMm()[row.leads() / 2],
        part.landLengthMm(),
        part.landAheadMm(),
        lampName(spec.lamps()),
        spec.board().mask().id(),
        JointJudge.round(Math.hypot(spec.camera().blurPx(), 0.29)),
        spec.camera().tiltRad(),
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
