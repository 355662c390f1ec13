package leadlight.quality.bench;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;

/**
 * A recorded joint, settled at the bench or not.
 *
 * @param board job and board, the cluster in which it is counted
 * @param month of its scoring
 * @param tool the tool's verdict
 * @param findings the tool's defects
 * @param bench what a probe or a meter said last, if it was asked
 * @param person what a person said last, if one overruled
 */
public record Settled(
    String board,
    YearMonth month,
    Verdict tool,
    List<FindingKind> findings,
    Optional<Bench> bench,
    Optional<Verdict> person) {

  /** What a try at the bench shows. */
  public enum Bench {
    /** The lead moves, or the meter reads open: the joint is not joined. */
    OPEN(true),
    /** The meter reads a short. */
    SHORT(true),
    /** Firm under the probe: not open, and nothing else is known. */
    FIRM(false),
    /** The meter reads what it should: neither open nor short, and nothing else is known. */
    CONDUCTS(false);

    private final boolean bad;

    Bench(boolean bad) {
      this.bad = bad;
    }

    /** Whether it shows a fault. */
    public boolean isBad() {
      return bad;
    }

    /** Whether a good result speaks against a finding. */
    boolean refutes(FindingKind kind) {
      return !bad && (kind == FindingKind.OPEN || this == CONDUCTS && kind == FindingKind.BRIDGE);
    }
  }

  /** Copies. */
  public Settled {
    findings = List.copyOf(findings);
  }

  /** Whether the tool let it pass. */
  boolean passed() {
    return tool == Verdict.ACCEPTABLE || tool == Verdict.PROCESS_INDICATOR;
  }

  /** Whether the tool called it. */
  boolean called() {
    return tool == Verdict.DEFECT;
  }

  /** Whether the bench shows that the call was false: every finding is refuted. */
  boolean isRefuted() {
    return bench.isPresent()
        && !findings.isEmpty()
        && findings.stream().allMatch(bench.get()::refutes);
  }
}
