package leadlight.report;

import java.nio.file.Path;

/**
 * Where a report lies.
 *
 * @param json all results
 * @param csv one line per joint
 * @param picture the annotated picture
 */
public record WrittenReport(Path json, Path csv, Path picture) {}
