package leadlight.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One joint as measured, before any limit is applied.
 *
 * @param lead where it is
 * @param measures what could be measured; a measure that could not is absent, never a guess
 * @param evidence how strongly the photo speaks for each finding
 * @param unfitBecause why this joint cannot be judged from this photo, if it cannot
 */
public record Joint(
    Lead lead,
    Map<Measure, Quantity> measures,
    List<Evidence> evidence,
    Optional<String> unfitBecause) {

  /** Copies the collections. */
  public Joint {
    measures = Map.copyOf(measures);
    evidence = List.copyOf(evidence);
  }

  /** Place in the row, 1 to N. */
  public int pin() {
    return lead.pin();
  }
}
