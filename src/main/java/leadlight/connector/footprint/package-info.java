/**
 * Connectors from footprints: read, rows and legs told by their geometry.
 *
 * <p>In: footprint files. Out: {@code Connector}s. May use: {@code connector}, {@code data}, {@code
 * model}.
 */
package leadlight.connector.footprint;
