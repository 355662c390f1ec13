package leadlight.scene;

import java.util.ArrayList;
import java.util.List;
import leadlight.scene.chance.Dice;
import leadlight.scene.chance.Grain;
import leadlight.scene.draw.SceneMix;
import leadlight.scene.draw.SceneSampler;
import leadlight.scene.plan.SceneSpec;
import leadlight.scene.plan.Shot;

/** Bursts of scenes: one row under a microscope that stands fixed, frame after frame. */
public final class BurstSets {

  private static final List<String> FRAMES = List.of("-a", "-b", "-c", "-d", "-e");

  private final SceneSampler sampler;
  private final long seed;

  /** Prepares the bursts. */
  public BurstSets(SceneMix mix, long seed) {
    this.sampler = new SceneSampler(mix, seed);
    this.seed = seed;
  }

  /** The frames of one burst, numbered from 0. */
  public List<SceneSpec> set(int number) {
    SceneSpec row = sampler.draw(number);
    Dice dice = new Dice(Grain.mix(seed, number, "burst".hashCode()));
    List<SceneSpec> frames = new ArrayList<>();
    for (String frame : FRAMES) {
      Shot shot = new Shot(frames.size(), false, null);
      frames.add(
          row.again(frame, row.lamps(), Restaged.FIXED.of(row.camera(), dice))
              .with(row.joints(), row.bridges(), row.dirt(), shot));
    }
    return frames;
  }
}
