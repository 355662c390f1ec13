/**
 * The record as a file: opened and migrated, chained, checked, dumped, copied.
 *
 * <p>In: a folder. Out: connections, proofs, copies. May use: {@code record}, {@code data}, {@code
 * model}.
 */
package leadlight.record.file;
