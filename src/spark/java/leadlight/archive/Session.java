package leadlight.archive;

import java.util.function.Function;
import org.apache.spark.SparkConf;
import org.apache.spark.sql.SparkSession;

/** Spark as it was started: by a cluster's own launcher, or here on all cores. */
final class Session {

  private Session() {}

  private static SparkSession start() {
    SparkConf conf =
        new SparkConf()
            .setAppName("Leadlight archive")
            .setIfMissing("spark.master", "local[*]")
            .setIfMissing("spark.ui.enabled", "false")
            .setIfMissing("spark.sql.session.timeZone", "UTC")
            // Results are small beside photos: few files, not the 200 of the default.
            .setIfMissing("spark.sql.shuffle.partitions", "16");
    return SparkSession.builder().config(conf).getOrCreate();
  }

  /** Does something with Spark and stops it. */
  static <T> T with(Function<SparkSession, T> work) {
    SparkSession spark = start();
    try {
      return work.apply(spark);
    } finally {
      spark.stop();
    }
  }
}
