package leadlight.scene.legs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leadlight.scene.camera.Projection;
import leadlight.scene.camera.Sensor;
import leadlight.scene.light.HeightMap;
import leadlight.scene.light.Horizon;
import leadlight.scene.light.Light;
import leadlight.scene.light.Shader;
import leadlight.scene.render.SceneRenderer;

/** Renders a scene of anchor legs on the calling thread, by the same steps as a row's. */
public final class LegRenderer {

  private static final double AROUND_MM = 0.5;

  private LegRenderer() {}

  /** Renders one scene. */
  public static LegScene render(LegSceneSpec spec) {
    Projection camera = new Projection(spec.camera());
    double pixel = 1 / spec.camera().pxPerMm();
    LegShell shell = new LegShell(spec);
    List<LegField> solder = new ArrayList<>();
    for (LegPlan leg : spec.legs()) {
      double least = Math.min(leg.land().widthMm(), leg.land().heightMm()) / 120;
      solder.add(new LegField(leg, spec.seed() + 500, Math.max(least, 0.8 * pixel)));
    }
    LegTracer tracer = new LegTracer(spec, shell, solder);
    Light light = new Light(spec.lamps(), camera);
    HeightMap map = heights(spec, camera, tracer, shell, 1.5 * pixel);
    Horizon horizon = new Horizon(map, shell, light);
    Shader shader = new Shader(spec.metal(), spec.mask(), light, camera.toRow(0, 0, 1), horizon);
    float[][] planes = SceneRenderer.look(spec.camera(), camera, tracer, shader);
    return new LegScene(
        spec,
        new Sensor(spec.camera(), spec.seed()).expose(planes),
        LegSceneTruth.of(spec, camera, shell));
  }

  private static HeightMap heights(
      LegSceneSpec spec, Projection camera, LegTracer tracer, LegShell shell, double cell) {
    HeightMap map = HeightMap.seen(spec.camera(), camera, AROUND_MM, cell);
    map.lastRow = -1;
    Arrays.fill(map.busy, false);
    for (int y = 0; y < map.height; y++) {
      for (int x = 0; x < map.width; x++) {
        int k = y * map.width + x;
        double u = map.u(x);
        double v = map.v(y);
        map.tall[k] = shell.hides(u, v);
        map.busy[k] = tracer.near(u, v) >= 0;
        map.z[k] = (float) tracer.heightAt(u, v);
      }
    }
    return map;
  }
}
