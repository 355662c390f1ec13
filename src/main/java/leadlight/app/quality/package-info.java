/**
 * What QA studies are fed with: scored joints, grades, gauge readings, drawn samples, files of
 * lots.
 *
 * <p>In: tables, reports, truth files, the record. Out: values for {@code quality}. May use: {@code
 * data}, {@code model}, {@code photo}, {@code quality}, {@code quality.chart}, {@code
 * quality.gauge}, {@code quality.grades}, {@code quality.sampling}, {@code record}, {@code
 * record.said}, {@code record.scoring}, {@code trial.truth}, {@code vision}.
 */
package leadlight.app.quality;
