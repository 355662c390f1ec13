package leadlight.photo;

import leadlight.model.PhotoInfo;
import leadlight.vision.Frame;

/**
 * Placeholder until intake is built: an upright picture and what is known of its file.
 *
 * @param info the file
 * @param frame the picture, closed with this object
 */
public record Photo(PhotoInfo info, Frame frame) implements AutoCloseable {

  @Override
  public void close() {
    frame.close();
  }
}
