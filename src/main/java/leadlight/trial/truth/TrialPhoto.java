package leadlight.trial.truth;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A photo of a trial with what is known of it: exactly one of truth and note.
 *
 * @param file the photo
 * @param truth exact truth of a rendered picture
 * @param note a person's annotation of a real photo
 */
public record TrialPhoto(Path file, Optional<PhotoTruth> truth, Optional<RowNote> note) {}
