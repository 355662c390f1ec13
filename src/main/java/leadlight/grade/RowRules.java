package leadlight.grade;

import java.util.Optional;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.grade.limits.Rule;
import leadlight.model.FindingKind;
import leadlight.model.joint.BenchOpinion;
import leadlight.model.joint.EnrolledRow;
import leadlight.model.joint.Familiarity;
import leadlight.model.row.RowSpec;

/**
 * What all joints of a row are judged by.
 *
 * @param limits the limits
 * @param productClass 1, 2 or 3
 * @param decision the thresholds
 * @param spec the row
 * @param make whether the photo's make is familiar
 * @param enrolled what an enrolled bench says of the row, if one was named
 * @param bareThroughout whether the row's middle joint looks like a land without a lead
 */
record RowRules(
    AcceptanceSet limits,
    int productClass,
    Decision decision,
    RowSpec spec,
    Familiarity make,
    Optional<EnrolledRow> enrolled,
    boolean bareThroughout) {

  Rule rule(FindingKind kind) {
    return limits.rule(kind, productClass);
  }

  boolean unfamiliarPhoto() {
    return UnknownMake.is(make, decision);
  }

  /** Whether an enrolled bench judges this photo. */
  boolean judged() {
    return enrolled.filter(EnrolledRow::judges).isPresent();
  }

  /** What it says of a joint. */
  Optional<BenchOpinion> said(int pin) {
    return enrolled.filter(EnrolledRow::judges).map(row -> row.opinions().get(pin - 1));
  }

  String name() {
    return enrolled.map(EnrolledRow::bench).orElse("");
  }
}
