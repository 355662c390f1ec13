package leadlight.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import leadlight.model.Question;
import leadlight.model.joint.Chances;

/** What two opinions answer to the questions that are worth a line. */
public final class Questions {

  /** Below this chance an opinion is not worth a line; from it on a joint can be in doubt. */
  private static final double SPEAKS_FROM = 0.02;

  private static final double RATHER_YES = 0.5;
  private static final String NOT_ASKED = "\u2013";

  private final Messages words;

  /** Answers in a language. */
  public Questions(Messages words) {
    this.words = words;
  }

  /** For the terminal. */
  public static Questions english() {
    return new Questions(Messages.of("en"));
  }

  /**
   * One question.
   *
   * @param question in words
   * @param measures chance by measures
   * @param reader chance by the second reader
   * @param differ true if one says rather yes, the other rather no
   */
  public record Line(String question, String measures, String reader, boolean differ) {}

  /**
   * The questions of which at least one opinion speaks.
   *
   * @param pin the joint's
   * @param leads leads of the row: an end has one neighbour
   */
  public List<Line> spoken(Chances measures, Chances reader, int pin, int leads) {
    List<Line> lines = new ArrayList<>();
    for (Question question : Question.values()) {
      OptionalDouble one = measures.asked(question);
      OptionalDouble two = reader.asked(question);
      if (hasSense(question, measures, reader, pin, leads)
          && Math.max(one.orElse(0), two.orElse(0)) >= SPEAKS_FROM) {
        boolean differ =
            question != Question.OPEN
                && one.isPresent()
                && two.isPresent()
                && (one.getAsDouble() >= RATHER_YES) != (two.getAsDouble() >= RATHER_YES);
        lines.add(new Line(name(question, pin), said(one), said(two), differ));
      }
    }
    return lines;
  }

  /** A row's end has no neighbour, and what kind of lack it is asks itself only where one is. */
  private static boolean hasSense(
      Question question, Chances measures, Chances reader, int pin, int leads) {
    return switch (question) {
      case BRIDGE_BEFORE -> pin > 1;
      case BRIDGE_AFTER -> pin < leads;
      case OPEN ->
          Math.max(
                  measures.asked(Question.UNWETTED).orElse(0),
                  reader.asked(Question.UNWETTED).orElse(0))
              >= RATHER_YES;
      default -> true;
    };
  }

  private String name(Question question, int pin) {
    return words.named(
        "question." + question.id(), Map.of("before", "" + (pin - 1), "after", "" + (pin + 1)));
  }

  private String said(OptionalDouble chance) {
    return chance.isPresent() ? words.percent(chance.getAsDouble()) : NOT_ASKED;
  }
}
