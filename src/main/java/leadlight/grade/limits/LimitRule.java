package leadlight.grade.limits;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import leadlight.model.Unit;

/**
 * How a limit is worked out: the closed vocabulary of the limits files. Each form has its own
 * names, so that a file needs no type tag: {@code {"mm": 0.5}}, {@code {"degrees": 270}}, {@code
 * {"part": 0.75}}, {@code {"share": 0.5, "of": "lead-width"}}, {@code {"lesser_of": [..]}}, {@code
 * {"greater_of": [..]}}, {@code {"sum_of": [..]}}, {@code {"where": .., "at_least": .., "then": ..,
 * "otherwise": ..}}.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.DEDUCTION)
@JsonSubTypes({
  @JsonSubTypes.Type(LimitRule.Length.class),
  @JsonSubTypes.Type(LimitRule.Angle.class),
  @JsonSubTypes.Type(LimitRule.Part.class),
  @JsonSubTypes.Type(LimitRule.Share.class),
  @JsonSubTypes.Type(LimitRule.LesserOf.class),
  @JsonSubTypes.Type(LimitRule.GreaterOf.class),
  @JsonSubTypes.Type(LimitRule.SumOf.class),
  @JsonSubTypes.Type(LimitRule.Where.class)
})
sealed interface LimitRule {

  /** The value, or nothing if a length that it needs is not known. */
  OptionalDouble value(JointGeometry joint);

  /** The unit of the value. */
  Unit unit();

  /** A fixed length. */
  record Length(@JsonProperty(required = true) double mm) implements LimitRule {
    public Length {
      within("mm", mm, 0, 1000);
    }

    @Override
    public OptionalDouble value(JointGeometry joint) {
      return OptionalDouble.of(mm);
    }

    @Override
    public Unit unit() {
      return Unit.MM;
    }
  }

  /** A fixed angle around a leg. */
  record Angle(@JsonProperty(required = true) double degrees) implements LimitRule {
    public Angle {
      within("degrees", degrees, 0, 360);
    }

    @Override
    public OptionalDouble value(JointGeometry joint) {
      return OptionalDouble.of(degrees);
    }

    @Override
    public Unit unit() {
      return Unit.DEGREE;
    }
  }

  /** A fixed part of the whole, 0 to 1. */
  record Part(@JsonProperty(required = true) double part) implements LimitRule {
    public Part {
      within("part", part, 0, 1);
    }

    @Override
    public OptionalDouble value(JointGeometry joint) {
      return OptionalDouble.of(part);
    }

    @Override
    public Unit unit() {
      return Unit.SHARE;
    }
  }

  /** A multiple of one of the joint's own lengths. */
  record Share(
      @JsonProperty(required = true) double share, @JsonProperty(required = true) Dimension of)
      implements LimitRule {
    public Share {
      within("share", share, 0, 100);
    }

    @Override
    public OptionalDouble value(JointGeometry joint) {
      OptionalDouble length = joint.get(of);
      return length.isPresent() ? OptionalDouble.of(share * length.getAsDouble()) : length;
    }

    @Override
    public Unit unit() {
      return Unit.MM;
    }
  }

  /** The least of several. */
  record LesserOf(@JsonProperty(required = true) List<LimitRule> lesserOf) implements LimitRule {
    public LesserOf {
      lesserOf = several("lesser_of", lesserOf);
    }

    @Override
    public OptionalDouble value(JointGeometry joint) {
      return fold(lesserOf, joint, Math::min);
    }

    @Override
    public Unit unit() {
      return lesserOf.get(0).unit();
    }
  }

  /** The greatest of several. */
  record GreaterOf(@JsonProperty(required = true) List<LimitRule> greaterOf) implements LimitRule {
    public GreaterOf {
      greaterOf = several("greater_of", greaterOf);
    }

    @Override
    public OptionalDouble value(JointGeometry joint) {
      return fold(greaterOf, joint, Math::max);
    }

    @Override
    public Unit unit() {
      return greaterOf.get(0).unit();
    }
  }

  /** Several put together. */
  record SumOf(@JsonProperty(required = true) List<LimitRule> sumOf) implements LimitRule {
    public SumOf {
      sumOf = several("sum_of", sumOf);
    }

    @Override
    public OptionalDouble value(JointGeometry joint) {
      return fold(sumOf, joint, Double::sum);
    }

    @Override
    public Unit unit() {
      return sumOf.get(0).unit();
    }
  }

  /** One of two, by whether a length reaches another. */
  record Where(
      @JsonProperty(required = true) LimitRule where,
      @JsonProperty(required = true) LimitRule atLeast,
      @JsonProperty(required = true) LimitRule then,
      @JsonProperty(required = true) LimitRule otherwise)
      implements LimitRule {
    public Where {
      several("where and at_least", List.of(where, atLeast));
      several("then and otherwise", List.of(then, otherwise));
    }

    @Override
    public OptionalDouble value(JointGeometry joint) {
      OptionalDouble left = where.value(joint);
      OptionalDouble right = atLeast.value(joint);
      if (left.isEmpty() || right.isEmpty()) {
        return OptionalDouble.empty();
      }
      return (left.getAsDouble() >= right.getAsDouble() ? then : otherwise).value(joint);
    }

    @Override
    public Unit unit() {
      return then.unit();
    }
  }

  private static void within(String name, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          name + " must lie in [" + least + ", " + most + "], is " + value);
    }
  }

  private static List<LimitRule> several(String name, List<LimitRule> rules) {
    if (rules == null || rules.size() < 2) {
      throw new IllegalArgumentException(name + " needs two or more limits");
    }
    if (rules.stream().map(LimitRule::unit).distinct().count() > 1) {
      throw new IllegalArgumentException(name + " mixes units");
    }
    return List.copyOf(rules);
  }

  private static OptionalDouble fold(
      List<LimitRule> rules, JointGeometry joint, DoubleBinaryOperator how) {
    double total = rules.get(0).value(joint).orElse(Double.NaN);
    for (LimitRule rule : rules.subList(1, rules.size())) {
      total = how.applyAsDouble(total, rule.value(joint).orElse(Double.NaN));
    }
    return Double.isNaN(total) ? OptionalDouble.empty() : OptionalDouble.of(total);
  }
}
