package leadlight.app.quality;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import leadlight.data.WholeFile;
import leadlight.quality.Table;
import leadlight.quality.sampling.SamplingScheme;
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
   * Adds a lot; in a line what the next one gets.
   *
   * @throws leadlight.model.UserError if a lot of that name is entered already
   */
  public static String append(Path file, String name, LotResult result) {
    StringBuilder text = new StringBuilder("lot,result\n");
    List<LotResult> results = new ArrayList<>();
    if (Files.exists(file)) {
      results.addAll(read(file));
      for (Table.Row row : Table.read(file).rows()) {
        if (row.text("lot").equals(name)) {
          throw row.trouble(
              "lot \"%s\" is entered already; name this one with --name, or leave --history out"
                  .formatted(name));
        }
        text.append(quoted(row.text("lot"))).append(',').append(row.text("result")).append('\n');
      }
    }
    results.add(result);
    text.append(quoted(name)).append(',').append(id(result)).append('\n');
    WholeFile.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
    var standing = SamplingScheme.builtIn().switching().after(results, false);
    return "With it %s %d lots; the next one gets %s inspection%s."
        .formatted(
            file.getFileName(),
            results.size(),
            standing.severity().word(),
            standing.stopped() ? ", but acceptance stops until the cause is mended" : "");
  }

  private static String quoted(String cell) {
    return "\"" + cell.replace("\"", "\"\"") + "\"";
  }
}
