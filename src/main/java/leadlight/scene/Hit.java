package leadlight.scene;

/** What a line of sight meets; reused, so that tracing makes no garbage. */
final class Hit {
  double u;
  double v;
  double z;
  double nu;
  double nv;
  double nz;
  double red;
  double green;
  double blue;
  int surface;

  /** Clear resin over whatever was met, 0 for none. */
  double film;

  /** Glare of a pool of resin over whatever was met, 0 for none, and how its surface leans. */
  double pool;

  double poolU;
  double poolV;

  /** True if nothing changes within a pixel's width, so that one line of sight will do. */
  boolean plain;

  Material material;

  void normal(double x, double y, double up) {
    double length = Math.sqrt(x * x + y * y + up * up);
    nu = x / length;
    nv = y / length;
    nz = up / length;
  }

  void paint(Material what) {
    material = what;
    red = what.red;
    green = what.green;
    blue = what.blue;
  }

  /** Becomes what another hit met, film and plainness left out. */
  void take(Hit from) {
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

  void scale(double r, double g, double b) {
    red *= r;
    green *= g;
    blue *= b;
  }
}
