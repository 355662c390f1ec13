/**
 * {@code sample}, {@code agree}, {@code gauge} and {@code chart}: what QA asks.
 *
 * <p>In: tables, reports, the record. Out: pages of figures. May use: {@code cli.option}, {@code
 * cli.terminal}, {@code data}, {@code grade.limits}, {@code model}, {@code model.joint}, {@code
 * model.result}, {@code model.row}, {@code photo}, {@code quality}, {@code quality.agreement},
 * {@code quality.chart}, {@code quality.gauge}, {@code quality.grades}, {@code quality.sampling},
 * {@code record}, {@code record.said}, {@code record.scoring}, {@code statistics}, {@code
 * trial.truth}, {@code vision}.
 */
package leadlight.cli.quality;
