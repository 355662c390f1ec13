package leadlight.drill.pool;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.data.Hash;
import leadlight.model.Verdict;
import leadlight.model.row.RowOutcome;
import leadlight.record.JobRecord;
import leadlight.record.said.RecordedJoint;
import leadlight.record.said.RecordedRow;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import leadlight.text.Messages;

/** Joints of the shop's record whose truth was settled, at the bench or by people who agree. */
public final class RecordPool {

  private RecordPool() {}

  /**
   * The settled joints of the scorings that are meant; photos that are gone or were changed since
   * are left out.
   *
   * @param productClass only scorings in this class
   * @param words the language that is spoken
   */
  public static List<PoolJoint> read(
      JobRecord record, Search search, int productClass, Messages words) {
    List<PoolJoint> pool = new ArrayList<>();
    for (Scoring scoring : record.scorings(search.latestOnly())) {
      boolean usable =
          scoring.method().settings().productClass() == productClass && unchanged(scoring);
      RecordedRow row = usable ? record.row(scoring.id()) : null;
      if (row != null && row.outcome() instanceof RowOutcome.Found found) {
        add(scoring, row, found, words, pool);
      }
    }
    return pool;
  }

  private static boolean unchanged(Scoring scoring) {
    try {
      return Files.isRegularFile(scoring.photoPath())
          && Hash.sha256(scoring.photoPath()).equals(scoring.photo().sha256());
    } catch (IOException e) {
      return false;
    }
  }

  private static void add(
      Scoring scoring,
      RecordedRow row,
      RowOutcome.Found found,
      Messages words,
      List<PoolJoint> pool) {
    String limits = scoring.method().settings().acceptanceSet();
    PoolRow photo =
        new PoolRow(
            scoring.photoPath(),
            Optional.empty(),
            scoring.method().settings().row().pitchMm(),
            found,
            row.joints().stream().map(joint -> ToolSaid.of(joint.tool(), limits, words)).toList());
    for (RecordedJoint joint : row.joints()) {
      Settled.of(joint, words)
          .ifPresent(
              known -> pool.add(new PoolJoint(photo, joint.pin(), known, borderline(joint))));
    }
  }

  /** The tool was unsure, or a person overruled it. */
  private static boolean borderline(RecordedJoint joint) {
    Verdict tool = joint.tool().verdict();
    return tool == Verdict.UNJUDGED
        || tool == Verdict.PROCESS_INDICATOR
        || joint.overrules().stream().anyMatch(o -> o.verdict() != tool);
  }
}
