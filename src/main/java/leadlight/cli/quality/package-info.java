/**
 * {@code sample}, {@code agree}, {@code gauge} and {@code chart}: what QA asks.
 *
 * <p>In: tables, reports, the record. Out: pages of figures. May use: {@code app.output}, {@code
 * app.quality}, {@code cli.option}, {@code cli.terminal}, {@code data}, {@code grade.limits},
 * {@code model}, {@code quality}, {@code quality.agreement}, {@code quality.chart}, {@code
 * quality.gauge}, {@code quality.grades}, {@code quality.sampling}, {@code record}, {@code
 * record.scoring}, {@code statistics}.
 */
package leadlight.cli.quality;
