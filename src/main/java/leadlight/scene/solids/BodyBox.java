package leadlight.scene.solids;

import leadlight.scene.chance.Grain;
import leadlight.scene.light.Hit;
import leadlight.scene.light.Roof;
import leadlight.scene.light.Shader;
import leadlight.scene.plan.BodySpec;
import leadlight.scene.plan.Material;

/** The connector's body and its shell: two boxes with broken edges. */
public final class BodyBox implements Roof {

  private static final double CHAMFER_MM = 0.09;
  private static final double PLAIN_MM = 0.25;
  private static final double SHELL_INSET_MM = 0.4;

  final double faceV;
  final double topZ;
  private final BodySpec body;
  private final double left;
  private final double right;
  private final long seed;
  private final BodyMarks marks;

  public BodyBox(RowLayout row) {
    this.body = row.spec.body();
    this.faceV = -row.part.footLengthMm() - body.gapMm();
    this.topZ = body.heightMm();
    this.left = -body.overEndMm();
    this.right = row.part.landsAtMm()[row.leads() - 1] + body.overEndMm();
    this.seed = row.spec.seed();
    this.marks = new BodyMarks(row.spec);
  }

  boolean shell() {
    return body.shellBackMm() >= 0;
  }

  /** Height of the boxes at a place, 0 beside them. */
  public double heightAt(double u, double v) {
    double h = 0;
    if (u > left && u < right && v < faceV) {
      h = topZ;
    }
    if (shell() && inShell(u, v)) {
      h = body.shellHeightMm();
    }
    return h;
  }

  private boolean inShell(double u, double v) {
    return u > left + SHELL_INSET_MM
        && u < right - SHELL_INSET_MM
        && v < faceV - body.shellBackMm();
  }

  /** Steepness of the line from a place outside a box to its upper edge, along a direction. */
  @Override
  public double steepness(double u, double v, double z, double du, double dv) {
    double s = rise(u, v, z, du, dv, left, right, faceV, topZ);
    if (shell()) {
      double back = faceV - body.shellBackMm();
      double from = left + SHELL_INSET_MM;
      double to = right - SHELL_INSET_MM;
      s = Math.max(s, rise(u, v, z, du, dv, from, to, back, body.shellHeightMm()));
    }
    return s;
  }

  private static double rise(
      double u,
      double v,
      double z,
      double du,
      double dv,
      double from,
      double to,
      double face,
      double top) {
    if (top <= z + 0.05 || (v >= face && dv >= 0)) {
      return 0;
    }
    double t0 = ((du > 0 ? from : to) - u) / du;
    double t1 = ((du > 0 ? to : from) - u) / du;
    double f = (face - v) / dv;
    if (dv < 0) {
      t0 = Math.max(t0, f);
    } else {
      t1 = Math.min(t1, f);
    }
    return t0 > 0 && t0 < t1 ? (top - z) / t0 : 0;
  }

  /** Follows a line of sight to the boxes; true if it meets one. */
  public boolean meet(double[] ray, Hit hit) {
    if (!body.there()) {
      return false;
    }
    if (shell()) {
      double back = faceV - body.shellBackMm();
      if (box(
          ray, body.shellHeightMm(), left + SHELL_INSET_MM, right - SHELL_INSET_MM, back, hit)) {
        hit.paint(Material.STEEL);
        hit.surface = Shader.LAND;
        texture(hit, 0.03);
        brushed(hit);
        if (hit.nz > 0.99) {
          marks.shell(hit, back - hit.v);
        }
        return true;
      }
    }
    boolean nearShell = shell();
    if (box(ray, topZ, left, right, faceV, hit)) {
      hit.paint(body.material());
      hit.surface = body.material().metal ? Shader.LAND : Shader.MATTE;
      texture(hit, body.material().metal ? 0.03 : 0.10);
      if (body.material().metal) {
        brushed(hit);
      } else {
        grain(hit);
        if (hit.nz > 0.95) {
          marks.plastic(hit, faceV - hit.v);
        }
      }
      hit.plain &= !nearShell;
      return true;
    }
    return false;
  }

  private void texture(Hit hit, double slope) {
    hit.normal(
        hit.nu + slope * Grain.cloud(seed + 31, 18 * hit.u, 18 * (hit.v + hit.z)),
        hit.nv + slope * Grain.cloud(seed + 32, 18 * hit.u, 18 * (hit.v + hit.z)),
        hit.nz);
  }

  /** Fine lines along the sheet's rolling direction. */
  private void brushed(Hit hit) {
    double line = 0.05 * Grain.smooth(seed + 34, 3 * hit.u, 55 * hit.v);
    double worn = 0.92 + 0.08 * Grain.cloud(seed + 35, 0.7 * hit.u, 1.1 * hit.v);
    hit.normal(hit.nu, hit.nv + line, hit.nz);
    hit.scale(worn, worn, worn);
  }

  /** The mould's spark-eroded texture, and the uneven shade of filled plastic. */
  private void grain(Hit hit) {
    double x = 34 * hit.u;
    double y = 34 * (hit.v + hit.z);
    double rough = 0.14 * Grain.smooth(seed + 36, x, y);
    double shade =
        1 + 0.10 * Grain.smooth(seed + 37, x, y) + 0.05 * Grain.cloud(seed + 38, hit.u, y / 34);
    hit.normal(hit.nu + rough, hit.nv + 0.14 * Grain.smooth(seed + 39, x, y), hit.nz);
    hit.scale(shade, shade, shade);
  }

  private boolean box(double[] ray, double top, double from, double to, double face, Hit hit) {
    double u = ray[0] + ray[2] * top;
    double v = ray[1] + ray[3] * top;
    if (v < face && u > from && u < to) {
      place(hit, u, v, top);
      edges(hit, from, to, face);
      return true;
    }
    return side(ray, top, (face - ray[1]) / ray[3], from, to, face, hit)
        || end(ray, top, (from - ray[0]) / ray[2], from, -1, face, hit)
        || end(ray, top, (to - ray[0]) / ray[2], to, 1, face, hit);
  }

  private boolean side(
      double[] ray, double top, double z, double from, double to, double face, Hit hit) {
    double u = ray[0] + ray[2] * z;
    if (!(z > 0 && z < top && u > from && u < to) || ray[3] <= 0) {
      return false;
    }
    place(hit, u, face, z);
    hit.normal(0, 1, 0.05);
    return true;
  }

  private boolean end(
      double[] ray, double top, double z, double at, int way, double face, Hit hit) {
    double v = ray[1] + ray[3] * z;
    if (!(z > 0 && z < top && v < face) || ray[2] * way <= 0) {
      return false;
    }
    place(hit, at, v, z);
    hit.normal(way, 0, 0.05);
    return true;
  }

  private static void place(Hit hit, double u, double v, double z) {
    hit.u = u;
    hit.v = v;
    hit.z = z;
  }

  private void edges(Hit hit, double from, double to, double face) {
    double du = Math.min(hit.u - from, to - hit.u);
    double dv = face - hit.v;
    hit.plain = Math.min(du, dv) > PLAIN_MM;
    double s = Math.max(0, 1 - Math.min(du, dv) / CHAMFER_MM);
    double way = hit.u - from < to - hit.u ? -1 : 1;
    double out = 0.9 * s * s;
    hit.normal(du < dv ? way * out : 0, du < dv ? 0 : out, Math.sqrt(1 - out * out));
    hit.z -= CHAMFER_MM * s * s / 2;
  }
}
