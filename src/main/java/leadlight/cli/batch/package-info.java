/**
 * {@code batch} and {@code watch}: many photos, and what they come to.
 *
 * <p>In: folders and manifests. Out: a run's folder, lines. May use: {@code app.output}, {@code
 * app.record}, {@code app.score}, {@code batch}, {@code batch.list}, {@code cli.bench}, {@code
 * cli.option}, {@code cli.terminal}, {@code data}, {@code enrol}, {@code grade.limits}, {@code
 * model}, {@code page}, {@code record}, {@code record.scoring}, {@code text}, {@code vision}.
 */
package leadlight.cli.batch;
