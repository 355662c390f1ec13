package leadlight.quality.sampling;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import leadlight.data.Basis;
import leadlight.data.DataFile;
import leadlight.data.Provenance;
import leadlight.model.UserError;

/**
 * Single sampling by acceptance quality limit: {@code models/quality/sampling.json}. The master
 * tables are kept as what they are, one run of acceptance numbers that each diagonal repeats.
 *
 * @param basis what it rests on
 * @param letters code letters, one a line of the master tables
 * @param lotTo greatest lot size of each step; the last step has no end
 * @param levelsFromMemory levels whose code letters are not read in the table
 * @param levels code letter of each step, by inspection level
 * @param aqlPercent columns of the master tables
 * @param zeroOfFirstLetter column of acceptance number 0 in the first line; one less a line
 * @param schemes sample sizes and diagonals by severity
 * @param doubles double plans
 * @param sequential bounds of sequential plans
 * @param switching when severity changes
 */
public record SamplingScheme(
    @JsonProperty(required = true) Basis basis,
    @JsonProperty(required = true) List<String> letters,
    @JsonProperty(required = true) List<Integer> lotTo,
    @JsonProperty(required = true) List<String> levelsFromMemory,
    @JsonProperty(required = true) Map<String, List<String>> levels,
    @JsonProperty(required = true) List<Double> aqlPercent,
    @JsonProperty(required = true) int zeroOfFirstLetter,
    @JsonProperty(required = true) Map<Severity, Master> schemes,
    @JsonProperty(required = true) Doubles doubles,
    @JsonProperty(required = true) Sequential sequential,
    @JsonProperty(required = true) SwitchingRules switching) {

  /** How far a sequential plan may go on. */
  public record Sequential(
      @JsonProperty(required = true) int mostUnits, @JsonProperty(required = true) String source) {}

  /**
   * A master table.
   *
   * @param sizes sample size of each line
   * @param diagonal "up", "down", an acceptance number, or "accept/refuse"
   * @param lateBy columns by which the diagonal begins later than in the normal table
   * @param zeroFromLine first line that has its acceptance number 0; above it is an arrow down
   * @param source which table of which edition
   * @param provenance how it got here
   */
  public record Master(
      @JsonProperty(required = true) List<Integer> sizes,
      @JsonProperty(required = true) List<String> diagonal,
      @JsonProperty(required = true) int lateBy,
      @JsonProperty(required = true) int zeroFromLine,
      @JsonProperty(required = true) String source,
      @JsonProperty(required = true) Provenance provenance) {}

  /**
   * Double plans in place of single ones; both samples are one line of the master table smaller.
   *
   * @param numbers by the single plan's acceptance number: "accept/refuse accept both/refuse both"
   */
  public record Doubles(
      @JsonProperty(required = true) Map<String, String> numbers,
      @JsonProperty(required = true) String source,
      @JsonProperty(required = true) Provenance provenance) {}

  /** The scheme that the program carries. */
  public static SamplingScheme builtIn() {
    return DataFile.builtIn("quality/sampling.json").read(SamplingScheme.class);
  }

  /**
   * The code letter of a lot.
   *
   * @param level I, II, III or S-1 to S-4
   * @throws UserError if the lot has fewer than two units or the level is unknown
   */
  public String letter(int lot, String level) {
    if (lot < 2) {
      throw new UserError("a lot of " + lot + " cannot be sampled; look at every unit");
    }
    List<String> steps = levels.get(known(level));
    int step = 0;
    while (step < lotTo.size() && lot > lotTo.get(step)) {
      step++;
    }
    return steps.get(step);
  }

  /** A level by its own name: "s-2" and "S2" are S-2, "ii" is II. */
  private String known(String typed) {
    String plain = plain(typed);
    return levels.keySet().stream()
        .filter(level -> plain(level).equals(plain))
        .findFirst()
        .orElseThrow(
            () ->
                new UserError(
                    "level " + typed + " is unknown; use I, II, III, S-1, S-2, S-3 or S-4"));
  }

  private static String plain(String level) {
    return level.toUpperCase(Locale.ROOT).replace("-", "");
  }

  /**
   * The plan for a lot. Where the table has an arrow, the next line that has a number is used with
   * its own sample size. A sample that would exceed the lot is the whole lot.
   *
   * @throws UserError if the limit is none of the table's
   */
  public Plan plan(int lot, String level, double aql, Severity severity) {
    String letter = letter(lot, level);
    int start = letters.indexOf(letter);
    int line = followed(start, column(aql), schemes.get(severity));
    Master master = schemes.get(severity);
    String[] numbers = cell(line, column(aql), master).split("/");
    int accept = Integer.parseInt(numbers[0]);
    int refuse = numbers.length > 1 ? Integer.parseInt(numbers[1]) : accept + 1;
    int size = Math.min(lot, master.sizes().get(line));
    String why =
        "%s, level %s, AQL %s %%, %s inspection: code letter %s%s%s%s; table %s"
            .formatted(
                master.source(),
                known(level),
                aqlText(aql),
                severity.word(),
                letter,
                levelsFromMemory.contains(known(level)) ? " (of this level, from memory)" : "",
                line == start ? "" : ", arrow to " + name(line),
                size < master.sizes().get(line) ? ", sample at least the lot: inspect all" : "",
                master.provenance().words());
    return new Plan(size, accept, refuse, why);
  }

  /**
   * The double plan in place of a single one.
   *
   * @throws UserError if the table has none
   */
  public DoublePlan doublePlan(int lot, String level, double aql, Severity severity) {
    Plan single = plan(lot, level, aql, severity);
    int line = schemes.get(severity).sizes().indexOf(single.size());
    String numbers = doubles.numbers().get("" + single.accept());
    if (severity == Severity.REDUCED || numbers == null || line < 1) {
      throw new UserError(
          "there is no double plan for %s inspection with acceptance number %d; use the single one"
              .formatted(severity.word(), single.accept()));
    }
    int size = schemes.get(severity).sizes().get(line - 1);
    String[] parts = numbers.split("[ /]");
    return new DoublePlan(
        size,
        Integer.parseInt(parts[0]),
        Integer.parseInt(parts[1]),
        size,
        Integer.parseInt(parts[2]),
        "in place of the single plan %d, Ac %d; %s, %s"
            .formatted(
                single.size(), single.accept(), doubles.source(), doubles.provenance().words()));
  }

  /** A line's letter; the tightened table has one more, S. */
  private String name(int line) {
    return line < letters.size() ? letters.get(line) : "S";
  }

  private int followed(int start, int column, Master master) {
    int line = start;
    int step = 0;
    while (line >= 0 && line < master.sizes().size()) {
      String cell = cell(line, column, master);
      if (!cell.equals("up") && !cell.equals("down")) {
        return line;
      }
      // An arrow is followed to its end; the next cell's own arrow is part of the same one.
      step = step == 0 ? cell.equals("up") ? -1 : 1 : step;
      line += step;
    }
    // Off the table: the other way, as at its corners.
    return followedBack(start, column, master, -step);
  }

  private int followedBack(int start, int column, Master master, int step) {
    int line = start;
    while (cell(line, column, master).matches("up|down")) {
      line += step;
    }
    return line;
  }

  private String cell(int line, int column, Master master) {
    int place = column - (zeroOfFirstLetter - line) - master.lateBy();
    if (place < 0 || place == 0 && line < master.zeroFromLine()) {
      return "down";
    }
    return place < master.diagonal().size() ? master.diagonal().get(place) : "up";
  }

  private int column(double aql) {
    int column = aqlPercent.indexOf(aql);
    if (column < 0) {
      String known =
          aqlPercent.stream().map(SamplingScheme::aqlText).collect(Collectors.joining(" "));
      throw new UserError("AQL " + aqlText(aql) + " % is not in the table; use one of " + known);
    }
    return column;
  }

  private static String aqlText(double aql) {
    return java.math.BigDecimal.valueOf(aql).stripTrailingZeros().toPlainString();
  }
}
