package leadlight.grade;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import leadlight.model.Evidence;
import leadlight.model.Finding;
import leadlight.model.FindingKind;
import leadlight.model.GradedJoint;
import leadlight.model.Joint;
import leadlight.model.LimitCheck;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.Verdict;

/** The grading of one joint: collects findings and doubts, then weighs them. */
final class JointGrading {

  /** Two names of one lack of solder. */
  static final Set<FindingKind> LACKS_SOLDER = Set.of(FindingKind.OPEN, FindingKind.INSUFFICIENT);

  private static final String UNLIKE =
      "unlike known joints: the second reader has seen nothing like it; look at it through the"
          + " microscope and prod the lead";

  private final AcceptanceSet limits;
  private final int productClass;
  private final Decision decision;
  private final Weighing weighing;
  private final Joint joint;
  private final List<Finding> findings = new ArrayList<>();
  private final List<LimitCheck> checks = new ArrayList<>();
  private final List<String> doubts = new ArrayList<>();

  JointGrading(
      AcceptanceSet limits, int productClass, Decision decision, Weighing weighing, Joint joint) {
    this.limits = limits;
    this.productClass = productClass;
    this.decision = decision;
    this.weighing = weighing;
    this.joint = joint;
  }

  /**
   * The verdict.
   *
   * @param evidence by the opinions that count
   * @param lampShowsFillets false if no joint of the row shows a fillet, so that a lack of one here
   *     is no evidence
   */
  GradedJoint grade(List<Evidence> evidence, boolean lampShowsFillets) {
    for (Evidence one : evidence) {
      if (lampShowsFillets || !LACKS_SOLDER.contains(one.kind())) {
        weigh(one);
      } else {
        weighWithoutWitness(one);
      }
    }
    if (!seen(FindingKind.MISSING_LEAD)) {
      decideLimit(FindingKind.SIDE_OVERHANG, Feature.SIDE_OVERHANG, Measure.SIDE_OVERHANG);
    }
    findings.sort(
        Comparator.comparing(Finding::verdict)
            .thenComparing(Finding::probability)
            .reversed()
            .thenComparing(Finding::kind));
    Verdict worst =
        findings.stream().map(Finding::verdict).reduce(Verdict.ACCEPTABLE, Verdict::worse);
    joint.unfitBecause().ifPresent(why -> doubts.add(0, why));
    boolean unlike = weighing.unlike(joint);
    if (unlike) {
      doubts.add(0, UNLIKE);
    }
    if (unlike || (worst != Verdict.DEFECT && (worst == Verdict.UNJUDGED || !doubts.isEmpty()))) {
      return new GradedJoint(joint, Verdict.UNJUDGED, findings, checks, Optional.of(reason()));
    }
    return new GradedJoint(joint, worst, findings, checks, Optional.empty());
  }

  private String reason() {
    return doubts.isEmpty() ? settle(findings.get(0)) : String.join("; ", doubts);
  }

  private static String settle(Finding finding) {
    return finding.kind().id() + ": " + finding.settleBy();
  }

  private boolean seen(FindingKind kind) {
    return findings.stream().anyMatch(finding -> finding.kind() == kind);
  }

  private void weighWithoutWitness(Evidence evidence) {
    if (evidence.probability() >= decision.doubtFrom(weighing.read(joint)) && doubts.isEmpty()) {
      doubts.add(
          "no fillet shows here, nor at the other joints of this row: either all are open, or this"
              + " light hides the slopes; prod the lead, or take a photo with the lamp lower or"
              + " from another side");
    }
  }

  private void weigh(Evidence evidence) {
    Rule rule = limits.rule(evidence.kind(), productClass);
    if (evidence.probability() >= decision.seenFrom().value() || secondName(evidence)) {
      findings.add(finding(evidence, rule));
    } else if (evidence.probability() >= decision.doubtFrom(weighing.read(joint))
        && rule.verdict() == Verdict.DEFECT) {
      doubts.add(doubt(evidence, rule));
    }
  }

  /**
   * Open and insufficient are two names of one lack of solder: where one is seen, the other is
   * named too if it was given a share, since only the bench can tell them apart.
   */
  private boolean secondName(Evidence evidence) {
    return (evidence.kind() == FindingKind.OPEN && seen(FindingKind.INSUFFICIENT))
        || (evidence.kind() == FindingKind.INSUFFICIENT && seen(FindingKind.OPEN));
  }

