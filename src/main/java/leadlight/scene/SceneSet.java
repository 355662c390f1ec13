package leadlight.scene;

import leadlight.scene.draw.SceneMix;
import leadlight.scene.draw.SceneSampler;
import leadlight.scene.plan.SceneSpec;

/** A set of scenes drawn from a mix: each picture depends on mix, seed and its number alone. */
public final class SceneSet {

  private final SceneSampler sampler;

  /** Prepares a set. */
  public SceneSet(SceneMix mix, long seed) {
    this.sampler = new SceneSampler(mix, seed);
  }

  /** What one picture of the set is made of, numbered from 0. */
  public SceneSpec spec(int number) {
    return sampler.draw(number);
  }
}
