package leadlight.model;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * One opinion on one joint: a chance, 0 to 1, for each question that was asked.
 *
 * @param answers the chances; a question that is not among them was not asked
 */
public record Chances(Map<Question, Double> answers) {

  /** Copies the map, in the order of the questions; refuses a chance outside 0 to 1. */
  public Chances {
    EnumMap<Question, Double> copy = new EnumMap<>(Question.class);
    copy.putAll(answers);
    copy.forEach((question, chance) -> Checks.within(question.id(), chance, 0, 1));
    answers = Collections.unmodifiableMap(copy);
  }

  /** An opinion on every question. */
  public static Chances of(ToDoubleFunction<Question> chance) {
    EnumMap<Question, Double> answers = new EnumMap<>(Question.class);
    for (Question question : Question.values()) {
      answers.put(question, chance.applyAsDouble(question));
    }
    return new Chances(answers);
  }

  /**
   * The chance that the answer is yes.
   *
   * @throws IllegalArgumentException if it was not asked
   */
  public double of(Question question) {
    Double chance = answers.get(question);
    if (chance == null) {
      throw new IllegalArgumentException(question.id() + " was not asked");
    }
    return chance;
  }

  /** The chance, or nothing if the question was not asked. */
  public OptionalDouble asked(Question question) {
    Double chance = answers.get(question);
    return chance == null ? OptionalDouble.empty() : OptionalDouble.of(chance);
  }

  /** The same with another answer to one question. */
  public Chances with(Question question, double chance) {
    EnumMap<Question, Double> changed = new EnumMap<>(Question.class);
    changed.putAll(answers);
    changed.put(question, chance);
    return new Chances(changed);
  }

  /** That there is a lead and no fillet: no lead is no lack of solder. */
  public double lackingSolder() {
    return (1 - of(Question.MISSING)) * of(Question.UNWETTED);
  }
}
