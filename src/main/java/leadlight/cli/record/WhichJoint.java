package leadlight.cli.record;

import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.OptionalInt;
import leadlight.app.output.Reports;
import leadlight.app.record.RecordLines;
import leadlight.cli.option.PageOptions;
import leadlight.cli.option.Person;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.connector.RowRequest;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.JobRecord;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which joint is spoken of, by whom; and whether the last word on it is taken back. */
final class WhichJoint {

  @Parameters(index = "0", paramLabel = "NUMBER", description = "Number of the scoring.")
  long scoring;

  @Parameters(index = "1", paramLabel = "PIN", description = "Pin, from 1.")
  int pin;

  @Option(
      names = "--take-back",
      description = "Take back the last one that stands at this pin; it is kept as taken back.")
  boolean takeBack;

  @Option(names = "--reason", paramLabel = "TEXT", defaultValue = "", description = "Why.")
  String reason;

  @Mixin private RecordOption record;

  @Mixin Person person;

  @Mixin private PageOptions pages;

  interface Change {
    void in(JobRecord record);
  }

  /** Makes the change, brings the results up to date, and says in one line what counts now. */
  Integer change(String what, Change change, Streams streams) {
    try (JobRecord open = record.existing()) {
      Verdict before = verdict(open);
      change.in(open);
      Verdict now = verdict(open);
      Reports.refresh(
              open, record.folder(), scoring, limits -> pages.context(limits, RowRequest.NONE))
          .ifPresent(line -> streams.err().println(line));
      streams
          .out()
          .println(
              "recorded: scoring %d pin %d %s (%s); %s"
                  .formatted(
                      scoring,
                      pin,
                      RecordLines.printable(what),
                      RecordLines.printable(person.name()),
                      before == now
                          ? "it stays " + now.id()
                          : "it was " + before.id() + " and is now " + now.id()));
    }
    return ExitStatus.GOOD.code();
  }

  private Verdict verdict(JobRecord open) {
    return open.row(open.scoring(scoring).id()).joints().stream()
        .filter(joint -> joint.pin() == pin)
        .findFirst()
        .orElseThrow(
            () ->
                new UserError(
                    "scoring %d has no pin %d; \"leadlight record show %d\" lists them"
                        .formatted(scoring, pin, scoring)))
        .verdict();
  }

  JobRecord.Withdrawal withdrawal() {
    return new JobRecord.Withdrawal(reason, person.name(), ZonedDateTime.now());
  }

  Integer takeBackBench(BenchTest test, Streams streams) {
    return change(
        test.id() + " result taken back",
        open -> open.takeBackBench(scoring, pin, test, withdrawal()),
        streams);
  }

  Integer bench(BenchTest test, String result, OptionalInt other, Streams streams) {
    String said = result.toLowerCase(Locale.ROOT);
    if (!test.results().contains(said)) {
      throw new UserError(
          test.id() + " comes to " + String.join(", ", test.results()) + ", not " + result);
    }
    BenchResult made = new BenchResult(test, said, other, person.name(), ZonedDateTime.now());
    return change(RecordLines.result(made), open -> open.bench(scoring, pin, made), streams);
  }

  static void refuse(String said) {
    throw new UserError("give " + said + " or --take-back, not both");
  }

  static UserError missing(String what) {
    return new UserError(what + "; or give --take-back to take the last one back");
  }
}
