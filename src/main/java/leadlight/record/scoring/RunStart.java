package leadlight.record.scoring;

import java.nio.file.Path;
import java.time.ZonedDateTime;

/**
 * A run as it begins.
 *
 * @param folder its own folder for results
 * @param source what it was asked to work on
 * @param person who asked
 * @param at when
 * @param toolVersion version of Leadlight
 */
public record RunStart(
    Path folder, String source, String person, ZonedDateTime at, String toolVersion) {}
