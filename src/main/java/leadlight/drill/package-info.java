/**
 * Trainees: sets of joints to be judged blind, judging them on a page or in a terminal, checking
 * one's own row, and what the record says of how people get better.
 *
 * <p>In: photos with truth (scenes, or joints of the record that were settled), a scored photo for
 * own work, answers from a page on loopback or a terminal. Out: set folders, answers in the record,
 * figures and {@link leadlight.quality.Page pages}. May use: {@code model}, {@code data}, {@code
 * vision} (to cut and encode pictures), {@code photo}, {@code pipeline} and {@code grade} (for the
 * tool's opinion), {@code trial} (truth files, {@code Rate}), {@code record}, {@code quality}
 * (agreement, pages), {@code text}, {@code page}, {@code serve} (the page's frame), the JDK's HTTP
 * server. {@code docs/drill.md} says how it is counted and what is guarded.
 */
package leadlight.drill;
