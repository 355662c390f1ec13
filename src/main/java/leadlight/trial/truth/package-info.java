/**
 * What is true of a photo, and of sets of photos: truth files read.
 *
 * <p>In: folders. Out: truth values. May use: {@code model}, {@code model.row}, {@code vision}.
 */
package leadlight.trial.truth;
