/**
 * Counts of photos that belong together: nudges, before and after, same row, enrolled benches.
 *
 * <p>In: outcomes. Out: tallies, tables. May use: {@code trial}, {@code trial.outcome}, {@code
 * trial.truth}, {@code model}, {@code model.joint}, {@code model.result}, {@code model.row}, {@code
 * statistics}.
 */
package leadlight.trial.sets;
