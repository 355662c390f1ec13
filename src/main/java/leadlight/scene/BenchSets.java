package leadlight.scene;

import java.util.ArrayList;
import java.util.List;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.chance.Dice;
import leadlight.scene.chance.Grain;
import leadlight.scene.draw.JointSampler;
import leadlight.scene.draw.SceneMix;
import leadlight.scene.draw.SceneSampler;
import leadlight.scene.plan.LampSpec;
import leadlight.scene.plan.SceneSpec;

/**
 * Photos of mock benches: one microscope, one lamp, one camera and one kind of part and board each.
 * From photo to photo the board is put down again, and the lamp and the focus wander a little. A
 * bench has rows known to be sound, rows set down and not soldered, and rows of which some joints
 * are faulty: NAME-sound-0, NAME-unsoldered-0, NAME-mixed-0 and so on.
 */
public final class BenchSets {

  /** Photos of each kind; four to enrol at most, and as many mixed ones to judge. */
  static final int EACH = 4;

  private static final double DEG = Math.PI / 180;

  private final SceneSampler sampler;
  private final SceneMix mix;
  private final long seed;

  /** Prepares the benches. */
  public BenchSets(SceneMix mix, long seed) {
    this.sampler = new SceneSampler(mix, seed);
    this.mix = mix;
    this.seed = seed;
  }

  /** The photos of one bench, numbered from 0. */
  public List<SceneSpec> bench(int number) {
    SceneSpec look = sampler.draw(number);
    List<SceneSpec> photos = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      for (int i = 0; i < EACH; i++) {
        String ending = "-" + kind.word + "-" + i;
        Dice dice = new Dice(Grain.mix(seed, number, ending.hashCode()));
        photos.add(photo(look, kind, ending, dice));
      }
    }
    return photos;
  }

  private enum Kind {
    SOUND("sound"),
    UNSOLDERED("unsoldered"),
    MIXED("mixed");

    private final String word;

    Kind(String word) {
      this.word = word;
    }
  }

  private SceneSpec photo(SceneSpec look, Kind kind, String ending, Dice dice) {
    JointSampler joints = new JointSampler(mix, dice, look.part());
    switch (kind) {
      case SOUND -> joints.drawSound();
      case UNSOLDERED -> joints.drawWhole(SceneMix.Fault.OPEN_RESTING, dice.chance(0.5));
      case MIXED -> joints.draw();
    }
    return new SceneSpec(
        look.name() + ending,
        dice.seed(),
        look.part(),
        look.body(),
        look.board(),
        look.metal(),
        look.lamps().stream().map(lamp -> wandered(lamp, dice)).toList(),
        putDownAgain(look.camera(), dice),
        joints.joints(),
        joints.bridges(),
        List.of());
  }

  private static LampSpec wandered(LampSpec lamp, Dice dice) {
    return lamp.shifted(dice.even(-1, 1), dice.even(-4, 4), dice.even(0.95, 1.05));
  }

  private static CameraSpec putDownAgain(CameraSpec was, Dice dice) {
    return new CameraSpec(
        was.widthPx(),
        was.heightPx(),
        was.pxPerMm() * dice.even(0.98, 1.02),
        was.aimAlongRowMm() + dice.even(-0.2, 0.2),
        was.aimAlongLeadMm() + dice.even(-0.2, 0.2),
        was.rotationRad() + dice.even(-3, 3) * DEG,
        was.tiltRad(),
        was.distanceMm(),
        was.lens().blurred(dice.even(0.85, 1.2)),
        was.sensor());
  }
}
