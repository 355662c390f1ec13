/**
 * Which photos there are to score and which job each is of: by folders, by a manifest, or by what
 * arrives.
 *
 * <p>In: folders, tables. Out: {@code JobPhoto}s. May use: {@code connector}, {@code data}, {@code
 * model}, {@code model.row}, {@code record.scoring}.
 */
package leadlight.batch.list;
