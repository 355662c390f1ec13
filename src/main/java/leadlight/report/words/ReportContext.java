package leadlight.report.words;

/**
 * What a report says besides the scored photo.
 *
 * @param toolVersion version of Leadlight
 * @param reader version of the second reader that it asks
 * @param acceptanceSource where the limits come from, as "IPC-A-610 revision J"
 * @param acceptanceProvenance how far the limits can be trusted, as "read in a published source" or
 *     "from memory"
 */
public record ReportContext(
    String toolVersion, String reader, String acceptanceSource, String acceptanceProvenance) {}
