package leadlight.scene.solids;

import leadlight.scene.camera.Projection;
import leadlight.scene.light.Hit;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.PartSpec;

/**
 * The frame of a land that has come off the laminate: its toe end is raised, its heel end holds and
 * is the hinge. Land, solder and lead turn about the hinge as one rigid piece (plane rotation; at a
 * Bond number of about 0.01 the solder's shape does not feel the tilt), so everything of the joint
 * is traced in its own frame, in which the land lies flat, and carried back.
 */
public final class LiftFrame {

  /** Thickness of a land: foil of 1 oz a square foot, 35 micrometres (IPC-4562, from memory). */
  public static final double FOIL_MM = 0.035;

  private final double hinge;
  private final double sin;
  private final double cos;

  private LiftFrame(double hingeMm, double sin) {
    this.hinge = hingeMm;
    this.sin = sin;
    this.cos = Math.sqrt(1 - sin * sin);
  }

  /** The frame of a joint, null where the land lies. */
  static LiftFrame of(PartSpec part, JointPlan joint) {
    return joint.landRaisedMm() == null
        ? null
        : new LiftFrame(
            part.landAheadMm() - part.landLengthMm(), joint.landRaisedMm() / part.landLengthMm());
  }

  /** Place along the leads of a point of the joint's own frame. */
  public double rowV(double v, double z) {
    return hinge + (v - hinge) * cos - z * sin;
  }

  /** Height over the board of a point of the joint's own frame. */
  public double rowZ(double v, double z) {
    return (v - hinge) * sin + z * cos;
  }

  /** Height in the joint's own frame of a point of the row frame. */
  double ownZ(double v, double z) {
    return z * cos - (v - hinge) * sin;
  }

  /** The point of the land that stands straight above a place of the board. */
  double landOver(double v) {
    return hinge + (v - hinge) / cos;
  }

  /** Height of the land above a place of the board. */
  double gapAt(double v) {
    return Math.max(0, v - hinge) * sin / cos;
  }

  /** A line of sight (see {@link Projection#sight}) as the joint's own frame has it. */
  public void toOwn(double[] ray, double[] own) {
    double up = cos - ray[3] * sin;
    double across = (ray[3] * cos + sin) / up;
    double down = ownZ(ray[1], 0);
    own[0] = ray[0] - ray[2] * down / up;
    own[1] = hinge + (ray[1] - hinge) * cos - across * down;
    own[2] = ray[2] / up;
    own[3] = across;
  }

  /** Carries place and normal of what was met in the joint's own frame into the row frame. */
  public void back(Hit hit) {
    double v = hit.v;
    hit.v = rowV(v, hit.z);
    hit.z = rowZ(v, hit.z);
    hit.normal(hit.nu, hit.nv * cos - hit.nz * sin, hit.nv * sin + hit.nz * cos);
  }
}
