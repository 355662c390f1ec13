/**
 * Trainees: sets of joints to be judged blind, judging them on a page or in a terminal, checking
 * one's own row, and what the record says of how people get better.
 *
 * <p>In: photos with truth (scenes, or joints of the record that were settled), a scored photo for
 * own work, answers from a page on loopback or a terminal. Out: set folders, answers in the record,
 * figures and {@link leadlight.quality.Page pages}. May use: {@code data}, {@code drill.pool},
 * {@code drill.set}, {@code drill.sitting}, {@code drill.skill}, {@code model}, {@code quality},
 * {@code quality.agreement}, {@code quality.grades}, {@code record}, {@code statistics}, {@code
 * text}.
 */
package leadlight.drill;
