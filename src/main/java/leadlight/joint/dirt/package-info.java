/**
 * Foreign matter and pits beside and on the lands: stains, spots, holes.
 *
 * <p>In: the row's joints side by side. Out: places of dirt. May use: {@code joint.cut}, {@code
 * data}.
 */
package leadlight.joint.dirt;
