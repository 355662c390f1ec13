package leadlight.record.scoring;

import java.nio.file.Path;

/**
 * A run that has begun.
 *
 * @param id its number in the record
 * @param folder its own folder for results
 */
public record OpenRun(long id, Path folder) {}
