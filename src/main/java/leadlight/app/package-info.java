/**
 * What is done for a person, whoever asks: services that join the houses, without a command line.
 *
 * <p>In: checked values. Out: what was done, as values and files; nothing is printed. May use:
 * {@code model}.
 */
package leadlight.app;
