package leadlight.app.trial;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.remark.Note;
import leadlight.model.result.Nudge.Motion;
import leadlight.model.result.Nudge.Moved;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.motion.NudgeJudge;
import leadlight.photo.Deadline;
import leadlight.photo.Photo;
import leadlight.pipeline.InOrder;
import leadlight.row.RowFinder;
import leadlight.trial.sets.NudgeTally;
import leadlight.trial.truth.NudgeTruth;
import leadlight.vision.Threads;

/** Counts nudges whose truth is known. */
public final class NudgeTrial {

  private NudgeTrial() {}

  /** The table of a folder. */
  public static List<String> lines(Path folder, int threads) {
    Threads.set(1);
    NudgeTally tally = new NudgeTally();
    InOrder.each(
        NudgeTruth.of(folder), threads, NudgeTrial::outcomes, some -> some.forEach(tally::add));
    return tally.lines();
  }

  private static List<NudgeTally.Outcome> outcomes(NudgeTruth set) {
    RowSpec spec =
        RowSpec.plain(set.leads(), set.pitchMm(), OptionalDouble.empty(), OptionalDouble.empty());
    try (Photo rest = new Deadline().read(set.rest())) {
      return new RowFinder().find(rest.frame(), spec, Optional.empty())
              instanceof RowOutcome.Found row
          ? set.pushed().stream().map(truth -> read(rest, row, spec, truth)).toList()
          : set.pushed().stream().map(NudgeTrial::rowless).toList();
    }
  }

  private static NudgeTally.Outcome rowless(NudgeTruth.Pushed truth) {
    return new NudgeTally.Outcome(truth, 0, 0, Motion.CANNOT_TELL, 0, 0, "no row at rest");
  }

  private static NudgeTally.Outcome read(
      Photo rest, RowOutcome.Found row, RowSpec spec, NudgeTruth.Pushed truth) {
    NudgeJudge reader = new NudgeJudge(rest.frame(), row, spec);
    try (Photo photo = new Deadline().read(truth.photo())) {
      NudgeJudge.Read read = reader.read(photo.frame(), photo.info().file(), photo.info().sha256());
      Optional<Moved> lead = read.lead();
      return new NudgeTally.Outcome(
          truth,
          row.pitchPx(),
          read.pushed().touchedPin().orElse(0),
          lead.map(Moved::motion).orElse(Motion.CANNOT_TELL),
          Math.abs(lead.map(l -> l.shiftUm().orElse(0)).orElse(0.0)),
          lead.map(l -> l.uUm().orElse(0)).orElse(0.0),
          lead.flatMap(Moved::reason).or(() -> read.pushed().reason()).map(Note::code).orElse(""));
    }
  }
}
