/**
 * Workmanship limits by class: read, worked out for one joint, and decided with uncertainty.
 *
 * <p>In: {@code models/acceptance} or a user's file, a joint's lengths. Out: {@code Limit}s,
 * whether a value keeps them. May use: {@code data}, {@code model}, {@code model.joint}, {@code
 * model.remark}.
 */
package leadlight.grade.limits;
