package leadlight.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlight.model.Besides;
import leadlight.model.FindingKind;
import leadlight.model.GradedJoint;
import leadlight.model.RowOutcome;
import leadlight.model.ScoredPhoto;

/** How right it was to say that solder came, or did not, by photos before and after. */
public final class PlacedTally {

  private static final double HALF = 0.5;

  private final Map<String, Integer> refused = new TreeMap<>();
  private final List<String> wrongRows = new ArrayList<>();
  private final int[] called = new int[2];
  private final int[] unclear = new int[2];
  private final int[] all = new int[2];
  private int pairs;
  private int compared;

  /** Adds a pair; what is open after was left unchanged. */
  public void add(PhotoTruth truth, ScoredPhoto after, Besides besides, String refusedBecause) {
    pairs++;
    if (!refusedBecause.isEmpty() || !(after.row() instanceof RowOutcome.Found)) {
      refused.merge(refusedBecause, 1, Integer::sum);
      return;
    }
    if (Comparison.of(truth, after).row() != RowResult.RIGHT) {
      wrongRows.add(after.photo().file());
      return;
    }
    compared++;
    for (JointTruth joint : truth.joints()) {
      if (!joint.condition().equals(FindingKind.MISSING_LEAD.id())) {
        int which = joint.condition().equals("open") ? 0 : 1;
        Besides.Change change = besides.changes().get(joint.pin() - 1);
        all[which]++;
        called[which] += open(after.joints().get(joint.pin() - 1), change) ? 1 : 0;
        unclear[which] += change.reason().isPresent() ? 1 : 0;
      }
    }
  }

  /** Whether the pair of photos made it an open. */
  private static boolean open(GradedJoint joint, Besides.Change change) {
    return change.reason().isEmpty()
        && change.soldered().orElse(1) < HALF
        && joint.findings().stream().anyMatch(f -> f.kind() == FindingKind.OPEN);
  }

  /** The table. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("pairs: " + pairs + ", compared " + compared + ", refused " + refused);
    lines.add("rows wrong: " + wrongRows);
    lines.add("| truth | joints | called unchanged, hence open | unclear |");
    lines.add("|---|---|---|---|");
    lines.add(row("unchanged", 0));
    lines.add(row("soldered", 1));
    return lines;
  }

  private String row(String name, int which) {
    return "| %s | %d | %s | %s |"
        .formatted(
            name,
            all[which],
            TrialTable.plain(called[which], all[which], 1),
            TrialTable.plain(unclear[which], all[which], 1));
  }
}
