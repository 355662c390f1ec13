/**
 * Scorings, runs and what they are of: jobs, boards, stages.
 *
 * <p>In: scored photos. Out: immutable values. May use: {@code data}, {@code model}, {@code
 * model.remark}, {@code model.result}.
 */
package leadlight.record.scoring;
