package leadlight.app.trial;

import java.util.LinkedHashMap;
import java.util.Map;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Joint;

/** Both opinions on a joint as columns of a table: {@code m_QUESTION} and {@code r_QUESTION}. */
final class OpinionColumns {

  private OpinionColumns() {}

  /** The columns of the opinions that the joint has. */
  static Map<String, Double> of(Joint joint) {
    Map<String, Double> columns = new LinkedHashMap<>();
    joint.byMeasures().ifPresent(chances -> add("m_", chances, columns));
    joint.byReader().ifPresent(reading -> add("r_", reading.chances(), columns));
    return columns;
  }

  private static void add(String whose, Chances chances, Map<String, Double> to) {
    chances.answers().forEach((question, chance) -> to.put(whose + question.id(), chance));
  }
}
