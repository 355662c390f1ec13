/**
 * Practice sets: drawn from a pool, cut into pictures, kept in a folder, opened.
 *
 * <p>In: a pool and a request. Out: sets with their pictures. May use: {@code drill.pool}, {@code
 * drill.skill}, {@code data}, {@code grade.limits}, {@code model}, {@code model.result}, {@code
 * model.row}, {@code photo}, {@code pipeline}, {@code record}, {@code text}, {@code vision}.
 */
package leadlight.drill.set;
