/**
 * What a connector is: rows, lands, leads, anchor legs, pins and signals, read from {@code
 * models/connectors} or a user's own file, and made of open footprints.
 *
 * <p>In: connector files, footprints. Out: connectors and the {@code RowSpec} to look for. May use:
 * {@code model}, {@code data}, Jackson annotations, commons-text.
 */
package leadlight.connector;
