package leadlight.drill.pool;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leadlight.drill.skill.DrillRules;
import leadlight.model.FindingKind;
import leadlight.model.UserError;
import leadlight.text.Messages;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TrueClass;
import leadlight.trial.truth.TruthFolder;
import leadlight.trial.truth.TruthRow;

/** Joints of rendered scenes, whose truth is exact. */
public final class ScenePool {

  private final DrillRules rules = DrillRules.builtIn();
  private final int productClass;
  private final Messages words;

  /**
   * Prepares reading.
   *
   * @param productClass 1, 2 or 3. Truth files state class 2. Class 1 has the same limits for what
   *     a scene varies; for class 3 the side overhang is judged anew from its exact value
   * @param words the language that is spoken
   */
  public ScenePool(int productClass, Messages words) {
    this.productClass = productClass;
    this.words = words;
  }

  /**
   * All joints of the photos of a folder that have truth files; photos that are too small or too
   * blurred to show them are left out.
   *
   * @throws UserError if there are none
   */
  public List<PoolJoint> read(Path folder) {
    List<PoolJoint> pool = new ArrayList<>();
    for (TrialPhoto photo : TruthFolder.read(folder)) {
      photo.truth().filter(this::isFit).ifPresent(truth -> add(photo.file(), truth, pool));
    }
    if (pool.isEmpty()) {
      throw new UserError(
          folder + ": no photo with exact truth that shows its joints; name a folder of scenes");
    }
    return pool;
  }

  /** Nobody is asked for what a photo cannot show. */
  private boolean isFit(PhotoTruth truth) {
    return truth.pitchPx() >= rules.fit().leastPxPerPitch()
        && truth.edgeBlurPx() <= rules.fit().mostBlurOfPitch() * truth.pitchPx();
  }

  private void add(Path file, PhotoTruth truth, List<PoolJoint> pool) {
    PoolRow row =
        new PoolRow(
            file, Optional.of(truth.lamp()), truth.pitchMm(), TruthRow.of(truth), List.of());
    for (JointTruth joint : truth.joints()) {
      pool.add(new PoolJoint(row, joint.pin(), known(joint, truth.lamp()), borderline(joint)));
    }
  }

  private Known known(JointTruth joint, String lamp) {
    List<FindingKind> findings =
        new ArrayList<>(joint.findings().stream().map(ScenePool::kind).toList());
    TrueClass verdict = joint.class2();
    if (productClass == 3 && joint.sideOverhangOfLeadWidth().isPresent()) {
      double overhang = joint.sideOverhangOfLeadWidth().getAsDouble();
      if (overhang > rules.class3Overhang().defect()) {
        verdict = TrueClass.DEFECT;
        if (!findings.contains(FindingKind.SIDE_OVERHANG)) {
          findings.add(FindingKind.SIDE_OVERHANG);
        }
      } else if (overhang > rules.class3Overhang().acceptable()
          && verdict == TrueClass.ACCEPTABLE) {
        verdict = TrueClass.LIMIT;
      }
    }
    return new Known(
        verdict,
        verdict == TrueClass.ACCEPTABLE ? List.of() : findings,
        joint.bridgeTo(),
        words.get("drill.how.scene", lamp));
  }

  private boolean borderline(JointTruth joint) {
    double[] overhang = rules.borderline().overhangOfLeadWidth();
    double[] bare = rules.borderline().bareShareOfFoot();
    return joint.class2() == TrueClass.LIMIT
        || joint.sideOverhangOfLeadWidth().stream().anyMatch(o -> within(o, overhang))
        || joint.wetted().stream().anyMatch(w -> within(1 - (w.to() - w.from()), bare));
  }

  private static boolean within(double value, double[] range) {
    return value >= range[0] && value <= range[1];
  }

  private static FindingKind kind(String id) {
    return Arrays.stream(FindingKind.values())
        .filter(kind -> kind.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new UserError("a truth file names an unknown finding: " + id));
  }
}
