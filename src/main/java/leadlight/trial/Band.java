package leadlight.trial;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.truth.PhotoTruth;

/**
 * A group of photos that is rated by itself.
 *
 * @param name name for people, as "ring" or "20-40 px"
 * @param photos which photos belong to it
 */
record Band(String name, Predicate<PhotoTruth> photos) {

  /** Bands of the operating range: refused, coarse, normal, full, shrunk. */
  private static final double[] EDGES_PX = {0, 10, 20, 40, 120, Double.POSITIVE_INFINITY};

  static List<Band> byLamp(List<PhotoOutcome> outcomes) {
    return outcomes.stream()
        .map(outcome -> outcome.truth().lamp())
        .distinct()
        .sorted()
        .map(lamp -> new Band(lamp, truth -> truth.lamp().equals(lamp)))
        .toList();
  }

  static List<Band> byPitch() {
    return IntStream.range(0, EDGES_PX.length - 1)
        .mapToObj(i -> ofPitch(EDGES_PX[i], EDGES_PX[i + 1]))
        .toList();
  }

  private static Band ofPitch(double fromPx, double toPx) {
    String name =
        Double.isInfinite(toPx)
            ? "above %.0f px".formatted(fromPx)
            : "%.0f-%.0f px".formatted(fromPx, toPx);
    return new Band(name, truth -> truth.pitchPx() >= fromPx && truth.pitchPx() < toPx);
  }

  List<PhotoOutcome> of(List<PhotoOutcome> outcomes) {
    return outcomes.stream().filter(outcome -> photos.test(outcome.truth())).toList();
  }
}
