package leadlight.cli.terminal;

import java.io.InputStream;
import java.io.PrintStream;

/**
 * What a command reads from and prints to.
 *
 * @param in input
 * @param out results
 * @param err messages and progress
 * @param interactive true if a person watches, so that progress may be shown
 */
public record Streams(InputStream in, PrintStream out, PrintStream err, boolean interactive) {}
