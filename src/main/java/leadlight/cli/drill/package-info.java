/**
 * {@code drill}: trainees' sets, sittings, history.
 *
 * <p>In: requests of trainees and instructors. Out: sets, pages, tables. May use: {@code
 * app.output}, {@code app.record}, {@code cli.option}, {@code cli.terminal}, {@code data}, {@code
 * drill}, {@code drill.pool}, {@code drill.set}, {@code drill.sitting}, {@code drill.skill}, {@code
 * grade.limits}, {@code model}, {@code model.result}, {@code photo}, {@code pipeline}, {@code
 * record}, {@code record.scoring}, {@code vision}.
 */
package leadlight.cli.drill;
