/**
 * The bench page: one job after the other from photo to hand-back, on a page of this computer
 * alone. Its page is in {@code src/main/resources/leadlight/desk}.
 *
 * <p>In: pictures of a camera or of a watched folder, keys. Out: the job record, results. May use:
 * {@code model}, {@code data}, {@code vision} (to cut and encode pictures), {@code photo}, {@code
 * connector}, {@code grade}, {@code enrol} (the bench's name), {@code motion} (the nudge), {@code
 * report}, {@code text}, {@code page}, {@code record}, {@code summary}, {@code life}, {@code
 * serve}.
 */
package leadlight.desk;
