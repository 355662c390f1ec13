package leadlight.drill;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.drill.sitting.ResultWords;
import leadlight.quality.agreement.Coefficient;
import leadlight.statistics.Rated;
import leadlight.text.Messages;

/** Figures of drills as pages write them. */
final class DrillWords {

  private final Messages words;

  DrillWords(Messages words) {
    this.words = words;
  }

  /** "3 of 10, 30 % (11 to 60)". */
  String rate(Rated rate) {
    return rate.of() == 0
        ? words.get("drill.none-to-rate")
        : words.get(
            "drill.history.rate",
            rate.count(),
            rate.of(),
            ResultWords.percent(rate.share()),
            ResultWords.percent(rate.lower()),
            ResultWords.percent(rate.upper()));
  }

  /** "0.80 (0.55 to 1.00)". */
  String kappa(Coefficient kappa) {
    return ResultWords.value(kappa, words) + " (" + ResultWords.range(kappa, words) + ")";
  }

  /** What a truth, or an answer, is called: of a verdict or of findings, as tables name them. */
  String call(String ids) {
    return Stream.of(ids.split(" \\+ ", -1)).map(this::one).collect(Collectors.joining(" + "));
  }

  private String one(String id) {
    return Stream.of("kind." + id, "verdict." + id)
        .filter(words::has)
        .findFirst()
        .map(words::get)
        .orElseGet(() -> words.get("drill.history.limit"));
  }

  /** A day. Names of months are English ones: a trimmed Java knows no others. */
  String day(ZonedDateTime at) {
    return DateTimeFormatter.ofPattern(words.get("drill.day"), Locale.ENGLISH).format(at);
  }
}
