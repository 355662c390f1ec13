package leadlight.scene.light;

import leadlight.scene.camera.Projection;

/** Light that a pixel gathers: one line of sight where all is plain, a grid of them elsewhere. */
public final class Pixel {

  private final Projection camera;
  private final Sight tracer;
  private final Shader shader;
  private final int across;
  private final double[] ray = new double[4];
  private final double[] right = new double[4];
  private final double[] below = new double[4];
  private final double[] fine = new double[4];
  private final double[] rgb = new double[3];
  private final Hit hit = new Hit();
  private final Hit spare = new Hit();

  public Pixel(Projection camera, Sight tracer, Shader shader, int across) {
    this.camera = camera;
    this.tracer = tracer;
    this.shader = shader;
    this.across = across;
  }

  /** Mean of the lines of sight; the array is used again. */
  public double[] look(int x, int y) {
    java.util.Arrays.fill(rgb, 0);
    camera.sight(x, y, ray);
    tracer.trace(ray, hit, spare);
    if (hit.plain) {
      shader.shade(hit, rgb);
      return rgb;
    }
    camera.sight(x + 1, y, right);
    camera.sight(x, y + 1, below);
    for (int k = 0; k < across * across; k++) {
      double fx = (k % across + 0.5) / across - 0.5;
      double fy = (k / across + 0.5) / across - 0.5;
      for (int i = 0; i < 4; i++) {
        fine[i] = ray[i] + fx * (right[i] - ray[i]) + fy * (below[i] - ray[i]);
      }
      tracer.trace(fine, hit, spare);
      shader.shade(hit, rgb);
    }
    for (int c = 0; c < 3; c++) {
      rgb[c] /= across * across;
    }
    return rgb;
  }
}
