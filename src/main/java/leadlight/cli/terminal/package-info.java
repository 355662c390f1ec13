/**
 * What every command talks through: streams, exit status, progress, versions, tables and pages for
 * files or the terminal.
 *
 * <p>In: results of any kind. Out: text, files. May use: {@code data}, {@code model}, {@code
 * model.joint}, {@code model.remark}, {@code model.result}, {@code model.row}, {@code page}, {@code
 * quality}, {@code record.said}, {@code record.scoring}, {@code report.paint}, {@code text}.
 */
package leadlight.cli.terminal;
