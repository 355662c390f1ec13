/**
 * What QA asks of an attribute gauge: sampling plans and lot decisions, agreement of graders, gauge
 * repeatability, control charts; and pages that show them.
 *
 * <p>In: plain tables (CSV, columns stated at each {@code of}/{@code read}). Out: figures as
 * records; {@link leadlight.quality.Page pages} that become HTML, SVG or text. A figure that is not
 * defined for its data is absent with a reason; NaN never leaves. May use: {@code model}, {@code
 * data}, {@code statistics}, FastCSV, Commons Statistics and Text.
 */
package leadlight.quality;
