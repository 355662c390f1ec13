package leadlight.archive;

import static org.apache.spark.sql.functions.coalesce;
import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.concat_ws;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.trim;

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
        spark.read().option("header", true).csv(file.toAbsolutePath().normalize().toString());
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
    return table
        .select(columns)
        .withColumn("asked", concat_ws("|", asked))
        .dropDuplicates("asked")
        .withColumn("folder", lit(folder.toString()));
  }

  private static Column text(String name) {
    return coalesce(trim(col(name)), lit("")).as(name);
  }
}
