/**
 * Joints of known truth that a set may take: of rendered scenes, or of the record where their truth
 * was settled.
 *
 * <p>In: scenes, the record. Out: {@code PoolJoint}s. May use: {@code drill.skill}, {@code data},
 * {@code model}, {@code model.joint}, {@code model.result}, {@code model.row}, {@code record},
 * {@code record.said}, {@code record.scoring}, {@code text}, {@code trial.truth}.
 */
package leadlight.drill.pool;
