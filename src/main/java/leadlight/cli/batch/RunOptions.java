package leadlight.cli.batch;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import leadlight.app.output.FaultLog;
import leadlight.app.output.Reports;
import leadlight.app.score.ResultPlace;
import leadlight.batch.RunSetup;
import leadlight.batch.list.Defaults;
import leadlight.cli.bench.BenchOption;
import leadlight.cli.option.BodyOption;
import leadlight.cli.option.GuardedLimits;
import leadlight.cli.option.PageOptions;
import leadlight.cli.option.Person;
import leadlight.cli.option.ProductClass;
import leadlight.cli.option.ReaderOption;
import leadlight.cli.option.RecordOption;
import leadlight.cli.option.RowOptions;
import leadlight.enrol.Bench;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.PhotoShelf;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.model.result.Settings;
import leadlight.model.row.RowHint;
import leadlight.page.PhotoPage;
import leadlight.record.JobRecord;
import leadlight.text.Messages;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What batch and watch ask for alike. */
final class RunOptions {

  @Mixin private ProductClass productClass;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports",
      description = "The run's own folder is made in this one (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Mixin private ReaderOption reader;

  @Mixin private BenchOption bench;

  @Mixin private RecordOption record;

  @Mixin private RowOptions row;

  @Mixin private BodyOption body;

  @Mixin private GuardedLimits limits;

  @Mixin private PageOptions pages;

  @Mixin private Person person;

  Path out() {
    return out;
  }

  Messages words() {
    return pages.words();
  }

  JobRecord record() {
    return record.open();
  }

  /** What lies beside the record. */
  PhotoShelf shelf() {
    return new PhotoShelf(record.folder());
  }

  Defaults defaults() {
    return new Defaults(row.request(), body.side(), productClass.number());
  }

  /** What is asked for, in words: a run that was broken off is known again by them. */
  String how() {
    return defaults().words()
        + (reader.opinions() == Opinions.MEASURES ? ", without second reader" : "")
        + bench().map(it -> ", bench " + it.identity()).orElse("");
  }

  /** The same asked of one row whose leads are pushed. */
  PushedLeads.Sitting sitting(Path folder, Path rest) {
    AcceptanceSet set = limits.load();
    if (bench.given()) {
      throw new UserError("--bench judges one photo by itself: leave it out with --nudge");
    }
    Settings settings =
        new Settings(
            row.spec(),
            productClass.number(),
            set.id(),
            RowHint.of(Optional.empty(), body.side()),
            reader.opinions());
    ResultPlace place = new ResultPlace(out, record.place());
    return new PushedLeads.Sitting(folder, rest, settings, set, row.request(), pages, place);
  }

  private Optional<Bench> bench() {
    return bench.bench(reader.opinions());
  }

  RunSetup setup(int threads, boolean again) {
    AcceptanceSet set = limits.load();
    return new RunSetup(
        set,
        reader.opinions(),
        bench(),
        Reports.context(set, pages.words()),
        new PhotoPage(pages.context(set, row.request()))::html,
        person.name(),
        again,
        threads,
        Clock.systemDefaultZone(),
        FaultLog::write);
  }
}
