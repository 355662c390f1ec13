package leadlight.summary;

import leadlight.record.Subject;

/**
 * A photo to take again.
 *
 * @param subject what it is of
 * @param file its name
 * @param why what is wrong with it and what to change
 */
public record Retake(Subject subject, String file, String why) {}
