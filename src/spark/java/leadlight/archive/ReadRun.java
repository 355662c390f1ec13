package leadlight.archive;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.crc32;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.pmod;

import java.util.function.Consumer;
import leadlight.model.UserError;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;

/**
 * Reads what a table asks for and the archive does not have by this version: in waves, each
 * committed as a whole. A run that was stopped loses its last wave and does nothing twice.
 */
final class ReadRun {

  /** Parts a core gets of a wave, so that one slow photo does not leave the others idle. */
  private static final int PARTS_A_CORE = 4;

  private final SparkSession spark;
  private final String archive;
  private final int wave;

  ReadRun(SparkSession spark, String archive, int wave) {
    if (wave < 1) {
      throw new UserError("--wave must be 1 or more, is " + wave);
    }
    this.spark = spark;
    this.archive = archive;
    this.wave = wave;
  }

  /**
   * What came of a run.
   *
   * @param before photos that were read before
   * @param scored photos scored now
   * @param bad photos that could not be used, now
   */
  record Counts(long before, long scored, long bad) {

    String line() {
      return "%d photos scored, %d could not be used, %d were read before"
          .formatted(scored, bad, before);
    }
  }

  /** One run at a time writes into an archive. */
  Counts read(Dataset<Row> table, Consumer<String> progress) {
    Results results = new Results(spark, archive);
    results.clearStopped();
    Dataset<Row> pending = pending(table).cache();
    long asked = table.count();
    long open = pending.count();
    long waves = (open + wave - 1) / wave;
    int parts = PARTS_A_CORE * spark.sparkContext().defaultParallelism();
    long badBefore = results.bad();
    for (long i = 0; i < waves; i++) {
      pending
          .filter(pmod(crc32(col("asked").cast("binary")), lit(waves)).equalTo(i))
          .repartition(parts)
          .map(new PhotoScoring(), Encoders.row(ArchiveRows.PHOTO))
          .write()
          .mode(SaveMode.Append)
          .partitionBy("version")
          .parquet(archive);
      progress.accept("wave %d of %d".formatted(i + 1, waves));
    }
    pending.unpersist();
    long bad = results.bad() - badBefore;
    return new Counts(asked - open, open - bad, bad);
  }

  private Dataset<Row> pending(Dataset<Row> table) {
    return new Results(spark, archive)
        .scored(PhotoScoring.version())
        .map(
            done ->
                table.join(
                    done.select("asked"),
                    table.col("asked").equalTo(done.col("asked")),
                    "left_anti"))
        .orElse(table);
  }
}
