package leadlight.cli.quality;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leadlight.app.quality.LotFile;
import leadlight.model.UserError;
import leadlight.quality.sampling.DoublePlan;
import leadlight.quality.sampling.Inspection;
import leadlight.quality.sampling.LimitingQuality;
import leadlight.quality.sampling.Plan;
import leadlight.quality.sampling.RiskPlan;
import leadlight.quality.sampling.SamplingScheme;
import leadlight.quality.sampling.SequentialPlan;
import leadlight.quality.sampling.Severity;
import leadlight.quality.sampling.SwitchingRules;
import leadlight.quality.sampling.SwitchingRules.LotResult;
import picocli.CommandLine.Option;

/** How a sampling plan is asked for: by acceptance quality limit or by two risks. */
final class PlanOptions {

  @Option(
      names = "--aql",
      paramLabel = "PERCENT",
      description = "Acceptance quality limit, as 1.0.")
  private Optional<Double> aql = Optional.empty();

  @Option(
      names = "--level",
      paramLabel = "LEVEL",
      defaultValue = "II",
      description = "Inspection level I, II, III or S-1 to S-4 (default: ${DEFAULT-VALUE}).")
  private String level;

  @Option(
      names = "--severity",
      paramLabel = "normal|tightened|reduced",
      description = "How strictly (default: what --history leads to, or normal).")
  private Optional<String> severity = Optional.empty();

  @Option(
      names = "--history",
      paramLabel = "LOTS.csv",
      description =
          "Lots so far, oldest first: columns lot, result (accepted, refused, "
              + "accepted-ends-reduced; resumed once the cause of a stop is mended).")
  private Optional<Path> history = Optional.empty();

  @Option(
      names = "--reduced-agreed",
      description = "Production is steady and those responsible agree to reduced inspection.")
  private boolean reducedAgreed;

  @Option(
      names = "--good",
      paramLabel = "PERCENT",
      description = "Instead of --aql, with --bad: share nonconforming that should be accepted.")
  private Optional<Double> good = Optional.empty();

  @Option(
      names = "--bad",
      paramLabel = "PERCENT",
      description = "With --good: share nonconforming that should be refused.")
  private Optional<Double> bad = Optional.empty();

  @Option(
      names = "--producer-risk",
      paramLabel = "PERCENT",
      defaultValue = "5",
      description = "Most good lots refused (default: ${DEFAULT-VALUE}).")
  private double producerRisk;

  @Option(
      names = "--consumer-risk",
      paramLabel = "PERCENT",
      defaultValue = "10",
      description = "Most bad lots accepted (default: ${DEFAULT-VALUE}).")
  private double consumerRisk;

  @Option(
      names = "--lq",
      paramLabel = "PERCENT",
      description =
          "Instead of --aql: limiting quality of a lot that stands alone (ISO 2859-2's principle); "
              + "--consumer-risk is its risk.")
  private Optional<Double> limiting = Optional.empty();

  @Option(
      names = "--accept",
      paramLabel = "N",
      defaultValue = "0",
      description = "Acceptance number for --lq (default: ${DEFAULT-VALUE}, a c = 0 plan).")
  private int accept;

  /** A double plan by the options. */
  DoublePlan choiceOfTwo(int lot) {
    double limit =
        aql.orElseThrow(() -> new UserError("a double plan needs --aql PERCENT; name one"));
    return SamplingScheme.builtIn().doublePlan(lot, level, limit, standing().severity());
  }

  /** A sequential plan by the options. */
  SequentialPlan sequence() {
    if (good.isEmpty() || bad.isEmpty()) {
      throw new UserError("a sequential plan needs --good PERCENT with --bad PERCENT; name both");
    }
    return new SequentialPlan(
        good.get() / 100, producerRisk / 100, bad.get() / 100, consumerRisk / 100);
  }

  @Option(names = "--double", description = "A double plan, with --aql.")
  private boolean two;

  @Option(names = "--sequential", description = "A sequential plan, with --good and --bad.")
  private boolean sequential;

  /**
   * The plan to carry out.
   *
   * @throws UserError if the options contradict each other, or the lot has too few units
   */
  Inspection inspection(int lot) {
    check();
    Inspection plan = two ? choiceOfTwo(lot) : sequential ? sequence() : choose(lot).plan();
    if (plan.units() > lot) {
      throw new UserError(
          "the plan may go on to %d units and the lot has %d; take a single plan"
              .formatted(plan.units(), lot));
    }
    return plan;
  }

  void check() {
    if (reducedAgreed && history.isEmpty()) {
      throw new UserError(
          "--reduced-agreed is of a file of lots; name it with --history, or leave it out");
    }
    if (history.isPresent() && (limiting.isPresent() || good.isPresent() || bad.isPresent())) {
      throw new UserError(
          "--history leads to the severity of a plan by --aql; leave it out, or plan by --aql");
    }
    if (two && sequential) {
      throw new UserError("a plan is double or sequential, not both; leave one out");
    }
  }

  boolean isDouble() {
    return two;
  }

  boolean isSequential() {
    return sequential;
  }

  /** A plan and what led to it. */
  record Choice(Plan plan, List<String> notes) {}

  Choice choose(int lot) {
    boolean risks = good.isPresent() && bad.isPresent();
    if ((aql.isPresent() ? 1 : 0) + (risks ? 1 : 0) + (limiting.isPresent() ? 1 : 0) != 1) {
      throw new UserError(
          "say how to plan: --aql PERCENT, or --good PERCENT with --bad PERCENT, or --lq PERCENT");
    }
    if (limiting.isPresent()) {
      Plan plan = new LimitingQuality(limiting.get() / 100, accept, consumerRisk / 100).of(lot);
      return new Choice(plan, List.of());
    }
    if (aql.isEmpty()) {
      RiskPlan plan =
          new RiskPlan(
              good.orElseThrow() / 100,
              producerRisk / 100,
              bad.orElseThrow() / 100,
              consumerRisk / 100);
      return new Choice(plan.of(lot), List.of());
    }
    SwitchingRules.Standing standing = standing();
    Plan plan = SamplingScheme.builtIn().plan(lot, level, aql.get(), standing.severity());
    return new Choice(plan, standing.why());
  }

  /** Where the series stands, or the severity that was asked for. */
  private SwitchingRules.Standing standing() {
    SwitchingRules.Standing standing =
        SamplingScheme.builtIn().switching().after(results(), reducedAgreed);
    if (standing.stopped()) {
      throw new UserError(
          standing.why().get(standing.why().size() - 1)
              + " Then add a line \"resumed\" to the lots.");
    }
    Severity now = severity.map(PlanOptions::severity).orElse(standing.severity());
    return new SwitchingRules.Standing(now, false, standing.why());
  }

  private static Severity severity(String name) {
    return Arrays.stream(Severity.values())
        .filter(s -> s.word().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new UserError("--severity " + name + " is unknown; normal, tightened or reduced"));
  }

  private List<LotResult> results() {
    return history.filter(Files::exists).map(LotFile::read).orElse(List.of());
  }
}
