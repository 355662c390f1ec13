package leadlight.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.scene.chance.Dice;
import leadlight.scene.chance.Grain;
import leadlight.scene.draw.SceneMix;
import leadlight.scene.draw.SceneSampler;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.Push;
import leadlight.scene.plan.SceneSpec;
import leadlight.scene.plan.Shot;

/**
 * Sets of scenes: one row at rest, NAME-a, then photos in each of which a pick pushes one lead,
 * NAME-b and on; half of the pushed leads are loose where there are as many. Between the photos the
 * board was touched, focus and exposure set anew.
 */
public final class NudgeSets {

  private static final int PUSHES = 8;

  private final SceneSampler sampler;
  private final long seed;

  /** Prepares the sets. */
  public NudgeSets(SceneMix mix, long seed) {
    this.sampler = new SceneSampler(mix, seed);
    this.seed = seed;
  }

  /** The photos of one set, numbered from 0; the first is at rest. */
  public List<SceneSpec> set(int number) {
    SceneSpec row = sampler.draw(number);
    Dice dice = new Dice(Grain.mix(seed, number, "nudge".hashCode()));
    Picks picks = new Picks(row, dice);
    List<SceneSpec> shots = new ArrayList<>();
    shots.add(
        row.again("-a", row.lamps(), row.camera())
            .with(row.joints(), row.bridges(), row.dirt(), new Shot(0, true, null)));
    for (int land : picks.lands(PUSHES)) {
      Optional<Push> push = picks.push(land);
      if (push.isPresent()) {
        shots.add(pushed(row, push.get(), shots.size(), dice));
      }
    }
    return shots;
  }

  private static SceneSpec pushed(SceneSpec row, Push push, int shot, Dice dice) {
    List<JointPlan> joints = new ArrayList<>(row.joints());
    int i = push.land() - 1;
    joints.set(i, Picks.bent(row, joints.get(i), push.toeMm()));
    String ending = "-" + (char) ('a' + shot);
    return row.again(ending, row.lamps(), Restaged.TOUCHED.of(row.camera(), dice))
        .with(joints, row.bridges(), row.dirt(), new Shot(shot, false, push));
  }
}
