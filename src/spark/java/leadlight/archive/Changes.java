package leadlight.archive;

import static org.apache.spark.sql.functions.array_join;
import static org.apache.spark.sql.functions.coalesce;
import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.count;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.when;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.model.Verdict;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SaveMode;

/** Joints whose verdict two versions disagree about. */
final class Changes {

  /** Of a joint that only the other version has read: no row found, refused, or not yet read. */
  private static final String NOT_READ = "not-read";

  private final Dataset<Row> both;

  Changes(Results results, String before, String after) {
    Dataset<Row> was = results.joints(Optional.of(before)).as("was");
    Dataset<Row> is = results.joints(Optional.of(after)).as("is");
    this.both =
        was.join(
                is,
                col("was.asked")
                    .equalTo(col("is.asked"))
                    .and(col("was.pin").equalTo(col("is.pin"))),
                "full_outer")
            .select(
                coalesce(col("is.photo"), col("was.photo")).as("photo"),
                coalesce(col("is.pin"), col("was.pin")).as("pin"),
                coalesce(col("was.verdict"), lit(NOT_READ)).as("before"),
                coalesce(col("is.verdict"), lit(NOT_READ)).as("after"),
                array_join(col("was.findings"), " ").as("findings_before"),
                array_join(col("is.findings"), " ").as("findings_after"));
  }

  /** How many joints went from which verdict to which. */
  List<String> lines() {
    List<String> lines = new ArrayList<>(List.of("before,after,joints"));
    for (Row row :
        both.groupBy("before", "after")
            .agg(count(lit(1)).as("joints"))
            .orderBy("before", "after")
            .collectAsList()) {
      lines.add(
          "%s,%s,%d"
              .formatted(
                  row.<String>getAs("before"),
                  row.<String>getAs("after"),
                  row.<Long>getAs("joints")));
    }
    return lines;
  }

  /** Writes the joints to look at again, those first that both versions judge. */
  void write(String folder) {
    both.filter(col("before").notEqual(col("after")))
        .withColumn("first", when(judged("before").and(judged("after")), 0).otherwise(1))
        .orderBy("first", "photo", "pin")
        .drop("first")
        .coalesce(1)
        .write()
        .mode(SaveMode.ErrorIfExists)
        .option("header", true)
        .csv(folder);
  }

  private static Column judged(String column) {
    return col(column).notEqual(Verdict.UNJUDGED.id()).and(col(column).notEqual(NOT_READ));
  }
}
