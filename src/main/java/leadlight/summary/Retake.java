package leadlight.summary;

import leadlight.model.Note;
import leadlight.record.Subject;

/**
 * A photo to take again.
 *
 * @param subject what it is of
 * @param file its name
 * @param why what is wrong with it and what to change; a file that could not be read says it in the
 *     reader's own words
 */
public record Retake(Subject subject, String file, Note why) {}
