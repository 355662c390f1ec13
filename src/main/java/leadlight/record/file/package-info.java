/**
 * The record as a whole: opened and migrated, chained, checked, dumped, copied.
 *
 * <p>In: a folder or a server. Out: connections, proofs, copies. May use: {@code record.engine},
 * {@code data}, {@code model}.
 */
package leadlight.record.file;
