package leadlight.report.words;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers rounded to so many decimals, halves to the even digit, without noise digits. */
public final class Rounded {

  private Rounded() {}

  public static BigDecimal to(double value, int decimals) {
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
  }
}
