package leadlight.photo;

import java.util.List;
import leadlight.model.remark.Note;
import leadlight.model.result.PhotoInfo;
import leadlight.vision.Frame;

/**
 * An upright picture and what is known of its file.
 *
 * @param info the file; its size is the frame's
 * @param frame the picture, orientation applied, closed with this object
 * @param notes what was done to read it: wrong extension, further pages, reading at half size;
 *     usually empty
 */
public record Photo(PhotoInfo info, Frame frame, List<Note> notes) implements AutoCloseable {

  /** Copies the notes. */
  public Photo {
    notes = List.copyOf(notes);
  }

  @Override
  public void close() {
    frame.close();
  }
}
