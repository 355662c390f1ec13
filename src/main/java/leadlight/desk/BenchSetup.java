package leadlight.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import leadlight.connector.RowRequest;
import leadlight.enrol.Bench;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.Presets;
import leadlight.record.JobRecord;
import leadlight.report.ReportWriter;
import leadlight.text.Messages;

/**
 * What a bench works with.
 *
 * @param record the job record
 * @param recordFolder where it lies; photos are kept there
 * @param out folder for the results
 * @param watched the folder whose newest photo is shown; empty: the browser's camera
 * @param row what is looked for until a preset is chosen
 * @param productClass its class
 * @param presets the shop's words
 * @param limits the limits to judge by
 * @param writer writes the results
 * @param words the language
 * @param person who works here
 * @param clock tells the time and the zone
 * @param enrolled the bench as it was enrolled, if it was
 */
public record BenchSetup(
    JobRecord record,
    Path recordFolder,
    Path out,
    Optional<Path> watched,
    RowRequest row,
    int productClass,
    Presets presets,
    AcceptanceSet limits,
    ReportWriter writer,
    Messages words,
    String person,
    Clock clock,
    Optional<Bench> enrolled) {}
