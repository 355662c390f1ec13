package leadlight.batch;

import java.nio.file.Path;
import java.util.Optional;
import leadlight.batch.list.JobPhoto;
import leadlight.model.Verdict;
import leadlight.record.scoring.RunPhoto;

/**
 * What became of a photo.
 *
 * @param photo the photo with its job
 * @param kind what became of it
 * @param verdict the worst of its joints, if it is scored
 * @param results its JSON report, if it is scored
 * @param message why it is not, if it is not
 */
public record Outcome(
    JobPhoto photo,
    RunPhoto.Outcome kind,
    Optional<Verdict> verdict,
    Optional<Path> results,
    Optional<String> message) {}
