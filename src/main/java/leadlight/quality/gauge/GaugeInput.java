package leadlight.quality.gauge;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import leadlight.quality.Days;
import leadlight.quality.Table;
import leadlight.quality.gauge.variance.GaugeData;

/**
 * What a gauge study starts from.
 *
 * @param readings measured values
 * @param verdicts verdicts of the same parts
 * @param references known values by part and measure
 */
public record GaugeInput(
    List<Measured> readings, List<Flips.Said> verdicts, Map<List<String>, Double> references) {

  /** Without known values. */
  public GaugeInput(List<Measured> readings, List<Flips.Said> verdicts) {
    this(readings, verdicts, Map.of());
  }

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
    references = Map.copyOf(references);
  }

  /**
   * Reads the columns part, operator, trial, measure, value and, if there, verdict, day (2026-11-25
   * or 25.11.2026) and reference, the known value.
   *
   * @throws leadlight.model.UserError if a cell is missing or makes no sense
   */
  public static GaugeInput read(Path file) {
    List<Measured> readings = new ArrayList<>();
    List<Flips.Said> verdicts = new ArrayList<>();
    Set<List<String>> seen = new LinkedHashSet<>();
    Map<List<String>, Double> references = new LinkedHashMap<>();
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
      if (row.maybe("reference").isPresent()) {
        reference(references, row, row.number("reference"));
      }
      Optional<String> verdict = row.maybe("verdict");
      if (verdict.isPresent() && seen.add(List.of("v", part, operator, trial))) {
        verdicts.add(new Flips.Said(part, operator, verdict.get()));
      }
    }
    return new GaugeInput(readings, verdicts, references);
  }

  /** The same with the known values of a file: part, measure, value. */
  public GaugeInput with(Path known) {
    Map<List<String>, Double> all = new LinkedHashMap<>(references);
    for (Table.Row row : Table.read(known, "part", "measure", "value").rows()) {
      reference(all, row, row.number("value"));
    }
    return new GaugeInput(readings, verdicts, all);
  }

  private static void reference(Map<List<String>, Double> to, Table.Row row, double value) {
    Double before = to.put(List.of(row.text("part"), row.text("measure")), value);
    if (before != null && before != value) {
      throw row.trouble(
          "%s of %s is known as %s and as %s; correct one"
              .formatted(row.text("measure"), row.text("part"), before, value));
    }
  }

  List<Bias.Known> known(String measure) {
    return readings.stream()
        .filter(r -> r.measure().equals(measure))
        .filter(r -> references.containsKey(List.of(r.part(), measure)))
        .map(r -> new Bias.Known(r.part(), references.get(List.of(r.part(), measure)), r.value()))
        .toList();
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
    LocalDate day =
        Days.of(text.get())
            .orElseThrow(
                () ->
                    row.trouble(
                        "\"day\" is \"" + text.get() + "\", not a date such as 2026-11-25"));
    return OptionalDouble.of((double) day.toEpochDay());
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
