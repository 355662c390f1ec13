/**
 * A row's joints cut out and straightened: raster, patches, widths, light, named signals and their
 * plain statistics.
 *
 * <p>In: a frame and a found row. Out: straightened patches. May use: {@code data}, {@code model},
 * {@code model.picture}, {@code model.row}, {@code numeric}, {@code vision}.
 */
package leadlight.joint.cut;
