package leadlight.scene.render;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import leadlight.model.PointPx;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.camera.Mosaic;
import leadlight.scene.camera.Projection;
import leadlight.scene.plan.DirtKind;
import leadlight.scene.plan.LampSpec;
import leadlight.scene.plan.PartSpec;
import leadlight.scene.plan.Push;
import leadlight.scene.plan.SceneSpec;
import leadlight.scene.plan.Shot;
import leadlight.scene.solids.LeadSolid;
import leadlight.scene.solids.RowLayout;

/**
 * What a scene shows, exactly; written beside the picture.
 *
 * @param connector id of the connector that the row is of, absent for a row of none
 * @param towardsBodyPx one millimetre towards the body, in pixels
 * @param joints one per land
 * @param restShot of a nudge alone: whether it is the photo at rest
 * @param touchedPin the pin that a pick pushes
 * @param toeShiftUm how far its lead's toe has moved since, micrometres
 * @param loose whether that lead is open
 */
public record Truth(
    String photo,
    int width,
    int height,
    String connector,
    int leads,
    double pitchMm,
    List<Double> landsAtMm,
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
    List<JointTruth> joints,
    Boolean restShot,
    Integer touchedPin,
    Double toeShiftUm,
    Boolean loose) {

  /**
   * One joint.
   *
   * @param toePx middle of the lead's open end, upper side; absent for a missing lead
   * @param wettedFromToe start and end of the wetted part of the foot, shares from its toe
   * @param liftedMm height of an open lead over its seat
   * @param landRaisedMm height of a lifted land's toe end over where it lay
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
      Double landRaisedMm,
      Integer bridgeTo,
      List<String> findings,
      String class2) {}

  private static final double UM_PER_MM = 1000;

  /** Deviation of a box one pixel wide. */
  private static final double PIXEL_PX = 0.29;

  static Truth of(RowLayout row, Projection camera, LeadSolid[] leads) {
    SceneSpec spec = row.spec;
    PartSpec part = row.part;
    Optional<Shot> shot = Optional.ofNullable(spec.shot());
    Optional<Push> push = shot.flatMap(s -> Optional.ofNullable(s.push()));
    PointPx middle = camera.map(spec.camera().aimAlongRowMm(), spec.camera().aimAlongLeadMm(), 0);
    PointPx back = camera.map(spec.camera().aimAlongRowMm(), spec.camera().aimAlongLeadMm() - 1, 0);
    List<JointTruth> joints = new ArrayList<>();
    for (int i = 0; i < row.leads(); i++) {
      joints.add(JointJudge.truth(row, camera, leads[i], i));
    }
    if (part.pin1Right()) {
      Collections.reverse(joints);
    }
    return new Truth(
        spec.name() + ".jpg",
        spec.camera().widthPx(),
        spec.camera().heightPx(),
        part.connector(),
        row.leads(),
        part.pitchMm(),
        places(part),
        part.leadWidthMm(),
        part.leadThicknessMm(),
        part.footLengthMm(),
        part.landWidthMm()[row.leads() / 2],
        part.landLengthMm(),
        part.landAheadMm(),
        lampName(spec.lamps()),
        spec.board().mask().id(),
        JointJudge.round(edgeBlur(spec.camera())),
        spec.camera().tiltRad(),
        JointJudge.round(new PointPx(back.x() - middle.x(), back.y() - middle.y())),
        count(spec, DirtKind.BALL),
        count(spec, DirtKind.RESIDUE) + count(spec, DirtKind.POOL) > 0,
        count(spec, DirtKind.FIBRE) > 0,
        joints,
        shot.filter(Shot::nudge).map(Shot::rest).orElse(null),
        push.map(p -> JointJudge.pin(row, p.land() - 1)).orElse(null),
        push.map(p -> JointJudge.round(UM_PER_MM * Math.abs(p.toeMm()))).orElse(null),
        push.map(Push::loose).orElse(null));
  }

  /** Places of the lands from pin 1. */
  private static List<Double> places(PartSpec part) {
    double[] at = part.landsAtMm();
    int last = at.length - 1;
    List<Double> places = new ArrayList<>();
    for (int i = 0; i <= last; i++) {
      places.add(JointJudge.round(part.pin1Right() ? at[last] - at[last - i] : at[i]));
    }
    return places;
  }

  /** Deviation of an edge in green: optics, the pixel's own width, and the mosaic. */
  private static double edgeBlur(CameraSpec camera) {
    double mosaic = camera.sensor().mosaic() ? Mosaic.BLUR_PX : 0;
    return Math.hypot(Math.hypot(camera.lens().blurPx(), PIXEL_PX), mosaic);
  }

  private static int count(SceneSpec spec, DirtKind kind) {
    return (int) spec.dirt().stream().filter(d -> d.kind() == kind).count();
  }

  /** The lamps by falling power, the faint room light left out. */
  public static String lampName(List<LampSpec> lamps) {
    double most = lamps.stream().mapToDouble(LampSpec::power).max().orElse(1);
    return lamps.stream()
        .filter(l -> l.power() > 0.35 * most)
        .sorted((a, b) -> Double.compare(b.power(), a.power()))
        .map(Truth::kindName)
        .distinct()
        .reduce((a, b) -> a + "+" + b)
        .orElseThrow();
  }

  private static String kindName(LampSpec lamp) {
    return switch (lamp.kind()) {
      case RING -> lamp.elevationDeg() < 35 ? "lowring" : "ring";
      case COAXIAL -> "axial";
      case DOME -> "dome";
      case PATCH -> lamp.spreadDeg() < 8 ? "torch" : "side";
    };
  }
}
