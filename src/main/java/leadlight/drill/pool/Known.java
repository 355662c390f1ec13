package leadlight.drill.pool;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import leadlight.model.FindingKind;
import leadlight.trial.truth.TrueClass;

/**
 * What is true of a joint.
 *
 * @param verdict acceptable, defect, or too close to a limit to be counted
 * @param findings what is wrong, the first by which it is drawn
 * @param bridgeTo the other pin of a bridge, if known
 * @param how where the truth comes from, as "rendered scene, ring lamp"
 */
public record Known(
    @JsonProperty(required = true) TrueClass verdict,
    List<FindingKind> findings,
    OptionalInt bridgeTo,
    @JsonProperty(required = true) String how) {

  /** Copies the list. */
  public Known {
    findings = findings == null ? List.of() : List.copyOf(findings);
  }

  /** Its verdict as the record and tables name it. */
  public String id() {
    return verdict.name().toLowerCase(Locale.ROOT);
  }
}
