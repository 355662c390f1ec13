package leadlight.report.words;

import leadlight.text.Messages;

/**
 * What a report says besides the scored photo.
 *
 * @param toolVersion version of Leadlight
 * @param reader version of the second reader that it asks
 * @param limits where the limits come from and how far they can be trusted
 * @param words the language of what people look at; files for programs are in English
 */
public record ReportContext(
    String toolVersion, String reader, StatedLimits limits, Messages words) {}
