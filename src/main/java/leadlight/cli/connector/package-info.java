/**
 * {@code connector}: the connectors that are known, and new ones from footprints.
 *
 * <p>In: connector files, footprints. Out: tables, connector files. May use: {@code cli.terminal},
 * {@code connector}, {@code connector.footprint}, {@code data}, {@code model}, {@code model.row}.
 */
package leadlight.cli.connector;
