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
import leadlight.text.Messages;

/** A sitting's result in words and figures. */
public final class ResultWords {

  private final Sitting sitting;
  private final List<DrillAnswer> answers;
  private final Messages words;

  ResultWords(Sitting sitting, List<DrillAnswer> answers, Messages words) {
    this.sitting = sitting;
    this.words = words;
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
              figures.add(figure("missed", f.missed()));
              figures.add(figure("false-alarms", f.falseAlarm()));
              figures.add(figure("not-judged", f.notJudged()));
              figures.add(
                  new Views.Figure(
                      words.get("drill.kappa"), value(f.kappa(), words), range(f.kappa(), words)));
            });
    return new Views.Result(
        words.get("drill.right-of", right, counted),
        figures,
        specimens,
        words.get("drill.certifies-nothing"));
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
              words.get("drill.beside." + side.id() + ".title"),
              "" + count,
              listed ? pins(count, pins) : words.get("drill.all", answers.size())));
    }
    long agreed = answers.stream().filter(a -> BesideTool.of(a) == BesideTool.AGREED).count();
    return new Views.Result(
        words.get("drill.alike-of", agreed, answers.size()),
        figures,
        specimens,
        words.get("drill.not-the-truth") + " " + words.get("drill.certifies-nothing"));
  }

  private String pins(long count, String pins) {
    return words.get(count == 1 ? "drill.pins.one" : "drill.pins.many", pins);
  }

  private Views.Figure figure(String what, Rated rate) {
    String name = words.get("drill." + what);
    return rate.of() == 0
        ? new Views.Figure(name, words.get("drill.none-to-rate"), "")
        : new Views.Figure(
            name,
            words.get("drill.of", rate.count(), rate.of()),
            words.get(
                "drill.range",
                words.get("drill." + what + ".of"),
                percent(rate.lower()),
                percent(rate.upper())));
  }

  /** Whole per cent, without the sign. */
  public static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f", 100 * share);
  }

  public static String value(Coefficient kappa, Messages words) {
    return kappa
        .value()
        .map(value -> fixed(value, words))
        .orElseGet(() -> words.get("drill.not-defined"));
  }

  /** Two decimals, never "-0.00"; with a plain minus, for terminals. */
  private static String fixed(double value, Messages words) {
    return words.number(value, 2).replace('\u2212', '-');
  }

  public static String range(Coefficient kappa, Messages words) {
    return kappa
        .interval()
        .map(k -> words.get("drill.to", fixed(k.lower(), words), fixed(k.upper(), words)))
        .orElseGet(
            () -> words.get(kappa.value().isEmpty() ? "drill.one-kind" : "drill.no-interval"));
  }
}
