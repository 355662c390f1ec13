package leadlight.app.quality;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadlight.quality.Table;

/** What inspectors filled in of a sample: {@code results.csv}. */
public final class SampleResults {

  public static final String BAD = "defect";
  public static final String GOOD = "acceptable";

  private SampleResults() {}

  /** The verdicts filled in, each with its finding behind "defect". */
  public static Map<String, String> verdicts(Path folder, List<String> items) {
    Map<String, String> verdicts = new LinkedHashMap<>();
    for (Table.Row row : Table.read(folder.resolve("results.csv"), "item", "verdict").rows()) {
      String item = row.text("item");
      if (!items.contains(item)) {
        throw row.trouble("\"" + item + "\" was not drawn; the units are those of plan.json");
      }
      if (row.maybe("verdict").isEmpty()) {
        continue;
      }
      String verdict = row.text("verdict");
      if (!verdict.equals(GOOD) && !verdict.equals(BAD)) {
        throw row.trouble("\"" + verdict + "\" is no verdict here; write acceptable or defect");
      }
      if (verdicts.put(item, verdict + row.maybe("finding").map(f -> ", " + f).orElse(""))
          != null) {
        throw row.trouble("\"" + item + "\" has a result already; delete one line");
      }
    }
    return verdicts;
  }
}
