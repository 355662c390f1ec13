package leadlight.cli.record;

import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import leadlight.cli.option.SearchOptions;
import leadlight.cli.terminal.Streams;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.said.BenchTest;
import leadlight.record.said.Overrule;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What people add to the record of a joint: their own opinion, and what the bench said. */
public final class SayCommands {

  private SayCommands() {}

  /** A person's opinion, kept beside the tool's. */
  @Command(
      name = "overrule",
      description = "Adds a person's opinion of a joint beside the tool's, with the reason.",
      mixinStandardHelpOptions = true)
  public static final class OverruleCommand implements Callable<Integer> {

    private final Streams streams;

    @Mixin private WhichJoint which;

    @Parameters(
        index = "2",
        arity = "0..1",
        paramLabel = "VERDICT",
        description = "acceptable, process-indicator or defect.")
    private Optional<String> verdict = Optional.empty();

    @Option(names = "--finding", paramLabel = "KIND", description = "What is seen.")
    private String finding;

    public OverruleCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      if (which.takeBack) {
        verdict.ifPresent(WhichJoint::refuse);
        return which.change(
            "overrule taken back",
            open -> open.takeBackOverrule(which.scoring, which.pin, which.withdrawal()),
            streams);
      }
      String word =
          verdict.orElseThrow(
              () ->
                  WhichJoint.missing("say acceptable, process-indicator or defect behind the pin"));
      if (which.reason.isBlank()) {
        throw new UserError("--reason is empty; say why");
      }
      Overrule overrule =
          new Overrule(
              said(word),
              Optional.ofNullable(finding).map(SearchOptions::kind),
              which.reason,
              which.person.name(),
              ZonedDateTime.now());
      return which.change(
          "overruled as " + word,
          open -> open.overrule(which.scoring, which.pin, overrule),
          streams);
    }

    private static Verdict said(String word) {
      return Arrays.stream(Verdict.values())
          .filter(v -> v != Verdict.UNJUDGED && v.id().equals(word))
          .findFirst()
          .orElseThrow(
              () ->
                  new UserError(
                      "VERDICT must be acceptable, process-indicator or defect, is " + word));
    }
  }

  /** What a probe said. */
  @Command(
      name = "prod",
      description = {
        "Adds what a prod said of a joint: firm or moves.",
        "A lead that moves is open, whatever a photo looks like; one that is firm is not open, and"
            + " nothing else."
      },
      mixinStandardHelpOptions = true)
  public static final class ProdCommand implements Callable<Integer> {

    private final Streams streams;

    @Mixin private WhichJoint which;

    @Parameters(index = "2", arity = "0..1", paramLabel = "firm|moves", description = "The result.")
    private Optional<String> result = Optional.empty();

    public ProdCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      if (which.takeBack) {
        result.ifPresent(WhichJoint::refuse);
        return which.takeBackBench(BenchTest.PROD, streams);
      }
      String said =
          result.orElseThrow(() -> WhichJoint.missing("say firm or moves behind the pin"));
      return which.bench(BenchTest.PROD, said, OptionalInt.empty(), streams);
    }
  }

  /** What a meter said. */
  @Command(
      name = "meter",
      description = {
        "Adds what a meter said of a joint.",
        "Put to the joint alone: ok (connected) or open. With --other-pin PIN: ok (no connection"
            + " between the two) or short."
      },
      mixinStandardHelpOptions = true)
  public static final class MeterCommand implements Callable<Integer> {

    private final Streams streams;

    @Mixin private WhichJoint which;

    @Parameters(
        index = "2",
        arity = "0..1",
        paramLabel = "ok|open|short",
        description = "The result.")
    private Optional<String> result = Optional.empty();

    @Option(
        names = "--other-pin",
        paramLabel = "PIN",
        description = "The other pin that the meter was put to.")
    private Integer other;

    public MeterCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      if (which.takeBack) {
        result.ifPresent(WhichJoint::refuse);
        return which.takeBackBench(BenchTest.METER, streams);
      }
      String said =
          result.orElseThrow(() -> WhichJoint.missing("say ok, open or short behind the pin"));
      if (other != null && said.equalsIgnoreCase("open")) {
        throw new UserError(
            "between two pins say ok (no connection) or short; open is of a joint alone");
      }
      if (other == null && said.equalsIgnoreCase("short")) {
        throw new UserError("a short is between two pins: name the other one with --other-pin");
      }
      if (other != null && other == which.pin) {
        throw new UserError("--other-pin names the same pin; name the other one");
      }
      OptionalInt to = other == null ? OptionalInt.empty() : OptionalInt.of(other);
      return which.bench(BenchTest.METER, said, to, streams);
    }
  }
}
