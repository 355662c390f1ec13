package leadlight.trial.sets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import leadlight.model.result.Nudge.Motion;
import leadlight.statistics.ClusterRate;
import leadlight.trial.TrialTable;
import leadlight.trial.truth.NudgeTruth;

/** How right nudges were, as a table by pixels a pitch. */
public final class NudgeTally {

  /** A loose lead that moved by less may pass as firm: a firm one does not move by more. */
  private static final double LOOSE_FROM_UM = 25;

  private static final int[] BANDS_PX = {0, 20, 30, 45};

  private final List<Outcome> outcomes = new ArrayList<>();

  /**
   * What was said of one photo.
   *
   * @param truth what is true
   * @param pitchPx pixels a pitch; 0 if the row was not found at rest
   * @param pin the lead that was said to be touched; 0 if none
   * @param motion what was said of it
   * @param shiftUm how far it was said to have moved
   * @param uUm standard uncertainty of that
   * @param reason the code of the reason, empty if none
   */
  public record Outcome(
      NudgeTruth.Pushed truth,
      double pitchPx,
      int pin,
      Motion motion,
      double shiftUm,
      double uUm,
      String reason) {

    private boolean rowFound() {
      return pitchPx > 0;
    }

    private boolean rightPin() {
      return pin == truth.pin();
    }

    /** Something was said that is not so, also of a lead beside the pushed one, never tried. */
    private boolean grave() {
      return switch (motion) {
        case MOVES -> !rightPin() || !truth.loose();
        case FIRM -> !rightPin() || truth.shiftUm() >= LOOSE_FROM_UM;
        case NOT_TOUCHED, CANNOT_TELL -> false;
      };
    }

    private double errorUm() {
      return Math.abs(shiftUm - truth.shiftUm());
    }
  }

  /** Adds one. */
  public void add(Outcome outcome) {
    outcomes.add(outcome);
  }

  /** The table, lines of text. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "| px a pitch | photos | touched pin right | error um, median / 95 % | within 2 u |"
            + " loose: moves, firm, cannot tell | firm: moves, firm, cannot tell | no pin said |");
    lines.add("|---|---|---|---|---|---|---|---|");
    lines.add(row("all", of(Outcome::rowFound)));
    for (int i = 0; i < BANDS_PX.length; i++) {
      double from = BANDS_PX[i];
      double to = i + 1 < BANDS_PX.length ? BANDS_PX[i + 1] : Double.MAX_VALUE;
      List<Outcome> band = of(o -> o.rowFound() && o.pitchPx() >= from && o.pitchPx() < to);
      if (!band.isEmpty()) {
        String name = to == Double.MAX_VALUE ? "from %.0f" : "%.0f to %.0f";
        lines.add(row(String.format(Locale.ROOT, name, from, to), band));
      }
    }
    lines.add("photos whose row was not found at rest: " + of(o -> !o.rowFound()).size());
    lines.add("95 % intervals by row (Wilson at the effective number of photos)");
    lines.addAll(wrong());
    return lines;
  }

  private List<Outcome> of(Predicate<Outcome> wanted) {
    return outcomes.stream().filter(wanted).toList();
  }

  private static String row(String name, List<Outcome> some) {
    List<Outcome> right = some.stream().filter(Outcome::rightPin).toList();
    double[] errors = right.stream().mapToDouble(Outcome::errorUm).sorted().toArray();
    return "| %s | %d | %s | %s | %s | %s | %s | %d |"
        .formatted(
            name,
            some.size(),
            TrialTable.plain(rate(some, Outcome::rightPin), 0),
            errors.length == 0
                ? "-"
                : String.format(
                    Locale.ROOT,
                    "%.1f / %.1f",
                    errors[errors.length / 2],
                    errors[(int) Math.min(errors.length - 1, 0.95 * errors.length)]),
            TrialTable.plain(rate(right, o -> o.errorUm() <= 2 * o.uUm()), 0),
            motions(some, true),
            motions(some, false),
            some.stream().filter(o -> o.pin() == 0).count());
  }

  private static ClusterRate rate(List<Outcome> some, Predicate<Outcome> so) {
    ClusterRate.Builder rate = new ClusterRate.Builder();
    some.forEach(o -> rate.add(o.truth().set(), so.test(o)));
    return rate.rate();
  }

  private static String motions(List<Outcome> some, boolean loose) {
    List<Outcome> those =
        some.stream().filter(o -> o.rightPin() && o.truth().loose() == loose).toList();
    Map<Motion, Long> counts = new TreeMap<>();
    those.forEach(o -> counts.merge(o.motion(), 1L, Long::sum));
    return "%d, %d, %d"
        .formatted(
            counts.getOrDefault(Motion.MOVES, 0L),
            counts.getOrDefault(Motion.FIRM, 0L),
            counts.getOrDefault(Motion.CANNOT_TELL, 0L));
  }

  /** Every photo in which something wrong was said, or nothing. */
  private List<String> wrong() {
    return outcomes.stream()
        .filter(
            o ->
                !o.rightPin()
                    || o.motion() == Motion.CANNOT_TELL
                    || (o.truth().loose() && o.motion() == Motion.FIRM)
                    || (!o.truth().loose() && o.motion() == Motion.MOVES))
        .sorted(Comparator.comparing(o -> o.truth().photo().getFileName().toString()))
        .map(NudgeTally::told)
        .toList();
  }

  private static String told(Outcome o) {
    return String.format(
        Locale.ROOT,
        "%s%s: pin %d, %s by %.1f um; said: pin %d, %s, %.1f um (u %.1f) %s",
        o.grave() ? "WRONG " : "",
        o.truth().photo().getFileName(),
        o.truth().pin(),
        o.truth().loose() ? "loose" : "firm",
        o.truth().shiftUm(),
        o.pin(),
        o.motion().id(),
        o.shiftUm(),
        o.uUm(),
        o.reason());
  }
}
