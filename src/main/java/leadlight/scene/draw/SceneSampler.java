package leadlight.scene.draw;

import java.util.List;
import java.util.Optional;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.chance.Dice;
import leadlight.scene.chance.Grain;
import leadlight.scene.plan.BoardSpec;
import leadlight.scene.plan.BodySpec;
import leadlight.scene.plan.LampSpec;
import leadlight.scene.plan.MetalSpec;
import leadlight.scene.plan.PartSpec;
import leadlight.scene.plan.SceneSpec;

/** Draws scenes from a mix: the same mix, seed and number give the same scene. */
public final class SceneSampler {

  private static final double DEG = Math.PI / 180;

  private final SceneMix mix;
  private final long seed;

  public SceneSampler(SceneMix mix, long seed) {
    this.mix = mix;
    this.seed = seed;
  }

  public SceneSpec draw(int number) {
    Dice dice = new Dice(Grain.mix(seed, number, mix.name().hashCode()));
    Optional<SceneMix.Whole> whole = mix.whole().filter(w -> dice.chance(w.share()));
    PartSpec part = new PartSampler(mix, dice).draw();
    double tilt = dice.even(mix.tiltDeg()) * DEG;
    BoardSampler boards = new BoardSampler(mix, dice, part);
    Optional<SceneMix.Fault> fault = whole.map(w -> dice.pick(w.fault()));
    boolean leadless = fault.filter(f -> f == SceneMix.Fault.MISSING).isPresent();
    BodySpec drawn = boards.body(tilt);
    BodySpec body =
        leadless && dice.chance(whole.orElseThrow().bodyless()) ? drawn.absent() : drawn;
    BoardSpec board = boards.board(body);
    MetalSpec metal = boards.metal();
    CameraSpec camera = new CameraSampler(mix, dice, part).draw(body, board.mask(), tilt);
    List<LampSpec> lamps = new LampSampler(dice, camera.rotationRad()).draw(dice.pick(mix.lamp()));
    JointSampler joints = new JointSampler(mix, dice, part);
    if (fault.isPresent()) {
      joints.drawWhole(fault.get(), dice.chance(whole.orElseThrow().alike()));
    } else {
      joints.draw();
    }
    return new SceneSpec(
        String.format("%s-%05d", mix.name(), number),
        dice.seed(),
        part,
        body,
        board,
        metal,
        lamps,
        camera,
        joints.joints(),
        joints.bridges(),
        boards.dirt(body));
  }
}
