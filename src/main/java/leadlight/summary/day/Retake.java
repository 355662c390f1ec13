package leadlight.summary.day;

import java.util.Optional;
import leadlight.model.remark.Note;
import leadlight.record.scoring.Subject;

/**
 * A photo to take again.
 *
 * @param subject what it is of
 * @param file its name
 * @param note what is wrong with it; empty if the file could not be read
 * @param refused why the file could not be read, in the words of whoever tried; else empty
 */
public record Retake(Subject subject, String file, Optional<Note> note, String refused) {}
