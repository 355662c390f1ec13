package leadlight.archive;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.explode;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import leadlight.model.UserError;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;

/** What an archive holds. */
final class Results {

  private final SparkSession spark;
  private final String folder;

  Results(SparkSession spark, String folder) {
    this.spark = spark;
    this.folder = plain(folder);
  }

  /** Refuses what Spark would take for a pattern. */
  static String plain(String path) {
    if (path.matches(".*[\\[\\]{}*?].*")) {
      throw new UserError(path + ": a name with one of []{}*? means many to Spark; rename it");
    }
    return path;
  }

  /** Refuses to write over anything. */
  void refuseExisting(String other) {
    try {
      Path path = new Path(plain(other));
      if (path.getFileSystem(spark.sparkContext().hadoopConfiguration()).exists(path)) {
        throw new UserError(other + " is there already; name a folder that is not");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Photos that need not be read again; one that could not be used may be there the next time. */
  Optional<Dataset<Row>> scored(String version) {
    return ofVersion(version).map(all -> all.filter(col("outcome").equalTo("scored")));
  }

  /** All photos, or none where nothing was read yet. */
  private Optional<Dataset<Row>> photos() {
    try {
      Path files = new Path(folder, "version=*/*.parquet");
      return files().globStatus(files).length > 0
          ? Optional.of(spark.read().schema(ArchiveRows.PHOTO).parquet(folder))
          : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private FileSystem files() throws IOException {
    return new Path(folder).getFileSystem(spark.sparkContext().hadoopConfiguration());
  }

  /**
   * Removes what a stopped run had not committed: the next commit would take its finished tasks
   * along, and their photos would be there twice.
   */
  void clearStopped() {
    try {
      files().delete(new Path(folder, "_temporary"), true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Optional<Dataset<Row>> ofVersion(String version) {
    return photos().map(all -> all.filter(col("version").equalTo(version)));
  }

  /** Photos that could not be used, of all versions. */
  long bad() {
    return photos().map(all -> all.filter(col("outcome").notEqual("scored")).count()).orElse(0L);
  }

  /** One row a joint, of photos whose row was found; of one version, or of all. */
  Dataset<Row> joints(Optional<String> version) {
    Dataset<Row> all =
        version
            .map(v -> ofVersion(v).filter(found -> !found.isEmpty()).orElseThrow(() -> none(v)))
            .or(this::photos)
            .orElseThrow(() -> new UserError(folder + " holds no results; read a table first"));
    return all.withColumn("joint", explode(col("joints")))
        .select(
            col("asked"),
            col("photo"),
            col("site"),
            col("lamp"),
            col("connector"),
            col("version"),
            col("joint.pin").as("pin"),
            col("joint.verdict").as("verdict"),
            col("joint.findings.kind").as("findings"));
  }

  private UserError none(String version) {
    String known =
        photos()
            .map(
                all ->
                    String.join(
                        ", ",
                        all.select("version").distinct().as(Encoders.STRING()).collectAsList()))
            .orElse("none");
    return new UserError(
        "%s holds nothing of version %s; it holds %s".formatted(folder, version, known));
  }
}
