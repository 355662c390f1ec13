/**
 * What every command talks through: streams, exit status, progress, tables and pages on the
 * terminal.
 *
 * <p>In: results of any kind. Out: text. May use: {@code app.output}, {@code app.record}, {@code
 * model}, {@code quality}.
 */
package leadlight.cli.terminal;
