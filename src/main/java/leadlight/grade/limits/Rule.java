package leadlight.grade.limits;

import java.util.Optional;
import leadlight.data.Basis;
import leadlight.model.Verdict;

/**
 * What a finding means in a class once it is established.
 *
 * @param verdict acceptable, process indicator or defect; unjudged where the photo alone cannot
 *     tell which
 * @param basis clause, source and provenance
 * @param settleBy how to settle it at the bench, in place of the words of its kind
 */
public record Rule(Verdict verdict, Basis basis, Optional<String> settleBy) {}
