package leadlight.model.joint;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.remark.Doubt;
import leadlight.model.row.Lead;

/**
 * One joint as measured, before any limit is applied.
 *
 * @param lead where it is
 * @param measures what could be measured; a measure that could not is absent, never a guess
 * @param evidence how strongly the photo speaks for each finding
 * @param unfitBecause why this joint cannot be judged from this photo, if it cannot
 * @param byMeasures opinion on the solder by measures alone; empty if it was not kept
 * @param byReader what the second reader says; empty if it was not asked
 */
public record Joint(
    Lead lead,
    Map<Measure, Quantity> measures,
    List<Evidence> evidence,
    Optional<Doubt> unfitBecause,
    Optional<Chances> byMeasures,
    Optional<Reading> byReader) {

  /** Copies the collections. */
  public Joint {
    measures = Map.copyOf(measures);
    evidence = List.copyOf(evidence);
  }

  /** A joint whose opinions were not kept. */
  public Joint(
      Lead lead,
      Map<Measure, Quantity> measures,
      List<Evidence> evidence,
      Optional<Doubt> unfitBecause) {
    this(lead, measures, evidence, unfitBecause, Optional.empty(), Optional.empty());
  }

  /** The same joint with the second reader's opinion. */
  public Joint readAs(Reading reading) {
    return new Joint(lead, measures, evidence, unfitBecause, byMeasures, Optional.of(reading));
  }

  /** Place in the row, 1 to N. */
  public int pin() {
    return lead.pin();
  }
}
