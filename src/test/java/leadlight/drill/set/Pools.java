package leadlight.drill.set;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.drill.pool.Known;
import leadlight.drill.pool.PoolJoint;
import leadlight.drill.pool.PoolRow;
import leadlight.model.BodySide;
import leadlight.model.FindingKind;
import leadlight.model.Homography;
import leadlight.model.row.RowOutcome;
import leadlight.trial.truth.TrueClass;

/** Joints to draw from whose pictures are not looked at. */
public final class Pools {

  private Pools() {}

  private static PoolRow row(String lamp) {
    RowOutcome.Found place =
        new RowOutcome.Found(
            new Homography(40, 0, 0, 0, 40, 0, 0, 0, 1),
            List.of(),
            20,
            0,
            40,
            BodySide.ABOVE,
            1,
            0,
            List.of());
    return new PoolRow(Path.of(lamp + ".jpg"), Optional.of(lamp), 0.5, place, List.of());
  }

  /** A joint; with findings it is a defect. */
  public static PoolJoint joint(int pin, String lamp, boolean borderline, FindingKind... findings) {
    TrueClass truth = findings.length > 0 ? TrueClass.DEFECT : TrueClass.ACCEPTABLE;
    return joint(pin, lamp, borderline, truth, findings);
  }

  static PoolJoint joint(
      int pin, String lamp, boolean borderline, TrueClass truth, FindingKind... findings) {
    Known known = new Known(truth, List.of(findings), OptionalInt.empty(), "simulated");
    return new PoolJoint(row(lamp), pin, known, borderline);
  }
}
