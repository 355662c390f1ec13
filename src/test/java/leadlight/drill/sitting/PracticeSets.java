package leadlight.drill.sitting;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Set;
import leadlight.drill.pool.Known;
import leadlight.drill.pool.Level;
import leadlight.drill.pool.ScenePool;
import leadlight.drill.set.MadeSet;
import leadlight.drill.set.PracticeSet;
import leadlight.drill.set.SetDraw;
import leadlight.drill.set.SetMaker;
import leadlight.drill.set.SetRequest;
import leadlight.drill.skill.DueAgain;
import leadlight.drill.skill.Offered;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.text.Messages;

/** PracticeSets of the sample pictures. */
public final class PracticeSets {

  public static final Path SAMPLES = Path.of("sample-images");
  public static final ZonedDateTime NOON =
      ZonedDateTime.of(2026, 3, 1, 12, 0, 0, 0, ZoneId.of("Europe/London"));

  private PracticeSets() {}

  public static SetRequest request(int specimens, boolean rows, long seed) {
    return new SetRequest(
        "samples", specimens, rows, Level.MIXED, Set.of(), Set.of(), 2, seed, Messages.of("en"));
  }

  public static MadeSet make(SetRequest request) {
    return SetMaker.make(
        new ScenePool(2, Messages.of("en")).read(SAMPLES),
        new SetDraw(request, new DueAgain(), Set.of()),
        request,
        AcceptanceSet.load(AcceptanceSet.DEFAULT_ID),
        done -> {});
  }

  /** The key that is right for a joint. */
  static String rightKey(PracticeSet.Spot spot) {
    Known known = spot.known().orElseThrow();
    return known.findings().isEmpty()
        ? "s"
        : "" + (Offered.KINDS.indexOf(known.findings().get(0)) + 1);
  }
}
