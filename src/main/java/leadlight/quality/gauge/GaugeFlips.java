package leadlight.quality.gauge;

import java.util.ArrayList;
import java.util.List;
import leadlight.quality.Page;
import leadlight.quality.Words;
import leadlight.statistics.Rate;

/** How often verdicts change, on the page of a gauge study. */
final class GaugeFlips {

  private GaugeFlips() {}

  static void into(Page.Builder page, Flips flips, String operatorWord) {
    List<List<String>> rows = new ArrayList<>();
    flips
        .parts()
        .forEach(
            (part, rate) -> {
              Rate open = flips.undecided().get(part);
              if (rate.count() > 0 || open.count() > 0) {
                rows.add(
                    List.of(
                        part,
                        rate.count() + " of " + rate.of(),
                        open.count() + " of " + open.of()));
              }
            });
    List<List<String>> operators = new ArrayList<>();
    flips.operators().forEach((who, rate) -> operators.add(List.of(who, Words.rate(rate))));
    if (!flips.parts().isEmpty()) {
      page.heading("Verdicts that change")
          .text(rows.isEmpty() ? "Every part got one verdict throughout." : "")
          .grid(
              List.of(operatorWord, "other than the part's usual verdict (95 %, by board)"),
              operators)
          .grid(List.of("part", "other than usual", "no decision"), rows);
    }
  }
}
