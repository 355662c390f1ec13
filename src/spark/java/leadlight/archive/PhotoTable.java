package leadlight.archive;

import static org.apache.spark.sql.functions.coalesce;
import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.concat;
import static org.apache.spark.sql.functions.concat_ws;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.trim;
import static org.apache.spark.sql.functions.when;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leadlight.model.UserError;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;

/**
 * The table of photos: {@code photo} (a path, or an address that Spark reads; relative ones from
 * the table's folder), and what a line of a day's list says of the row: {@code connector}, {@code
 * row}, {@code leads}, {@code pitch_mm}, {@code body}, {@code class}; {@code site} and {@code lamp}
 * for counting.
 */
final class PhotoTable {

  static final List<String> ASKED =
      List.of("photo", "connector", "row", "leads", "pitch_mm", "body", "class");

  /** No name holds it. */
  private static final String BETWEEN = "\u001f";

  private static final List<String> KNOWN = known();

  private PhotoTable() {}

  private static List<String> known() {
    List<String> known = new ArrayList<>(ASKED);
    known.addAll(List.of("site", "lamp"));
    return known;
  }

  /** All columns as text, missing ones empty, and {@code asked}, which tells a line from others. */
  static Dataset<Row> read(SparkSession spark, Path file) {
    Dataset<Row> table =
        spark
            .read()
            .option("header", true)
            .option("mode", "FAILFAST")
            .csv(file.toAbsolutePath().normalize().toString());
    List<String> given = Arrays.asList(table.columns());
    if (!given.contains("photo")) {
      throw new UserError(
          "%s, line 1: no column \"photo\"; known are %s"
              .formatted(file, String.join(", ", KNOWN)));
    }
    for (String name : given) {
      if (!KNOWN.contains(name)) {
        throw new UserError(
            "%s, line 1: unknown column \"%s\"; known are %s"
                .formatted(file, name, String.join(", ", KNOWN)));
      }
    }
    Column[] columns =
        KNOWN.stream()
            .map(name -> given.contains(name) ? text(name) : lit("").as(name))
            .toArray(Column[]::new);
    Column[] asked = ASKED.stream().map(name -> col(name)).toArray(Column[]::new);
    Path folder = file.toAbsolutePath().normalize().getParent();
    Dataset<Row> lines =
        table
            .select(columns)
            .withColumn("photo", absolute(folder))
            .withColumn("asked", concat_ws(BETWEEN, asked))
            .distinct();
    List<Row> twice =
        lines.groupBy("asked").count().filter("count > 1").select("asked").takeAsList(1);
    if (!twice.isEmpty()) {
      throw new UserError(
          "%s: %s stands there twice, of different sites or lamps; leave one"
              .formatted(file, twice.get(0).getString(0).split(BETWEEN, 2)[0]));
    }
    return lines;
  }

  /** Two tables may have photos of one name. */
  private static Column absolute(Path folder) {
    return when(
            col("photo").rlike("^([a-z][a-z0-9]+:/|/)").or(col("photo").equalTo("")), col("photo"))
        .otherwise(concat(lit(folder + "/"), col("photo")));
  }

  private static Column text(String name) {
    return coalesce(trim(col(name)), lit("")).as(name);
  }
}
