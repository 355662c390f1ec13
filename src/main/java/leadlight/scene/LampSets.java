package leadlight.scene;

import java.util.ArrayList;
import java.util.List;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.chance.Dice;
import leadlight.scene.chance.Grain;
import leadlight.scene.draw.LampSampler;
import leadlight.scene.draw.SceneMix;
import leadlight.scene.draw.SceneSampler;
import leadlight.scene.plan.LampSpec;
import leadlight.scene.plan.SceneSpec;

/**
 * Sets of scenes: one row, soldered, under three lamps, the board put down again for each photo:
 * NAME-a, NAME-b and NAME-c.
 */
public final class LampSets {

  private static final List<String> SHOTS = List.of("-a", "-b", "-c");

  private final SceneSampler sampler;
  private final SceneMix mix;
  private final long seed;

  /** Prepares the sets. */
  public LampSets(SceneMix mix, long seed) {
    this.sampler = new SceneSampler(mix, seed);
    this.mix = mix;
    this.seed = seed;
  }

  /** The photos of one set, numbered from 0; the first is the scene as it was drawn. */
  public List<SceneSpec> set(int number) {
    SceneSpec drawn = sampler.draw(number);
    Dice dice = new Dice(Grain.mix(seed, number, "lamps".hashCode()));
    List<SceneSpec> shots = new ArrayList<>();
    for (String shot : SHOTS) {
      boolean first = shots.isEmpty();
      CameraSpec camera = first ? drawn.camera() : PlacedPairs.moved(drawn.camera(), dice);
      List<LampSpec> lamps =
          first
              ? drawn.lamps()
              : new LampSampler(dice, camera.rotationRad()).draw(dice.pick(mix.lamp()));
      shots.add(drawn.again(shot, lamps, camera));
    }
    return shots;
  }
}
