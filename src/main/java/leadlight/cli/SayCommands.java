package leadlight.cli;

import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.BenchResult;
import leadlight.record.BenchTest;
import leadlight.record.JobRecord;
import leadlight.record.Overrule;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What people add to the record: their own opinion, and what the bench said. */
final class SayCommands {

  private SayCommands() {}

  /** Which joint is spoken of. */
  static final class WhichJoint {

    @Parameters(index = "0", paramLabel = "NUMBER", description = "Number of the scoring.")
    private long scoring;

    @Parameters(index = "1", paramLabel = "PIN", description = "Pin, from 1.")
    private int pin;

    @Mixin private RecordOption record;

    @Mixin private Person person;
  }

  /** A person's opinion, kept beside the tool's. */
  @Command(
      name = "overrule",
      description = "Adds a person's opinion of a joint beside the tool's, with the reason.",
      mixinStandardHelpOptions = true)
  static final class OverruleCommand implements Callable<Integer> {

    @Mixin private WhichJoint which;

    @Parameters(
        index = "2",
        paramLabel = "VERDICT",
        description = "acceptable, process-indicator or defect.")
    private String verdict;

    @Option(names = "--finding", paramLabel = "KIND", description = "What is seen.")
    private String finding;

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why.")
    private String reason;

    @Override
    public Integer call() {
      Verdict said =
          Arrays.stream(Verdict.values())
              .filter(v -> v != Verdict.UNJUDGED && v.id().equals(verdict))
              .findFirst()
              .orElseThrow(
                  () ->
                      new UserError(
                          "VERDICT must be acceptable, process-indicator or defect, is "
                              + verdict));
      if (reason.isBlank()) {
        throw new UserError("--reason is empty; say why");
      }
      try (JobRecord record = which.record.existing()) {
        record.overrule(
            which.scoring,
            which.pin,
            new Overrule(
                said,
                Optional.ofNullable(finding).map(SearchOptions::kind),
                reason,
                which.person.name(),
                ZonedDateTime.now()));
      }
      return ExitStatus.GOOD.code();
    }
  }

  /** What the bench said. */
  @Command(
      name = "bench",
      description =
          "Adds what the bench said of a joint: prod (firm, moves), meter (open, short, ok).",
      mixinStandardHelpOptions = true)
  static final class BenchCommand implements Callable<Integer> {

    @Mixin private WhichJoint which;

    @Parameters(index = "2", paramLabel = "prod|meter", description = "How it was tried.")
    private BenchTest test;

    @Parameters(index = "3", paramLabel = "RESULT", description = "What it came to.")
    private String result;

    @Option(names = "--to", paramLabel = "PIN", description = "The meter's other pin.")
    private Integer other;

    @Override
    public Integer call() {
      String said = result.toLowerCase(Locale.ROOT);
      if (!test.results().contains(said)) {
        throw new UserError(
            test.id() + " comes to " + String.join(", ", test.results()) + ", not " + result);
      }
      if (other != null && test == BenchTest.PROD) {
        throw new UserError("--to goes with meter; a prod has no other pin");
      }
      try (JobRecord record = which.record.existing()) {
        record.bench(
            which.scoring,
            which.pin,
            new BenchResult(
                test,
                said,
                other == null ? OptionalInt.empty() : OptionalInt.of(other),
                which.person.name(),
                ZonedDateTime.now()));
      }
      return ExitStatus.GOOD.code();
    }
  }
}
