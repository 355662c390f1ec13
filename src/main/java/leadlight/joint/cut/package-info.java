/**
 * A row's joints cut out and straightened: raster, patches, widths, light, named signals and their
 * plain statistics.
 *
 * <p>In: a frame and a found row. Out: straightened patches. May use: {@code model}, {@code
 * model.picture}, {@code model.row}, {@code vision}.
 */
package leadlight.joint.cut;
