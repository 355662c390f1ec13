/**
 * The row laid out straight, with pins, signs and findings around it.
 *
 * <p>In: a frame and a row. Out: strips to paint. May use: {@code report.paint}, {@code
 * report.words}, {@code model}, {@code model.joint}, {@code model.row}, {@code text}, {@code
 * vision}, {@code vision.decode}.
 */
package leadlight.report.strip;
