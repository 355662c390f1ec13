package leadlight.archive;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.count;
import static org.apache.spark.sql.functions.countDistinct;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.sum;
import static org.apache.spark.sql.functions.when;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;

/** Defects among the judged joints, by what joints share; unjudged ones are no opportunities. */
final class Rates {

  private static final List<String> BY = List.of("connector", "pin", "lamp", "site", "version");

  private Rates() {}

  /** A table, one line a group. */
  static List<String> of(Results results, String by, String version) {
    if (!BY.contains(by)) {
      throw new UserError("--by must be one of " + String.join(", ", BY) + ", is " + by);
    }
    Dataset<Row> counted =
        results
            .joints(Optional.ofNullable(version))
            .groupBy(col("version"), col(by).as("group"))
            .agg(
                countDistinct("photo").as("photos"),
                count(lit(1)).as("joints"),
                sum(is(Verdict.UNJUDGED)).as("unjudged"),
                sum(is(Verdict.DEFECT)).as("defects"))
            .orderBy("version", "group");
    List<String> lines = new ArrayList<>();
    lines.add("version,%s,photos,joints,judged,defects,per_million_judged".formatted(by));
    for (Row row : counted.collectAsList()) {
      lines.add(line(row));
    }
    return lines;
  }

  private static Column is(Verdict verdict) {
    return when(col("verdict").equalTo(verdict.id()), 1L).otherwise(0L);
  }

  private static String line(Row row) {
    long joints = row.getAs("joints");
    long unjudged = row.getAs("unjudged");
    long defects = row.getAs("defects");
    long photos = row.getAs("photos");
    long judged = joints - unjudged;
    String rate =
        judged == 0 ? "" : String.format(Locale.ROOT, "%.0f", 1e6 * defects / (double) judged);
    return "%s,%s,%d,%d,%d,%d,%s"
        .formatted(
            row.<String>getAs("version"),
            '"' + String.valueOf(row.<Object>getAs("group")).replace("\"", "\"\"") + '"',
            photos,
            joints,
            judged,
            defects,
            rate);
  }
}
