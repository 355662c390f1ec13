/**
 * A bench is shown its own known joints, learns from the record, is checked day by day.
 *
 * <p>In: photos, tables of known joints, the record. Out: enrolments, what is said of them. May
 * use: {@code enrol}, {@code enrol.learn}, {@code grade.limits}, {@code life}, {@code model},
 * {@code model.joint}, {@code model.result}, {@code model.row}, {@code photo}, {@code pipeline},
 * {@code quality}, {@code quality.chart}, {@code reader}, {@code record}, {@code record.said},
 * {@code record.scoring}, {@code text}.
 */
package leadlight.app.enrol;
