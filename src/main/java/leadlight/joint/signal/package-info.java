/**
 * What each joint and each gap shows, as named numbers: toe, flanks, gap (where a bridge would
 * run), likeness, dirt.
 *
 * <p>In: a straightened, placed row. Out: {@code RowSignals}. May use: {@code joint.cut}, {@code
 * joint.dirt}, {@code joint.place}, {@code data}, {@code model.picture}, {@code model.row}.
 */
package leadlight.joint.signal;
