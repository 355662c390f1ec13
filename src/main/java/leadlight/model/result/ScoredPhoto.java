package leadlight.model.result;

import java.util.List;
import java.util.Optional;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.picture.RowView;
import leadlight.model.remark.Note;
import leadlight.model.row.RowOutcome;

/**
 * All that Leadlight says of one photo.
 *
 * @param photo the file
 * @param settings what was asked for
 * @param row the row or why there is none
 * @param view what people are shown of the row; empty if there is none or it was not kept
 * @param joints the joints, pin 1 first; empty if no row was found
 * @param verdict the worst of the joints; unjudged if no row was found
 * @param rowNotes what is to be said of the row as a whole
 * @param fitness what is to be said of the photo itself, worst first; empty if nothing
 * @param notVisible what a photo from above cannot show, always at least one note
 * @param cautions bench cautions that apply
 */
public record ScoredPhoto(
    PhotoInfo photo,
    Settings settings,
    RowOutcome row,
    Optional<RowView> view,
    List<GradedJoint> joints,
    Verdict verdict,
    List<Note> rowNotes,
    List<Note> fitness,
    List<Note> notVisible,
    List<Note> cautions) {

  /** Copies the lists. */
  public ScoredPhoto {
    joints = List.copyOf(joints);
    rowNotes = List.copyOf(rowNotes);
    fitness = List.copyOf(fitness);
    notVisible = List.copyOf(notVisible);
    cautions = List.copyOf(cautions);
  }
}
