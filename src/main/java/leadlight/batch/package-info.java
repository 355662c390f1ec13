/**
 * A day's photos: which job each belongs to, scoring them all into a folder of the run's own and
 * the record, and watching a folder for new ones.
 *
 * <p>In: a folder or a manifest. Out: result files, record entries, and events for who shows them.
 * May use: {@code model}, {@code data}, {@code connector}, {@code photo}, {@code vision} (threads),
 * {@code pipeline}, {@code enrol}, {@code grade}, {@code report}, {@code record}, FastCSV.
 */
package leadlight.batch;
