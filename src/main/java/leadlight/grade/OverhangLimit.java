package leadlight.grade;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.grade.limits.Bound;
import leadlight.grade.limits.Conformance;
import leadlight.grade.limits.Feature;
import leadlight.grade.limits.JointGeometry;
import leadlight.grade.limits.Limit;
import leadlight.grade.limits.Rule;
import leadlight.model.FindingKind;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.Question;
import leadlight.model.joint.Finding;
import leadlight.model.joint.Joint;
import leadlight.model.joint.LimitCheck;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.NoteOfJoint;

/**
 * The side overhang of one joint against its limit, decided by the measure with its uncertainty
 * (JCGM 106:2012, 8.3). The second reader may add a doubt to a kept limit; it removes none.
 */
final class OverhangLimit {

  private static final FindingKind KIND = FindingKind.SIDE_OVERHANG;

  /** A limit is the one that an opinion spoke of if it differs by less than this share of width. */
  private static final double SAME_LIMIT = 0.02;

  private final RowRules rules;
  private final Joint joint;
  private final Weighing.Weighed opinion;
  private final Optional<Limit> limit;
  private final OptionalDouble kept;

  OverhangLimit(RowRules rules, Joint joint, Weighing.Weighed opinion) {
    this.rules = rules;
    this.joint = joint;
    this.opinion = opinion;
    this.limit =
        measured().isEmpty()
            ? Optional.empty()
            : rules.limits().limit(Feature.SIDE_OVERHANG, rules.productClass(), lengths());
    this.kept =
        limit.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(kept(measured().orElseThrow(), limit.get()));
  }

  private Optional<Quantity> measured() {
    return Optional.ofNullable(joint.measures().get(Measure.SIDE_OVERHANG));
  }

  private static double kept(Quantity measured, Limit limit) {
    return Conformance.probability(measured.value(), measured.u(), limit.value(), limit.bound());
  }

  /** The measure held against its limit, if there are both. */
  List<LimitCheck> checks() {
    return kept.isEmpty()
        ? List.of()
        : List.of(
            new LimitCheck(
                Measure.SIDE_OVERHANG,
                measured().orElseThrow(),
                limit.orElseThrow().value(),
                limit.orElseThrow().bound() == Bound.UPPER,
                kept.getAsDouble(),
                limit.orElseThrow().basis().words()));
  }

  private Optional<Conformance.Zone> zone() {
    return kept.isEmpty()
        ? Optional.empty()
        : Optional.of(Conformance.zone(kept.getAsDouble(), rules.limits().decisionLevel()));
  }

  /** The overhang, if it is proven to pass the limit. */
  Optional<Finding> finding() {
    if (zone().filter(zone -> zone == Conformance.Zone.PASSED).isEmpty()) {
      return Optional.empty();
    }
    Rule rule = rules.rule(KIND);
    Quantity overhang = measured().orElseThrow();
    Limit passed = limit.orElseThrow();
    return Optional.of(
        new Finding(
            KIND,
            List.of(joint.pin()),
            rule.verdict(),
            1 - kept.getAsDouble(),
            OptionalDouble.empty(),
            Optional.of(
                new NoteOfJoint.AgainstLimit(overhang.value(), overhang.u(), passed.value())),
            List.of(),
            passed.basis().words(),
            rule.settleBy().orElse("")));
  }

  /** Why the limit is in doubt, if it is. */
  Optional<Doubt> doubt() {
    if (kept.isEmpty()) {
      return Optional.of(new Doubt.OverhangUnknown());
    }
    if (zone().filter(zone -> zone == Conformance.Zone.NEITHER).isPresent()) {
      Quantity overhang = measured().orElseThrow();
      return Optional.of(
          new Doubt.LimitUndecided(
              KIND,
              overhang.value(),
              overhang.u(),
              limit.orElseThrow().value(),
              kept.getAsDouble()));
    }
    return zone().filter(zone -> zone == Conformance.Zone.KEPT).isPresent()
        ? readerDoubt()
        : Optional.empty();
  }

  private Optional<Doubt> readerDoubt() {
    OptionalDouble over = overByReader();
    double byMeasure = 1 - kept.getAsDouble();
    return over.isPresent() && over.getAsDouble() >= rules.decision().yesFrom().value()
        ? Optional.of(new Doubt.OpinionsDiffer(KIND, 0, byMeasure, over.getAsDouble()))
        : Optional.empty();
  }

  /** The reader's chance that this limit is passed, if it was asked for it. */
  private OptionalDouble overByReader() {
    double share = limit.orElseThrow().value() / length(Measure.LEAD_WIDTH).orElseThrow();
    Optional<Question> question =
        Math.abs(share - Question.HALF) < SAME_LIMIT
            ? Optional.of(Question.OVER_HALF)
            : Math.abs(share - Question.QUARTER) < SAME_LIMIT
                ? Optional.of(Question.OVER_QUARTER)
                : Optional.empty();
    return question.isEmpty() || opinion.reader().isEmpty()
        ? OptionalDouble.empty()
        : opinion.reader().get().asked(question.get());
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
