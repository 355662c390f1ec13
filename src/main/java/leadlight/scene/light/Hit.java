package leadlight.scene.light;

import leadlight.scene.plan.Material;

/** What a line of sight meets; reused, so that tracing makes no garbage. */
public final class Hit {
  public double u;
  public double v;
  public double z;
  public double nu;
  public double nv;
  public double nz;
  public double red;
  public double green;
  public double blue;
  public int surface;

  /** Clear resin over whatever was met, 0 for none. */
  public double film;

  /** Glare of a pool of resin over whatever was met, 0 for none, and how its surface leans. */
  public double pool;

  public double poolU;
  public double poolV;

  /** True if nothing changes within a pixel's width, so that one line of sight will do. */
  public boolean plain;

  /** True above the board's own things, where nothing shades it. */
  public boolean aloft;

  public Material material;

  public void normal(double x, double y, double up) {
    double length = Math.sqrt(x * x + y * y + up * up);
    nu = x / length;
    nv = y / length;
    nz = up / length;
  }

  public void paint(Material what) {
    material = what;
    red = what.red;
    green = what.green;
    blue = what.blue;
  }

  /** Becomes what another hit met, film and plainness left out. */
  public void take(Hit from) {
    u = from.u;
    v = from.v;
    z = from.z;
    nu = from.nu;
    nv = from.nv;
    nz = from.nz;
    red = from.red;
    green = from.green;
    blue = from.blue;
    surface = from.surface;
    material = from.material;
  }

  public void scale(double r, double g, double b) {
    red *= r;
    green *= g;
    blue *= b;
  }
}
