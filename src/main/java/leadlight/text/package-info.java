/**
 * Leadlight's words for people, in their language: sentences, numbers, lengths, and what the
 * signals of a joint mean in plain words.
 *
 * <p>In: message files ({@code messages-LANGUAGE.properties}, UTF-8). Out: text without markup. May
 * use: {@code model}.
 */
package leadlight.text;
