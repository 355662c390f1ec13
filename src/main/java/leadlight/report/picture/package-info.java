/**
 * The annotated picture and its parts; anchor legs, nudges.
 *
 * <p>In: a scored photo, its frame. Out: pictures. May use: {@code report.paint}, {@code
 * report.strip}, {@code report.words}, {@code model}, {@code model.joint}, {@code model.result},
 * {@code model.row}, {@code text}, {@code vision}.
 */
package leadlight.report.picture;
