/**
 * What results are written with: pages and plots as files, reports and the page of a run, the
 * version and the log of a fault.
 *
 * <p>In: results of any kind. Out: files. May use: {@code app.record}, {@code data}, {@code
 * grade.limits}, {@code life}, {@code model}, {@code model.joint}, {@code model.row}, {@code page},
 * {@code page.words}, {@code photo}, {@code quality}, {@code reader}, {@code record}, {@code
 * record.said}, {@code record.scoring}, {@code report}, {@code report.paint}, {@code report.strip},
 * {@code report.words}, {@code summary.day}, {@code text}.
 */
package leadlight.app.output;
