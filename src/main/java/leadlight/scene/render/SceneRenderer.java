package leadlight.scene.render;

import java.awt.image.BufferedImage;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.camera.Projection;
import leadlight.scene.camera.Sensor;
import leadlight.scene.chance.Grain;
import leadlight.scene.light.HeightMap;
import leadlight.scene.light.Horizon;
import leadlight.scene.light.Light;
import leadlight.scene.light.Pixel;
import leadlight.scene.light.Shader;
import leadlight.scene.light.Sight;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.SceneSpec;
import leadlight.scene.solids.BodyBox;
import leadlight.scene.solids.LeadSolid;
import leadlight.scene.solids.PickSolid;
import leadlight.scene.solids.RowLayout;
import leadlight.scene.solids.SolderField;

/**
 * Renders a scene: solder surfaces are solved, lines of sight traced to them, to leads, body and
 * board, lit by the lamps with shadows, and passed through lens and sensor. Deterministic; about a
 * second for 1000 x 400 pixels on one core.
 */
public final class SceneRenderer {

  private static final double SHADOW_MARGIN_MM = 0.5;

  /** Blur that hides how a pixel was sampled. */
  private static final double SOFT_PX = 1.3;

  /** Tells the noise of the sensor from other chances. */
  private static final int NOISE = 80;

  private SceneRenderer() {}

  /** Renders one scene on the calling thread. */
  public static Scene render(SceneSpec spec) {
    RowLayout row = new RowLayout(spec);
    Projection camera = new Projection(spec.camera());
    double pixel = 1 / spec.camera().pxPerMm();
    double solderCell = clamp(0.8 * pixel, row.part.pitchMm() / 90, row.part.pitchMm() / 44);
    SolderField solder = new SolderField(row, solderCell);
    LeadSolid[] leads = leads(row, solder);
    BodyBox body = new BodyBox(row);
    Tracer tracer = new Tracer(row, solder, leads, body);
    Light light = new Light(spec.lamps(), camera);
    double cell = clamp(1.4 * pixel, row.part.pitchMm() / 44, row.part.pitchMm() / 24);
    HeightMap map = heights(row, camera, tracer, body, cell);
    Horizon horizon = new Horizon(map, body, light, PickSolid.of(spec));
    Shader shader =
        new Shader(spec.metal(), spec.board().mask(), light, camera.toRow(0, 0, 1), horizon);
    float[][] planes = look(spec.camera(), camera, tracer, shader);
    BufferedImage picture = new Sensor(spec.camera(), grain(spec)).expose(planes);
    return new Scene(spec, picture, Truth.of(row, camera, leads));
  }

  /** The sensor's noise is another in each photo, the row's own grain is not. */
  private static long grain(SceneSpec spec) {
    return spec.shot() == null ? spec.seed() : Grain.mix(spec.seed(), spec.shot().grain(), NOISE);
  }

  private static double clamp(double value, double least, double most) {
    return Math.max(least, Math.min(most, value));
  }

  public static LeadSolid[] leads(RowLayout row, SolderField solder) {
    LeadSolid[] leads = new LeadSolid[row.leads()];
    for (int i = 0; i < leads.length; i++) {
      JointPlan joint = row.spec.joints().get(i);
      boolean rests = joint.condition() == Condition.OPEN;
      double seat = rests ? solder.seat(i) : joint.pose().gapMm();
      leads[i] = new LeadSolid(row, i, seat + joint.pose().liftMm());
    }
    return leads;
  }

  static HeightMap heights(
      RowLayout row, Projection camera, Tracer tracer, BodyBox body, double cell) {
    HeightMap map = HeightMap.seen(row.spec.camera(), camera, SHADOW_MARGIN_MM, cell);
    double near = 30 * cell + 0.3;
    map.lastRow = (int) map.row(row.part.landAheadMm() + near + row.part.pitchMm());
    map.firstColumn = (int) map.column(-near - row.part.pitchMm());
    map.lastColumn =
        (int) map.column(row.part.landsAtMm()[row.leads() - 1] + near + row.part.pitchMm());
    for (int y = 0; y < map.height; y++) {
      for (int x = 0; x < map.width; x++) {
        int k = y * map.width + x;
        double h = body.heightAt(map.u(x), map.v(y));
        map.tall[k] = h > 0;
        map.busy[k] = tracer.crowded(map.u(x), map.v(y), near);
        map.z[k] = (float) (h > 0 ? h : tracer.heightAt(map.u(x), map.v(y)));
      }
    }
    return map;
  }

  public static float[][] look(CameraSpec size, Projection camera, Sight tracer, Shader shader) {
    int w = size.widthPx();
    int h = size.heightPx();
    float[][] planes = new float[3][w * h];
    Pixel pixel = new Pixel(camera, tracer, shader, samples(size));
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        double[] rgb = pixel.look(x, y);
        for (int c = 0; c < 3; c++) {
          planes[c][y * w + x] = (float) rgb[c];
        }
      }
    }
    return planes;
  }

  /** Lines of sight across a pixel: enough to see the grain and the edges at any scale. */
  private static int samples(CameraSpec size) {
    int sharp = size.pxPerMm() > 70 ? 2 : size.pxPerMm() > 35 ? 3 : 4;
    return size.lens().blurPx() > SOFT_PX ? 2 : sharp;
  }
}
