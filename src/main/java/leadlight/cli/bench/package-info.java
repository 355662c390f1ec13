/**
 * {@code bench} and {@code enrol}: the page at the bench, and a bench shown its own known joints.
 *
 * <p>In: photos, a person. Out: a served page, enrolments. May use: {@code cli.drill}, {@code
 * cli.option}, {@code cli.terminal}, {@code connector}, {@code desk}, {@code enrol}, {@code
 * enrol.learn}, {@code grade.limits}, {@code life}, {@code model}, {@code model.joint}, {@code
 * model.remark}, {@code model.result}, {@code model.row}, {@code photo}, {@code pipeline}, {@code
 * quality.chart}, {@code reader}, {@code record}, {@code record.said}, {@code record.scoring},
 * {@code text}, {@code vision}.
 */
package leadlight.cli.bench;
