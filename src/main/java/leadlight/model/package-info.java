/**
 * The words of the trade as immutable values: what every other package speaks.
 *
 * <p>In: nothing. Out: records, enums and sealed outcomes with their units in their names. May use:
 * the JDK alone. No OpenCV, no JSON, no input or output.
 *
 * <p>Frames. Photo pixels: x right, y down, the centre of the first pixel at (0,0), of the upright
 * picture (orientation applied). Row frame: u along the row from pin 1 to pin N, v along a lead
 * from the body (heel) to the open end (toe), in millimetres by the known pitch; its origin is the
 * toe of pin 1 as the fitted row has it.
 */
package leadlight.model;
