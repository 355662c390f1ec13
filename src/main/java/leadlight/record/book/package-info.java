/**
 * Reads and writes the record's tables, each within its caller's transaction.
 *
 * <p>In: values, rows of tables. Out: rows of tables, values. May use: {@code record.file}, {@code
 * record.said}, {@code record.scoring}, {@code data}, {@code model}, {@code model.joint}, {@code
 * model.picture}, {@code model.remark}, {@code model.result}, {@code model.row}, {@code text}.
 */
package leadlight.record.book;
