package leadlight.app.quality;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.quality.Table;
import leadlight.quality.sampling.SamplingScheme;
import leadlight.quality.sampling.SwitchingRules;
import leadlight.quality.sampling.SwitchingRules.LotResult;

/** A file of lots and what became of them, oldest first: columns lot, result. */
public final class LotFile {

  private LotFile() {}

  /** The results of a file of lots. */
  public static List<LotResult> read(Path file) {
    List<LotResult> results = new ArrayList<>();
    for (Table.Row row : Table.read(file, "lot", "result").rows()) {
      String text = row.text("result");
      results.add(
          Arrays.stream(LotResult.values())
              .filter(r -> id(r).equals(text))
              .findFirst()
              .orElseThrow(
                  () ->
                      row.trouble(
                          "\""
                              + text
                              + "\" is no result; accepted, accepted-ends-reduced, refused or resumed")));
    }
    return results;
  }

  /** How files name a result. */
  private static String id(LotResult result) {
    return result.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * A lot that is to be entered.
   *
   * @param resumed whether the cause of a stop is mended; entered before the lot, which must have
   *     been inspected tightened
   * @param reducedAgreed whether those responsible agree to reduced inspection
   */
  public record Entry(Path file, String name, boolean resumed, boolean reducedAgreed) {

    /**
     * Whether it can be entered, whatever becomes of it.
     *
     * @throws UserError if a lot of that name is entered already, if acceptance has stopped and is
     *     not resumed, or is resumed without a stop
     */
    public void check() {
      others();
      SwitchingRules.Standing before = standing(results());
      if (before.stopped() && !resumed) {
        throw new UserError(
            "%s: %s Then name --resumed, or leave --history out"
                .formatted(file, before.why().get(before.why().size() - 1)));
      }
      if (resumed && !before.stopped()) {
        throw new UserError(file + ": acceptance has not stopped; leave --resumed out");
      }
    }

    /** Adds the lot, if it still can be; in a line what the next one gets. */
    public String append(LotResult result) {
      check();
      List<LotResult> results = results();
      StringBuilder text = new StringBuilder("lot,result\n").append(others());
      if (resumed) {
        results.add(LotResult.RESUMED);
        text.append(line("before " + name, id(LotResult.RESUMED)));
      }
      results.add(result);
      text.append(line(name, id(result)));
      WholeFile.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
      return next(file, results, standing(results));
    }

    private SwitchingRules.Standing standing(List<LotResult> results) {
      return SamplingScheme.builtIn().switching().after(results, reducedAgreed);
    }

    private List<LotResult> results() {
      return Files.exists(file) ? read(file) : new ArrayList<>();
    }

    /** The lines of the lots so far. */
    private String others() {
      StringBuilder text = new StringBuilder();
      for (Table.Row row : Files.exists(file) ? Table.read(file).rows() : List.<Table.Row>of()) {
        if (row.text("lot").equals(name)) {
          throw row.trouble(
              "lot \"%s\" is entered already; name this one with --name, or leave --history out"
                  .formatted(name));
        }
        text.append(line(row.text("lot"), row.text("result")));
      }
      return text.toString();
    }
  }

  private static String next(Path file, List<LotResult> results, SwitchingRules.Standing standing) {
    long lots = results.stream().filter(it -> it != LotResult.RESUMED).count();
    return "With it %s %d %s; the next one gets %s inspection%s."
        .formatted(
            file.getFileName(),
            lots,
            lots == 1 ? "lot" : "lots",
            standing.severity().word(),
            standing.stopped()
                ? ", but acceptance stops until the cause is mended; then name --resumed"
                : "");
  }

  private static String line(String lot, String result) {
    return quoted(lot) + "," + result + "\n";
  }

  private static String quoted(String cell) {
    return "\"" + cell.replace("\"", "\"\"") + "\"";
  }
}
