/**
 * {@code bench} and {@code enrol}: the page at the bench, and a bench shown its own known joints.
 *
 * <p>In: photos, a person. Out: a served page, enrolments. May use: {@code app.enrol}, {@code
 * app.output}, {@code cli.drill}, {@code cli.option}, {@code cli.terminal}, {@code desk}, {@code
 * enrol}, {@code enrol.learn}, {@code grade.limits}, {@code life}, {@code model}, {@code
 * model.result}, {@code reader}, {@code record}, {@code vision}.
 */
package leadlight.cli.bench;
