package leadlight.trial.list;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import leadlight.numeric.Quantiles;
import leadlight.trial.outcome.JointOutcome;
import leadlight.trial.outcome.JointResult;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.outcome.Slip;

/** The slips of a trial as text. */
public final class SlipList {

  private SlipList() {}

  /**
   * Rows that were not right, then the slips of one kind after the other, at most {@code most} of
   * each; ends with a line break unless there are none.
   */
  public static String of(List<PhotoOutcome> outcomes, int most) {
    StringBuilder text = new StringBuilder();
    outcomes.stream()
        .filter(outcome -> outcome.row() != RowResult.RIGHT)
        .forEach(outcome -> text.append(row(outcome)));
    List<Slip> slips = outcomes.stream().flatMap(outcome -> Slip.of(outcome).stream()).toList();
    for (JointResult result : Slip.KINDS) {
      List<Slip> mine = slips.stream().filter(slip -> slip.result() == result).toList();
      mine.stream().limit(most).forEach(slip -> text.append(line(slip)));
      if (mine.size() > most) {
        text.append("  and %d more %s%n".formatted(mine.size() - most, name(result)));
      }
    }
    return text.toString().replace("\r\n", "\n");
  }

  private static String row(PhotoOutcome outcome) {
    String photo = outcome.truth().photo();
    return outcome.row() == RowResult.NOT_FOUND
        ? "  row of %s not found: %s%n".formatted(photo, outcome.reason())
        : String.format(
            Locale.ROOT,
            "  row of %s wrong: in the median %.2f pitch off%s%n",
            photo,
            outcome.medianOfPitch(),
            directions(outcome));
  }

  /** Of leads that are there; empty if none is. */
  private static String directions(PhotoOutcome outcome) {
    double along = median(outcome, JointOutcome::lateralPx);
    return Double.isNaN(along)
        ? ""
        : String.format(
            Locale.ROOT,
            ", %.2f along the row, %.2f along the lead",
            along,
            median(outcome, JointOutcome::axialPx));
  }

  private static double median(
      PhotoOutcome outcome, Function<JointOutcome, OptionalDouble> distancePx) {
    double[] distances =
        outcome.joints().stream()
            .map(distancePx)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(distance -> Math.abs(distance.getAsDouble()))
            .toArray();
    return Quantiles.middle(distances) / outcome.truth().pitchPx();
  }

  private static String line(Slip slip) {
    return "  %s %s pin %d: is %s; said %s%n"
        .formatted(name(slip.result()), slip.photo(), slip.pin(), slip.truth(), slip.opinion());
  }

  static String name(JointResult result) {
    return result.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
