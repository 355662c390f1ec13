/**
 * Letters, pens and blocks that pictures are made of; the same bytes on any machine.
 *
 * <p>In: shapes and text. Out: pixels. May use: {@code model}, {@code vision}.
 */
package leadlight.report.paint;
