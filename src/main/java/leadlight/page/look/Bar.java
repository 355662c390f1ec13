package leadlight.page.look;

import leadlight.model.joint.LimitCheck;
import leadlight.page.words.PageContext;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;

/**
 * A measure against its limit as a bar of {@link #WIDTH} units that begins at 0; of a measure below
 * 0, a lead inside its land, only what the doubt leaves above 0 is drawn.
 *
 * @param name what was measured
 * @param value value with its doubt, in words
 * @param limit the limit in words
 * @param kept how sure the limit is kept, in words
 * @param clause where the limit comes from
 * @param label the bar for those who do not see it
 * @param valueUnits the value's place
 * @param fromUnits where the doubt begins
 * @param toUnits where it ends
 * @param limitUnits the limit's place
 * @param atMost true if what lies right of the limit is out of bounds
 */
public record Bar(
    String name,
    String value,
    String limit,
    String kept,
    String clause,
    String label,
    double valueUnits,
    double fromUnits,
    double toUnits,
    double limitUnits,
    boolean atMost) {

  /** A measured value is never certain, though its chance may round to one. */
  private static final double ALMOST_SURE = Math.nextDown(1.0);

  public static final int WIDTH = 400;

  /** Doubt is drawn and said as twice the standard uncertainty, about 95 % (JCGM 100:2008, 6.2). */
  public static final double COVERAGE = 2;

  public static Bar of(LimitCheck check, PageContext context) {
    Messages words = context.words();
    LengthUnit unit = context.unit();
    double value = check.measured().value();
    double doubt = COVERAGE * check.measured().u();
    double end = 1.15 * Math.max(2 * check.limit(), Math.max(value, 0) + doubt);
    double from = value < 0 ? value - doubt : Math.max(0, value - doubt);
    String limit = words.lengthIn(check.limit(), unit);
    return new Bar(
        words.get("measure." + check.measure().id()),
        words.get(
            "measure.doubt", words.length(value, unit), words.length(doubt, unit), unit.symbol()),
        words.get(check.atMost() ? "measure.limit.most" : "measure.limit.least", limit),
        words.get("measure.kept", words.percent(Math.min(check.kept(), ALMOST_SURE))),
        context.limits().limit(check, words),
        words.get(
            "measure.bar",
            words.lengthIn(value, unit),
            words.lengthIn(from, unit),
            words.lengthIn(value + doubt, unit),
            limit),
        WIDTH * value / end,
        WIDTH * Math.max(0, from) / end,
        WIDTH * Math.max(0, value + doubt) / end,
        WIDTH * check.limit() / end,
        check.atMost());
  }
}
