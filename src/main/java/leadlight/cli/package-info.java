/**
 * Commands and the composition root; nothing depends on it.
 *
 * <p>In: the command line. Out: text, files and an exit status. May use: every package, picocli.
 */
package leadlight.cli;
