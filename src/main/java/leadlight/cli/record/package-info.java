/**
 * {@code record} and {@code sheet}: what was seen and said, boards' lives, copies, proof, the
 * customer's sheet.
 *
 * <p>In: the record, what people say. Out: lines, tables, pages. May use: {@code app.output},
 * {@code app.record}, {@code cli.option}, {@code cli.terminal}, {@code connector}, {@code data},
 * {@code grade.limits}, {@code life}, {@code model}, {@code page}, {@code record}, {@code
 * record.file}, {@code record.said}, {@code record.scoring}, {@code summary.board}, {@code
 * summary.day}, {@code text}.
 */
package leadlight.cli.record;
