package leadlight.model.result;

import java.util.List;
import java.util.OptionalInt;
import leadlight.model.FindingKind;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.Verdict;
import leadlight.model.remark.Doubt;

/**
 * An anchor leg with its verdict.
 *
 * @param number 1 to n, counted with the component side up and the part's leads above: from left to
 *     right, the pair nearest to the leads first; empty if it cannot be told
 * @param centre middle of its land
 * @param outline of its land
 * @param match share of that outline that is an edge, 0 to 1
 * @param verdict what it means in the chosen class
 * @param findings what was seen, the gravest first
 * @param wetted part of the leg's outline that meets solder, degrees of 360
 * @param covered share of the land that solder covers
 * @param open share of the hole that is open
 * @param doubts why it is not judged; empty if it is
 * @param clauses the standard's clauses that the findings rest on
 */
public record GradedLeg(
    OptionalInt number,
    PointPx centre,
    List<PointPx> outline,
    double match,
    Verdict verdict,
    List<FindingKind> findings,
    Quantity wetted,
    Quantity covered,
    Quantity open,
    List<Doubt> doubts,
    List<String> clauses) {

  /** Copies the lists; an unjudged leg must say why, and no other does. */
  public GradedLeg {
    outline = List.copyOf(outline);
    findings = List.copyOf(findings);
    doubts = List.copyOf(doubts);
    clauses = List.copyOf(clauses);
    if ((verdict == Verdict.UNJUDGED) == doubts.isEmpty()) {
      throw new IllegalArgumentException("exactly an unjudged leg says why it is");
    }
  }
}
