package leadlight.scene.light;

import java.util.ArrayList;
import java.util.List;
import leadlight.scene.camera.Projection;
import leadlight.scene.plan.LampSpec;

/** All lamps of a scene as single directions, in the row frame. */
public final class Light {

  /** Azimuth sectors that are shadowed each on its own. */
  static final int SECTORS = 12;

  private static final int STEPS = 1024;
  private static final double DEG = Math.PI / 180;
  private static final double LENS_HOLE_DEG = 10;

  /** One direction: u, v, z (up), irradiance across it in red, green, blue, sector. */
  record Ray(double u, double v, double z, double red, double green, double blue, int sector) {}

  private final List<Ray> rays = new ArrayList<>();
  private final double firstAzimuth;
  private final int[] byDiamond = new int[STEPS];

  public Light(List<LampSpec> lamps, Projection camera) {
    this.firstAzimuth = sharpest(lamps, camera) - Math.PI / SECTORS;
    for (int k = 0; k < STEPS; k++) {
      double diamond = 4.0 * k / (STEPS - 1);
      double v = diamond < 2 ? diamond - 1 : 3 - diamond;
      byDiamond[k] = exactSector((diamond < 2 ? 1 : -1) * (1 - Math.abs(v)), v);
    }
    for (LampSpec lamp : lamps) {
      List<double[]> cone = directions(lamp);
      List<double[]> above = new ArrayList<>();
      double level = 0;
      for (double[] d : cone) {
        double[] w = camera.toRow(d[0], d[1], d[2]);
        if (w[2] > 0.02) {
          above.add(new double[] {w[0], w[1], w[2], d[3]});
          level += w[2] * d[3];
        }
      }
      for (double[] w : above) {
        double share = lamp.power() * w[3] / level;
        rays.add(
            new Ray(
                w[0],
                w[1],
                w[2],
                share * lamp.red(),
                share * lamp.green(),
                share * lamp.blue(),
                exactSector(w[0], w[1])));
      }
    }
  }

  /** Shadows are cut exactly towards the one lamp that throws hard ones. */
  private static double sharpest(List<LampSpec> lamps, Projection camera) {
    for (LampSpec lamp : lamps) {
      if (lamp.kind() == LampSpec.Kind.PATCH) {
        double a = lamp.azimuthDeg() * DEG;
        double[] w = camera.toRow(Math.cos(a), Math.sin(a), 0);
        return Math.atan2(w[1], w[0]);
      }
    }
    return 0;
  }

  List<Ray> rays() {
    return rays;
  }

  /** The sector a direction points to; level directions by a table of a thousand steps. */
  int sector(double u, double v) {
    double sum = Math.abs(u) + Math.abs(v) + 1e-12;
    double diamond = u >= 0 ? 1 + v / sum : 3 - v / sum;
    return byDiamond[(int) (diamond / 4 * (STEPS - 1))];
  }

  private int exactSector(double u, double v) {
    double turn = (Math.atan2(v, u) - firstAzimuth) / (2 * Math.PI);
    int s = (int) ((turn - Math.floor(turn)) * SECTORS);
    return Math.min(s, SECTORS - 1);
  }

  /** Middle azimuth of a sector. */
  double azimuth(int sector) {
    return firstAzimuth + (sector + 0.5) * 2 * Math.PI / SECTORS;
  }

  /** Unit directions in the camera's frame (x right, y down, towards the lens) and weights. */
  private static List<double[]> directions(LampSpec lamp) {
    return switch (lamp.kind()) {
      case RING -> ring(lamp);
      case COAXIAL -> patch(90, 0, lamp.spreadDeg(), 5);
      case DOME -> dome();
      case PATCH -> patch(lamp.elevationDeg(), lamp.azimuthDeg(), lamp.spreadDeg(), 4);
    };
  }

  private static List<double[]> ring(LampSpec lamp) {
    List<double[]> out = new ArrayList<>();
    int count = lamp.count() > 0 ? lamp.count() : 60;
    for (int k = 0; k < 3; k++) {
      double elevation = lamp.elevationDeg() + (k - 1) * lamp.spreadDeg() / 3;
      for (int i = 0; i < count; i++) {
        double azimuth = 360.0 * (i + 0.37 + (lamp.count() > 0 ? 0 : k / 3.0)) / count;
        out.add(direction(elevation, azimuth, 1));
      }
    }
    return out;
  }

  private static List<double[]> dome() {
    List<double[]> out = new ArrayList<>();
    for (double elevation = 4; elevation < 90 - LENS_HOLE_DEG; elevation += 8) {
      double band = Math.cos(elevation * DEG);
      int count = Math.max(4, (int) Math.round(36 * band));
      for (int i = 0; i < count; i++) {
        out.add(direction(elevation, 360 * (i + 0.5) / count, band / count));
      }
    }
    return out;
  }

  private static List<double[]> patch(double elevation, double azimuth, double wide, int rings) {
    List<double[]> out = new ArrayList<>();
    double[] axis = direction(elevation, azimuth, 1);
    double[] side = {-Math.sin(azimuth * DEG), Math.cos(azimuth * DEG), 0};
    double[] rise = direction(elevation - 90, azimuth, 1);
    for (int k = 0; k < rings; k++) {
      double off = Math.tan(wide / 2 * DEG * (k + 0.5) / rings);
      int count = Math.max(1, 6 * k);
      for (int i = 0; i < count; i++) {
        double a = 2 * Math.PI * (i + 0.3 * k) / count;
        out.add(lean(axis, side, rise, off * Math.cos(a), off * Math.sin(a)));
      }
    }
    return out;
  }

  private static double[] lean(double[] axis, double[] p, double[] q, double a, double b) {
    double x = axis[0] + a * p[0] + b * q[0];
    double y = axis[1] + a * p[1] + b * q[1];
    double z = axis[2] + a * p[2] + b * q[2];
    double length = Math.sqrt(x * x + y * y + z * z);
    return new double[] {x / length, y / length, z / length, 1};
  }

  private static double[] direction(double elevationDeg, double azimuthDeg, double weight) {
    double flat = Math.cos(elevationDeg * DEG);
    return new double[] {
      flat * Math.cos(azimuthDeg * DEG),
      flat * Math.sin(azimuthDeg * DEG),
      Math.sin(elevationDeg * DEG),
      weight
    };
  }
}
