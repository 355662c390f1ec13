/**
 * Pages that people read: the photo page, the summary of a run, the list of what to touch up, and
 * the customer sheet, and the pages of {@code quality}.
 *
 * <p>In: a {@code ScoredPhoto}, its untouched picture, and the connector where it is known. Out:
 * one self-contained HTML file (no network, no outside file), or a PDF. May use: {@code model},
 * {@code data}, {@code vision} (to cut and encode pictures), {@code connector} (for signals),
 * {@code report} (how a row is laid out straight), {@code text}, {@code record} and {@code summary}
 * (values of a run), {@code quality} (the blocks of its pages), the template runtime, PDFBox.
 *
 * <p>Templates lie in {@code src/main/jte}; the build turns them into classes of this package. They
 * escape by context; names that came from outside also pass {@code SafeText}.
 */
package leadlight.page;
