package leadlight.summary.day;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import leadlight.model.Verdict;
import leadlight.model.remark.Note;
import leadlight.record.scoring.Subject;

/**
 * One scored photo of a run.
 *
 * @param scoring its number in the record
 * @param subject what it is of
 * @param file its name
 * @param connector connector and number of leads
 * @param verdict the worst of its joints, people's opinions counted
 * @param tally its joints
 * @param results its JSON report
 * @param rowReason why no row was found, if none was
 * @param fitness what to change about the photo
 */
public record PhotoLine(
    long scoring,
    Subject subject,
    String file,
    String connector,
    Verdict verdict,
    Tally tally,
    Path results,
    Optional<Note> rowReason,
    List<Note> fitness) {}
