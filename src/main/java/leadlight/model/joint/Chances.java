package leadlight.model.joint;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import leadlight.model.Checks;
import leadlight.model.FindingKind;
import leadlight.model.Question;

/**
 * One opinion on one joint: a chance, 0 to 1, for each question that was asked.
 *
 * @param answers the chances; a question that is not among them was not asked
 */
public record Chances(Map<Question, Double> answers) {

  /** A second name for the same lack of solder is worth saying from this share on. */
  private static final double SECOND_NAME_FROM = 0.25;

  private static final OptionalDouble NONE = OptionalDouble.empty();

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

  /** That no fillet holds a lead here: no lead, or one that is not soldered. */
  public double notHeld() {
    return 1 - (1 - of(Question.MISSING)) * (1 - of(Question.UNWETTED));
  }

  /** That there is a lead and solder hides it. */
  double hiddenLead() {
    return (1 - of(Question.MISSING)) * of(Question.EXCESS);
  }

  /**
   * A chance by the name of a finding.
   *
   * @param kind the finding
   * @param neighbourPin the other pin of a bridge, else 0
   * @param chance how likely; states that exclude each other share the chance of being one of them
   * @param share of such a state: the part of that chance that falls to it
   */
  public record Fault(FindingKind kind, int neighbourPin, double chance, OptionalDouble share) {}

  /**
   * The chances of lack, excess and bridges of solder by the names of findings. Ball and overhang
   * are not among them: they are spoken of by what was measured.
   *
   * @param pin the joint's own pin
   * @param leads leads of the row: a joint at an end has one gap
   */
  public List<Fault> faults(int pin, int leads) {
    List<Fault> faults = new ArrayList<>();
    faults.add(new Fault(FindingKind.MISSING_LEAD, 0, of(Question.MISSING), NONE));
    lackNamed(faults);
    faults.add(new Fault(FindingKind.EXCESS, 0, hiddenLead(), NONE));
    if (pin > 1) {
      faults.add(new Fault(FindingKind.BRIDGE, pin - 1, of(Question.BRIDGE_BEFORE), NONE));
    }
    if (pin < leads) {
      faults.add(new Fault(FindingKind.BRIDGE, pin + 1, of(Question.BRIDGE_AFTER), NONE));
    }
    return faults;
  }

  /** The likelier name of a lack of solder first; the other only if its share is worth saying. */
  private void lackNamed(List<Fault> into) {
    double open = of(Question.OPEN);
    Fault asOpen = new Fault(FindingKind.OPEN, 0, lackingSolder(), OptionalDouble.of(open));
    Fault asStarved =
        new Fault(FindingKind.INSUFFICIENT, 0, lackingSolder(), OptionalDouble.of(1 - open));
    into.add(open >= 0.5 ? asOpen : asStarved);
    if (Math.min(open, 1 - open) >= SECOND_NAME_FROM) {
      into.add(open >= 0.5 ? asStarved : asOpen);
    }
  }
}
