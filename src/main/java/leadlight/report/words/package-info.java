/**
 * Results in plain English lines: verdicts, joints, legs, connectors, tasks.
 *
 * <p>In: a scored photo. Out: lines. May use: {@code model}, {@code model.joint}, {@code
 * model.remark}, {@code model.result}, {@code model.row}, {@code text}.
 */
package leadlight.report.words;
