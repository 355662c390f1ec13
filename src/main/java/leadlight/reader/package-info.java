/**
 * The second reader: a small network, trained on rendered scenes, that gives its own opinion on the
 * solder of each joint.
 *
 * <p>In: the small pictures of a row's joints. Out: a reading of each. Also writes such pictures to
 * files for training. May use: {@code model}, {@code data}, {@code vision}.
 */
package leadlight.reader;
