/**
 * {@code batch} and {@code watch}: many photos, and what they come to.
 *
 * <p>In: folders and manifests. Out: a run's folder, lines. May use: {@code cli.bench}, {@code
 * cli.option}, {@code cli.terminal}, {@code batch}, {@code batch.list}, {@code connector}, {@code
 * data}, {@code enrol}, {@code grade.limits}, {@code model}, {@code model.joint}, {@code
 * model.result}, {@code model.row}, {@code page}, {@code photo}, {@code reader}, {@code record},
 * {@code record.said}, {@code record.scoring}, {@code report.strip}, {@code report.words}, {@code
 * summary.day}, {@code text}, {@code vision}.
 */
package leadlight.cli.batch;
