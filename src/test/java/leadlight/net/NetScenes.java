package leadlight.net;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import leadlight.data.DataFile;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.draw.SceneMix;
import leadlight.scene.draw.SceneSampler;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.SceneSpec;
import leadlight.scene.render.Scene;
import leadlight.scene.render.SceneRenderer;

/**
 * Draws the pictures of the net anew. They are kept, so that a change of the renderer does not move
 * the bands; run this only to change the net.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.mainClass=leadlight.net.NetScenes -Dexec.args="FOLDER"
 * </pre>
 */
public final class NetScenes {

  private static final Path MIX = Path.of("src/test/resources/leadlight/net/mix-net.json");

  /** Of no trial and no training. */
  private static final long SEED = 20261127;

  private static final int ORDINARY = 24;
  private static final int EACH_BAD = 4;
  private static final int EACH_TOLD_WRONG = 6;

  private final SceneSampler set = new SceneSampler(SceneMix.read(MIX), SEED);
  private final Path folder;
  private final List<String> told = new ArrayList<>(List.of("picture,leads,pitch_mm"));
  private int next;

  private NetScenes(Path folder) {
    this.folder = folder;
  }

  /** Draws all; argument: an existing folder. */
  public static void main(String[] args) throws IOException {
    new NetScenes(Path.of(args[0])).draw();
  }

  private void draw() throws IOException {
    for (int i = 0; i < ORDINARY; i++) {
      SceneSpec spec = set.draw(next++);
      withTruth(renamed(spec, name("ordinary", i), spec.joints()));
    }
    for (BadThroughout way : BadThroughout.values()) {
      for (int i = 0; i < EACH_BAD; i++) {
        SceneSpec spec = set.draw(next++);
        withTruth(way.of(spec, name(way.kind(), i), camera(spec)));
      }
    }
    for (int i = 0; i < EACH_TOLD_WRONG; i++) {
      cutShort(name("cut-short", i));
      toldWrong(name("told-more", i), 1, false);
      toldWrong(name("told-fewer", i), -1, i % 2 == 0);
    }
    for (NoRow thing : NoRow.values()) {
      String name = thing.name().toLowerCase(Locale.ROOT).replace('_', '-');
      picture("no-row-" + name, thing.draw());
      tell("no-row-" + name, thing.things(), 0.5);
    }
    Files.writeString(folder.resolve("told.csv"), String.join("\n", told) + "\n");
  }

  /** The frame ends in the gap before the last lead, or half-way through it. */
  private void cutShort(String name) throws IOException {
    SceneSpec spec = plain();
    Scene scene = SceneRenderer.render(renamed(spec, name, spec.joints()));
    int last = scene.truth().joints().size() - 1;
    double end = scene.truth().joints().get(last).landToePx()[0];
    double before = scene.truth().joints().get(last - 1).landToePx()[0];
    int cut = (int) Math.round(next % 2 == 0 ? end : (end + before) / 2);
    BufferedImage whole = scene.picture();
    picture(
        name,
        end > before
            ? whole.getSubimage(0, 0, cut, whole.getHeight())
            : whole.getSubimage(cut, 0, whole.getWidth() - cut, whole.getHeight()));
    tell(name, last + 1, spec.part().pitchMm());
  }

  private void toldWrong(String name, int more, boolean badEnd) throws IOException {
    SceneSpec spec = plain();
    List<JointPlan> joints = new ArrayList<>(spec.joints());
    if (badEnd) {
      int last = joints.size() - 1;
      joints.set(last, BadThroughout.OPEN.joint(joints.get(last), 0.5, 2));
    }
    picture(name, SceneRenderer.render(renamed(spec, name, joints)).picture());
    tell(name, joints.size() + more, spec.part().pitchMm());
  }

  /** The next scene that is of no connector and lies along the picture. */
  private SceneSpec plain() {
    SceneSpec spec = set.draw(next++);
    double turn = Math.abs(Math.sin(spec.camera().rotationRad()));
    return spec.part().connector() == null && turn < 0.5 ? spec : plain();
  }

  private static SceneSpec renamed(SceneSpec spec, String name, List<JointPlan> joints) {
    boolean openEnd = joints.get(joints.size() - 1).condition() == Condition.OPEN;
    return new SceneSpec(
        name,
        spec.seed(),
        spec.part(),
        spec.body(),
        spec.board(),
        spec.metal(),
        spec.lamps(),
        camera(spec),
        joints,
        openEnd ? List.of() : spec.bridges(),
        spec.dirt());
  }

  /** Small files. */
  private static CameraSpec camera(SceneSpec spec) {
    CameraSpec was = spec.camera();
    CameraSpec.Sensing sensor = was.sensor();
    return new CameraSpec(
        was.widthPx(),
        was.heightPx(),
        was.pxPerMm(),
        was.aimAlongRowMm(),
        was.aimAlongLeadMm(),
        was.rotationRad(),
        was.tiltRad(),
        was.distanceMm(),
        was.lens(),
        new CameraSpec.Sensing(
            sensor.mosaic(),
            sensor.noise(),
            sensor.redGain(),
            sensor.blueGain(),
            sensor.exposure(),
            sensor.contrast(),
            sensor.saturation(),
            sensor.sharpen(),
            Math.min(0.9, sensor.jpegQuality())));
  }

  private void withTruth(SceneSpec spec) throws IOException {
    Scene scene = SceneRenderer.render(spec);
    picture(spec.name(), scene.picture());
    DataFile.write(folder.resolve(spec.name() + ".truth.json"), scene.truth());
  }

  private void picture(String name, BufferedImage picture) throws IOException {
    ImageIO.write(picture, "jpg", folder.resolve(name + ".jpg").toFile());
  }

  private void tell(String name, int leads, double pitchMm) {
    told.add(name + "," + leads + "," + pitchMm);
  }

  private static String name(String kind, int number) {
    return String.format(Locale.ROOT, "%s-%02d", kind, number);
  }
}
