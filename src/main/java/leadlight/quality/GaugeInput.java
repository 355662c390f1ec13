package leadlight.quality;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a gauge study starts from.
 *
 * @param readings measured values
 * @param verdicts verdicts of the same parts
 */
public record GaugeInput(List<Measured> readings, List<Flips.Said> verdicts) {

  /**
   * A measured value.
   *
   * @param day days since 1970-01-01, if dated
   * @param measure name with unit
   */
  public record Measured(
      String part, String operator, OptionalDouble day, String measure, double value) {}

  /** Copies. */
  public GaugeInput {
    readings = List.copyOf(readings);
    verdicts = List.copyOf(verdicts);
  }

  /**
   * Reads the columns part, operator, trial, measure, value and, if there, verdict and day
   * (2026-11-25).
   *
   * @throws leadlight.model.UserError if a cell is missing or makes no sense
   */
  public static GaugeInput read(Path file) {
    List<Measured> readings = new ArrayList<>();
    List<Flips.Said> verdicts = new ArrayList<>();
    Set<List<String>> seen = new LinkedHashSet<>();
    Table table = Table.read(file, "part", "operator", "trial", "measure", "value");
    for (Table.Row row : table.rows()) {
      String part = row.text("part");
      String operator = row.text("operator");
      String trial = row.text("trial");
      String measure = row.text("measure");
      if (!seen.add(List.of("m", part, operator, trial, measure))) {
        throw row.trouble(
            "%s of %s by %s in trial %s was given before; delete one line"
                .formatted(measure, part, operator, trial));
      }
      readings.add(new Measured(part, operator, day(row), measure, row.number("value")));
      Optional<String> verdict = row.maybe("verdict");
      if (verdict.isPresent() && seen.add(List.of("v", part, operator, trial))) {
        verdicts.add(new Flips.Said(part, operator, verdict.get()));
      }
    }
    return new GaugeInput(readings, verdicts);
  }

  /**
   * The day of a line.
   *
   * @throws leadlight.model.UserError if the cell is no date
   */
  public static OptionalDouble day(Table.Row row) {
    Optional<String> text = row.maybe("day");
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of((double) LocalDate.parse(text.get()).toEpochDay());
    } catch (DateTimeParseException e) {
      throw row.trouble("\"day\" is \"" + text.get() + "\", not a date such as 2026-11-25");
    }
  }

  /** Names of the measures, in their order. */
  public List<String> measures() {
    return readings.stream().map(Measured::measure).distinct().toList();
  }

  List<GaugeData.Reading> of(String measure) {
    return readings.stream()
        .filter(r -> r.measure().equals(measure))
        .map(r -> new GaugeData.Reading(r.part(), r.operator(), r.value()))
        .toList();
  }

  List<Drift.Dated> dated(String measure) {
    return readings.stream()
        .filter(r -> r.measure().equals(measure) && r.day().isPresent())
        .map(r -> new Drift.Dated(r.part(), r.day().getAsDouble(), r.value()))
        .toList();
  }

  /** Mean of a measure over all readings; empty without any. */
  public OptionalDouble mean(String measure) {
    return readings.stream()
        .filter(r -> r.measure().equals(measure))
        .mapToDouble(Measured::value)
        .average();
  }
}
