package leadlight.trial.sets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlight.model.FindingKind;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.Besides;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.statistics.ClusterRate;
import leadlight.trial.TrialTable;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.PhotoTruth;

/** How right it was to say that solder came, or did not, by photos before and after. */
public final class PlacedTally {

  private final Map<String, Integer> refused = new TreeMap<>();
  private final List<String> wrongRows = new ArrayList<>();
  private final List<ClusterRate.Builder> called = twice();
  private final List<ClusterRate.Builder> unclear = twice();
  private int pairs;
  private int compared;

  private static List<ClusterRate.Builder> twice() {
    return List.of(new ClusterRate.Builder(), new ClusterRate.Builder());
  }

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
        String pair = after.photo().file();
        called.get(which).add(pair, open(after.joints().get(joint.pin() - 1)));
        unclear.get(which).add(pair, change.reason().isPresent());
      }
    }
  }

  /** Whether the pair of photos made it an open. */
  private static boolean open(GradedJoint joint) {
    return joint.findings().stream()
        .anyMatch(f -> f.measured().stream().anyMatch(NoteOfPhoto.Unchanged.class::isInstance));
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
    lines.add("95 % intervals by pair of photos (Wilson at the effective number of joints)");
    return lines;
  }

  private String row(String name, int which) {
    ClusterRate open = called.get(which).rate();
    return "| %s | %d | %s | %s |"
        .formatted(
            name,
            open.of(),
            TrialTable.plain(open, 1),
            TrialTable.plain(unclear.get(which).rate(), 1));
  }
}