  private Finding finding(Evidence evidence, Rule rule) {
    return new Finding(
        evidence.kind(),
        pins(evidence),
        rule.verdict(),
        evidence.probability(),
        evidence.words(),
        rule.basis().words(),
        rule.settleBy().orElse(""));
  }

  private List<Integer> pins(Evidence evidence) {
    return evidence.neighbourPin() == 0
        ? List.of(joint.pin())
        : List.of(joint.pin(), evidence.neighbourPin());
  }

  private String doubt(Evidence evidence, Rule rule) {
    String name =
        evidence.kind() == FindingKind.BRIDGE
            ? "bridge to pin " + evidence.neighbourPin()
            : evidence.kind().id();
    return String.format(
        Locale.ROOT,
        "possibly %s (chance %.0f %%%s)%s",
        name,
        100 * evidence.probability(),
        weighing.words(joint, evidence).map(words -> "; " + words).orElse(""),
        rule.settleBy().map(how -> ": " + how).orElse(""));
  }

  private void decideLimit(FindingKind kind, Feature feature, Measure measure) {
    Quantity measured = joint.measures().get(measure);
    Optional<Limit> limit = limits.limit(feature, productClass, lengths());
    if (measured == null || limit.isEmpty()) {
      return;
    }
    double byMeasure =
        Conformance.probability(
            measured.value(), measured.u(), limit.get().value(), limit.get().bound());
    OptionalDouble byOpinions = overLimitByOpinions(limit.get());
    double kept = byOpinions.isPresent() ? 1 - byOpinions.getAsDouble() : byMeasure;
    checks.add(
        new LimitCheck(
            measure,
            measured,
            limit.get().value(),
            limit.get().bound() == Bound.UPPER,
            kept,
            limit.get().basis().words()));
    String words =
        String.format(
            Locale.ROOT,
            "%.3f mm (u %.3f) against a limit of %.3f mm",
            measured.value(),
            measured.u(),
            limit.get().value());
    Optional<String> said = byOpinions.isPresent() ? said(limit.get()) : Optional.empty();
    Conformance.Zone zone =
        byOpinions.isPresent()
            ? zone(byOpinions.getAsDouble())
            : Conformance.zone(kept, limits.decisionLevel());
    switch (zone) {
      case PASSED -> {
        String seen = words + said.map(both -> "; " + both).orElse("");
        findings.add(overLimit(kind, 1 - kept, seen, limit.get()));
      }
      case NEITHER ->
          doubts.add(
              "%s %s cannot be decided%s; measure it under higher magnification"
                  .formatted(kind.id(), words, said.map(" (%s)"::formatted).orElse("")));
      case KEPT -> {}
    }
  }

  private OptionalDouble overLimitByOpinions(Limit limit) {
    OptionalDouble width = length(Measure.LEAD_WIDTH);
    return width.isPresent()
        ? weighing.overhang(joint, limit.value() / width.getAsDouble())
        : width;
  }

  private Optional<String> said(Limit limit) {
    return weighing.overhangWords(joint, limit.value() / length(Measure.LEAD_WIDTH).orElseThrow());
  }

  /** What a chance of both opinions comes to, as for the faults of solder. */
  private Conformance.Zone zone(double chance) {
    if (chance >= decision.seenFrom().value()) {
      return Conformance.Zone.PASSED;
    }
    return chance >= decision.doubtFrom(weighing.read(joint))
        ? Conformance.Zone.NEITHER
        : Conformance.Zone.KEPT;
  }

  private Finding overLimit(FindingKind kind, double chance, String words, Limit limit) {
    Rule rule = limits.rule(kind, productClass);
    return new Finding(
        kind,
        List.of(joint.pin()),
        rule.verdict(),
        chance,
        words,
        limit.basis().words(),
        rule.settleBy().orElse(""));
  }

  private JointGeometry lengths() {
    return new JointGeometry(
        length(Measure.LEAD_WIDTH),
        length(Measure.FOOT_LENGTH),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        length(Measure.LAND_WIDTH));
  }

  private OptionalDouble length(Measure measure) {
    Quantity quantity = joint.measures().get(measure);
    return quantity == null || quantity.value() <= 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(quantity.value());
  }
}
