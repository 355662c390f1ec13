/**
 * What answers are worth: against the truth, over time, and what is due again.
 *
 * <p>In: answers of the record. Out: figures, a schedule. May use: {@code data}, {@code model},
 * {@code quality.agreement}, {@code quality.grades}, {@code record}, {@code statistics}.
 */
package leadlight.drill.skill;
