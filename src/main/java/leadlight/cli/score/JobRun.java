package leadlight.cli.score;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import leadlight.cli.option.JobOptions;
import leadlight.cli.option.Reports;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.RecordLines;
import leadlight.enrol.Bench;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.JobScorer;
import leadlight.life.PhotoShelf;
import leadlight.model.UserError;
import leadlight.model.result.Settings;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Subject;
import leadlight.report.ReportWriter;

/** Scores photos of a job into the record, and reports each as it stands. */
final class JobRun {

  private final Settings settings;
  private final AcceptanceSet limits;
  private final ReportWriter writer;
  private final Path out;
  private final JobOptions options;
  private final ScoreTalk talk;
  private final Optional<Bench> bench;

  JobRun(
      Settings settings,
      AcceptanceSet limits,
      ReportWriter writer,
      Path out,
      JobOptions options,
      ScoreTalk talk,
      Optional<Bench> bench) {
    this.settings = settings;
    this.limits = limits;
    this.writer = writer;
    this.out = out;
    this.options = options;
    this.talk = talk;
    this.bench = bench;
  }

  /** The worst status of all. */
  ExitStatus score(List<Path> photos, Subject asked) {
    ExitStatus worst = ExitStatus.GOOD;
    try (JobRecord record = options.record().open()) {
      JobScorer scorer =
          new JobScorer(
              new JobScorer.Desk(
                  limits,
                  Reports.context(limits),
                  writer,
                  record,
                  out,
                  options.person(),
                  Clock.systemDefaultZone(),
                  bench),
              settings);
      PhotoShelf shelf = new PhotoShelf(options.record().folder());
      Subject subject = options.in(record, asked);
      for (Path photo : photos) {
        worst = worst.worse(one(photo, subject, scorer, shelf));
      }
    }
    return worst;
  }

  private ExitStatus one(Path photo, Subject subject, JobScorer scorer, PhotoShelf shelf) {
    try {
      JobScorer.Kept kept = scorer.score(options.keep() ? shelf.keep(photo) : photo, subject);
      talk.of(kept.scored(), kept.files());
      talk.line(
          "  recorded as scoring %d: %s, %s, %s"
              .formatted(
                  kept.scoring(),
                  RecordLines.printable(subject.job()),
                  RecordLines.board(subject.board()),
                  subject.words()));
      return ExitStatus.of(kept.scored().verdict());
    } catch (UserError e) {
      return talk.refused(e);
    }
  }
}
