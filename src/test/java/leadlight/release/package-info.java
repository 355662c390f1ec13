/**
 * Makes what people install: an archive with its own Java runtime, an application image, a Debian
 * package. {@code mvn -Prelease verify} runs it; docs/release.md says what it makes.
 */
package leadlight.release;
