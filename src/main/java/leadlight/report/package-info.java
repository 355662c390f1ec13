/**
 * Results as JSON, CSV, annotated picture and terminal summary.
 *
 * <p>In: a {@code ScoredPhoto} and the untouched picture. Out: files and lines. May use: {@code
 * model}, {@code data}, {@code vision} (to draw), {@code text} (words), Jackson, FastCSV.
 */
package leadlight.report;
