/**
 * One person at one set, on a page or in a terminal; nothing of the truth before its time.
 *
 * <p>In: a set, answers. Out: answers in the record, what is told. May use: {@code drill.pool},
 * {@code drill.set}, {@code drill.skill}, {@code data}, {@code model}, {@code model.joint}, {@code
 * model.result}, {@code model.row}, {@code page}, {@code photo}, {@code quality}, {@code
 * quality.agreement}, {@code record}, {@code serve}, {@code statistics}, {@code text}, {@code
 * trial.truth}.
 */
package leadlight.drill.sitting;
