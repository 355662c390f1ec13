/**
 * A row straightened, the lattice in it, its periodic structure, the picture of its lead.
 *
 * <p>In: a frame and a candidate row. Out: strips, lattices. May use: {@code model}, {@code
 * model.picture}, {@code model.row}, {@code numeric}, {@code row.tuning}, {@code vision}.
 */
package leadlight.row.strip;
