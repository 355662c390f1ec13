package leadlight.record.scoring;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import leadlight.model.Verdict;
import leadlight.model.remark.Note;
import leadlight.model.result.PhotoInfo;

/**
 * One scoring of one photo as the record has it, without its joints.
 *
 * @param id its number in the record; a later scoring has a higher one, whatever the clock says
 * @param subject what the photo is of
 * @param photo what is known of the file
 * @param photoPath where the photo was last seen
 * @param results its JSON report
 * @param method how it was scored
 * @param person who asked for it
 * @param scoredAt when, with the zone
 * @param verdict the worst of its joints
 * @param rowReason why no row was found; empty if one was
 * @param rowNotes what is to be said of the row as a whole
 * @param fitness what to change about the photo
 */
public record Scoring(
    long id,
    Subject subject,
    PhotoInfo photo,
    Path photoPath,
    Path results,
    Method method,
    String person,
    ZonedDateTime scoredAt,
    Verdict verdict,
    Optional<Note> rowReason,
    List<Note> rowNotes,
    List<Note> fitness) {

  /** Copies the lists. */
  public Scoring {
    rowNotes = List.copyOf(rowNotes);
    fitness = List.copyOf(fitness);
  }
}
