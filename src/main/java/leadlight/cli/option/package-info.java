/**
 * Options that several commands share, each with its one converter and its one refusal.
 *
 * <p>In: words of a command line. Out: checked values. May use: {@code cli.terminal}, {@code
 * connector}, {@code grade.limits}, {@code life}, {@code model}, {@code model.result}, {@code
 * model.row}, {@code page}, {@code page.words}, {@code reader}, {@code record}, {@code
 * record.scoring}, {@code report}, {@code report.picture}, {@code report.words}, {@code text},
 * {@code vision}.
 */
package leadlight.cli.option;
