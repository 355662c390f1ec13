/**
 * An archive of photos read on Apache Spark: each photo as {@code score} reads it, results as
 * Parquet, and what a shop asks of them.
 *
 * <p>In: a table of photos and what is asked of each. Out: one row a photo with its joints, rates,
 * changes between two versions. May use: {@code model}, {@code connector}, {@code grade}, {@code
 * pipeline}, {@code photo}, {@code reader}, {@code report}, {@code vision}, {@code app}, {@code
 * data}, {@code cli}, picocli, Jackson, Spark.
 */
package leadlight.archive;
