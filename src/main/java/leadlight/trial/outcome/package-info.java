/**
 * What Leadlight said beside what is true, joint by joint and row by row, by stated rules.
 *
 * <p>In: truth and opinion. Out: outcomes. May use: {@code trial.truth}, {@code model}, {@code
 * model.joint}, {@code model.remark}, {@code model.result}, {@code model.row}.
 */
package leadlight.trial.outcome;
