/**
 * Options that several commands share, each with its one converter and its one refusal.
 *
 * <p>In: words of a command line. Out: checked values. May use: {@code app.output}, {@code
 * connector}, {@code grade.limits}, {@code model}, {@code model.row}, {@code page.words}, {@code
 * record}, {@code record.scoring}, {@code text}.
 */
package leadlight.cli.option;
