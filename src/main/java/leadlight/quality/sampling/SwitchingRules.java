package leadlight.quality.sampling;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import leadlight.data.Provenance;

/**
 * When severity changes over a series of lots (ISO 2859-1, 9.3; ANSI/ASQ Z1.4, 8.3).
 *
 * @param tightenRefused refused lots, among {@code tightenWithin}, that lead from normal to
 *     tightened
 * @param tightenWithin lots in a row looked at for it
 * @param relaxAfterAccepted lots accepted in a row that lead from tightened to normal
 * @param stopAfterRefused refused lots on tightened inspection that end acceptance
 * @param reduceAfterAccepted lots accepted in a row that allow reduced inspection, if agreed
 * @param provenance how the rules got here
 */
public record SwitchingRules(
    @JsonProperty(required = true) int tightenRefused,
    @JsonProperty(required = true) int tightenWithin,
    @JsonProperty(required = true) int relaxAfterAccepted,
    @JsonProperty(required = true) int stopAfterRefused,
    @JsonProperty(required = true) int reduceAfterAccepted,
    @JsonProperty(required = true) Provenance provenance) {

  /** What became of a lot. */
  public enum LotResult {
    ACCEPTED,
    /** Between the two numbers of reduced inspection: accepted, but normal again. */
    ACCEPTED_ENDS_REDUCED,
    REFUSED,
    /** No lot: the cause is mended and acceptance resumes, on tightened inspection. */
    RESUMED
  }

  /**
   * Where a series stands.
   *
   * @param severity of the next lot
   * @param stopped true if acceptance is to stop until the cause is mended
   * @param why how it came to that, a sentence per switch
   */
  public record Standing(Severity severity, boolean stopped, List<String> why) {}

  /**
   * Follows a series of lots, oldest first, from normal inspection.
   *
   * @param reducedAgreed true if production is steady and those responsible agree to reduced
   *     inspection
   */
  public Standing after(List<LotResult> lots, boolean reducedAgreed) {
    Series series = new Series(reducedAgreed);
    for (LotResult lot : lots) {
      series.add(lot);
    }
    return new Standing(series.severity, series.stopped, List.copyOf(series.why));
  }

  private final class Series {
    private final boolean reducedAgreed;
    private final List<String> why = new ArrayList<>();
    private final List<Boolean> refused = new ArrayList<>();
    private Severity severity = Severity.NORMAL;
    private boolean stopped;
    private int lot;

    private Series(boolean reducedAgreed) {
      this.reducedAgreed = reducedAgreed;
    }

    private void add(LotResult result) {
      if (result == LotResult.RESUMED) {
        resume();
        return;
      }
      lot++;
      refused.add(result == LotResult.REFUSED);
      if (severity == Severity.REDUCED && result != LotResult.ACCEPTED) {
        to(Severity.NORMAL, "it was " + (refusedIn(1) > 0 ? "refused" : "between Ac and Re"));
      } else if (severity == Severity.NORMAL && refusedIn(tightenWithin) >= tightenRefused) {
        to(Severity.TIGHTENED, tightenRefused + " of " + tightenWithin + " or fewer were refused");
      } else if (severity == Severity.TIGHTENED) {
        onTightened();
      } else if (severity == Severity.NORMAL && reducedAgreed && accepted(reduceAfterAccepted)) {
        to(Severity.REDUCED, reduceAfterAccepted + " in a row were accepted");
      }
    }

    /** ISO 2859-1, 9.4: as soon as the cause is mended, and then tightened. */
    private void resume() {
      if (stopped) {
        why.add("After lot " + lot + " acceptance resumes on tightened inspection.");
        stopped = false;
        refused.clear();
      }
    }

    private void onTightened() {
      if (refusedIn(refused.size()) >= stopAfterRefused) {
        if (!stopped) {
          why.add(
              "After lot "
                  + lot
                  + " acceptance stops: "
                  + stopAfterRefused
                  + " were refused on tightened inspection; mend the cause first.");
        }
        stopped = true;
      } else if (accepted(relaxAfterAccepted)) {
        to(Severity.NORMAL, relaxAfterAccepted + " in a row were accepted");
      }
    }

    private void to(Severity next, String because) {
      why.add(
          "After lot %d %s gives way to %s inspection: %s."
              .formatted(lot, severity.word(), next.word(), because));
      severity = next;
      refused.clear();
    }

    private int refusedIn(int last) {
      int from = Math.max(0, refused.size() - last);
      return (int) refused.subList(from, refused.size()).stream().filter(r -> r).count();
    }

    private boolean accepted(int inARow) {
      return refused.size() >= inARow && refusedIn(inARow) == 0;
    }
  }
}
