/**
 * Results as JSON and as a table.
 *
 * <p>In: a scored photo. Out: bytes of files. May use: {@code report.words}, {@code data}, {@code
 * model}, {@code model.joint}, {@code model.picture}, {@code model.remark}, {@code model.result},
 * {@code model.row}, {@code text}.
 */
package leadlight.report.json;
