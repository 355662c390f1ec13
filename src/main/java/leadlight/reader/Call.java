package leadlight.reader;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadlight.model.Chances;
import leadlight.model.Question;

/** The faults that the reader calls. */
final class Call {

  /**
   * Open is one name of unwetted, no fault of its own; a quarter of overhang is part of the half.
   */
  private static final List<Question> FAULTS =
      List.of(
          Question.MISSING,
          Question.UNWETTED,
          Question.EXCESS,
          Question.BRIDGE_BEFORE,
          Question.BRIDGE_AFTER,
          Question.BALL,
          Question.OVER_HALF);

  private Call() {}

  /** The likeliest fault, if one is likelier than not. */
  static Optional<Question> strongest(Chances chances) {
    return FAULTS.stream()
        .max(Comparator.comparingDouble(chances::of))
        .filter(fault -> chances.of(fault) >= 0.5);
  }
}
