/**
 * Joins the stages: a photo becomes a scored photo.
 *
 * <p>In: a read photo and what was asked for. Out: a {@code ScoredPhoto}. May use: {@code model},
 * {@code data}, {@code vision}, the stages {@code photo}, {@code row}, {@code joint}, {@code
 * reader}, {@code rowcheck}, {@code grade}, {@code enrol}.
 */
package leadlight.pipeline;
