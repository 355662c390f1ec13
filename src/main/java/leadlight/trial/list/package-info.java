/**
 * Outcomes written out for machines and for a closer look: tables, slips, close-ups, the report.
 *
 * <p>In: outcomes. Out: tables, JSON. May use: {@code trial}, {@code trial.outcome}, {@code
 * trial.truth}, {@code model}, {@code model.joint}, {@code model.row}, {@code statistics}.
 */
package leadlight.trial.list;
