/**
 * Words that pages share: names, data files' words, ends of a row, limits and where they come from,
 * text made safe.
 *
 * <p>In: model values. Out: text. May use: {@code connector}, {@code data}, {@code model}, {@code
 * model.joint}, {@code model.result}, {@code model.row}, {@code record.said}, {@code
 * record.scoring}, {@code text}.
 */
package leadlight.page.words;
