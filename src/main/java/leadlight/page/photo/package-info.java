/**
 * What a photo's page says, ready to be put in: pins, legs, opinions, what to touch up and in which
 * order.
 *
 * <p>In: a scored photo. Out: view records. May use: {@code page.look}, {@code page.words}, {@code
 * connector}, {@code model}, {@code model.joint}, {@code model.picture}, {@code model.result},
 * {@code model.row}, {@code report.picture}, {@code report.strip}, {@code report.words}, {@code
 * text}, {@code vision}.
 */
package leadlight.page.photo;
