/**
 * What the bench says of the tool's opinions, over time.
 *
 * <p>In: joints with a verdict of the tool's and what a probe, a meter or a person said of them.
 * Out: rates with intervals, what they leave out, whether to trust the tool further; a page. May
 * use what {@code quality} may.
 */
package leadlight.quality.bench;
