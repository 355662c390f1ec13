/**
 * The record for people: its lines, exports, the customer's sheet.
 *
 * <p>In: the record. Out: lines, tables, files. May use: {@code data}, {@code grade.limits}, {@code
 * life}, {@code model}, {@code model.joint}, {@code page}, {@code page.words}, {@code photo},
 * {@code record}, {@code record.said}, {@code record.scoring}, {@code summary.board}, {@code text}.
 */
package leadlight.app.record;
