/**
 * Results as JSON, CSV, annotated picture and terminal summary.
 *
 * <p>In: a {@code ScoredPhoto} and the untouched picture. Out: files. May use: {@code model},
 * Jackson, FastCSV, Java 2D.
 */
package leadlight.report;
