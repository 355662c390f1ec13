package leadlight.record.scoring;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import leadlight.model.result.ScoredPhoto;

/**
 * A scored photo on its way into the record.
 *
 * @param subject what it is of
 * @param photo where the photo lies; it is never touched
 * @param scored all that was said of it
 * @param method how it was scored
 * @param results where its results lie: the JSON file
 * @param person who asked for it
 * @param at when it was scored
 * @param again keep it beside an equal one instead of taking that
 */
public record NewScoring(
    Subject subject,
    Path photo,
    ScoredPhoto scored,
    Method method,
    Path results,
    String person,
    ZonedDateTime at,
    boolean again) {}
