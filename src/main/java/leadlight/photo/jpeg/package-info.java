/**
 * Whether a JPEG is whole: its entropy-coded data are walked before anything is decoded, so that
 * damage is named that a decoder covers up without a word (ITU-T T.81, annexes B, F, G).
 *
 * <p>In: bytes by offset. Out: what is damaged, or nothing. May use: the JDK alone.
 */
package leadlight.photo.jpeg;
