package leadlight.report;

import java.nio.file.Path;

/**
 * Where a report lies.
 *
 * @param json all results
 * @param csv one line per joint
 * @param picture the annotated picture
 * @param page the page to read in a browser
 */
public record WrittenReport(Path json, Path csv, Path picture, Path page) {}
