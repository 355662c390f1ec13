/**
 * {@code trial}: photos with truth scored and counted, alone and in sets.
 *
 * <p>In: folders of photos with truth. Out: tables, reports, slips. May use: {@code app.output},
 * {@code app.trial}, {@code cli.bench}, {@code cli.option}, {@code cli.terminal}, {@code data},
 * {@code enrol}, {@code model}, {@code model.row}, {@code quality.bench}, {@code record}, {@code
 * trial.sets}, {@code trial.truth}.
 */
package leadlight.cli.trial;
