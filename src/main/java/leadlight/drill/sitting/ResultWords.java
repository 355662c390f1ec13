package leadlight.drill.sitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leadlight.drill.skill.BesideTool;
import leadlight.drill.skill.Figures;
import leadlight.drill.skill.Outcome;
import leadlight.quality.agreement.Coefficient;
import leadlight.record.DrillAnswer;
import leadlight.record.Sitting;
import leadlight.statistics.Rated;

/** A sitting's result in words and figures. */
public final class ResultWords {

  public static final String CERTIFIES_NOTHING =
      "This says what was shown on these pictures. It certifies nothing: no person, no skill at"
          + " the bench, no board.";

  private final Sitting sitting;
  private final List<DrillAnswer> answers;

  ResultWords(Sitting sitting, List<DrillAnswer> answers) {
    this.sitting = sitting;
    this.answers = List.copyOf(answers);
  }

  Views.Result result(List<Views.Done> specimens) {
    return sitting.set().ownWork() ? own(specimens) : drill(specimens);
  }

  private Views.Result drill(List<Views.Done> specimens) {
    long right = answers.stream().filter(a -> Outcome.of(a).isRight()).count();
    long counted = answers.stream().filter(a -> Outcome.of(a).counts()).count();
    List<Views.Figure> figures = new ArrayList<>();
    Figures.of(answers)
        .ifPresent(
            f -> {
              figures.add(figure("Missed", f.missed(), "of the defects"));
              figures.add(figure("False alarms", f.falseAlarm(), "of the sound joints"));
              figures.add(figure("Not judged", f.notJudged(), "of all"));
              figures.add(
                  new Views.Figure("Kappa with the truth", value(f.kappa()), range(f.kappa())));
            });
    return new Views.Result(
        right + " of " + counted + " right", figures, specimens, CERTIFIES_NOTHING);
  }

  private Views.Result own(List<Views.Done> specimens) {
    List<Views.Figure> figures = new ArrayList<>();
    for (BesideTool side : BesideTool.values()) {
      String pins =
          String.join(
              ", ",
              answers.stream()
                  .filter(a -> BesideTool.of(a) == side)
                  .map(a -> "" + a.pin())
                  .toList());
      long count = answers.stream().filter(a -> BesideTool.of(a) == side).count();
      boolean listed = side != BesideTool.AGREED && count > 0;
      figures.add(
          new Views.Figure(
              side.title(),
              "" + count,
              listed ? (count == 1 ? "pin " : "pins ") + pins : "of " + answers.size()));
    }
    long agreed = answers.stream().filter(a -> BesideTool.of(a) == BesideTool.AGREED).count();
    return new Views.Result(
        agreed + " of " + answers.size() + " alike",
        figures,
        specimens,
        "Leadlight is not the truth: where you differ, look again, then settle it at the bench. "
            + CERTIFIES_NOTHING);
  }

  static Views.Figure figure(String name, Rated rate, String ofWhat) {
    return rate.of() == 0
        ? new Views.Figure(name, "none to rate", "")
        : new Views.Figure(
            name,
            rate.count() + " of " + rate.of(),
            String.format(
                Locale.ROOT,
                "%s, %.0f to %.0f %%",
                ofWhat,
                100 * rate.lower(),
                100 * rate.upper()));
  }

  public static String value(Coefficient kappa) {
    return kappa.value().map(ResultWords::fixed).orElse("not defined");
  }

  /** Two decimals, never "-0.00". */
  private static String fixed(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.equals("-0.00") ? "0.00" : text;
  }

  public static String range(Coefficient kappa) {
    return kappa
        .interval()
        .map(k -> fixed(k.lower()) + " to " + fixed(k.upper()))
        .orElse(
            kappa.value().isEmpty()
                ? "answers of one kind only"
                : "no interval: it hangs on single joints");
  }
}
