package leadlight.cli.option;

import java.util.Arrays;
import java.util.Optional;

/** Numbers that a person writes behind each other, as "1.0,1.9": places, boxes, sizes. */
public final class NumberList {

  private NumberList() {}

  /** The numbers; empty if there are not so many, or one is none or not finite. */
  public static Optional<double[]> of(String text, int count) {
    try {
      double[] numbers =
          Arrays.stream(text.split(",", -1)).mapToDouble(Double::parseDouble).toArray();
      return Optional.of(numbers)
          .filter(it -> it.length == count && Arrays.stream(it).allMatch(Double::isFinite));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }
}
