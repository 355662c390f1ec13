package leadlight.model.picture;

import java.util.List;

/**
 * The joints of a row as small pictures of one size, straightened into row coordinates and levelled
 * by the row's own light, so that lamp, exposure and scale matter little. Each picture holds three
 * planes one after the other, row by row: light, red less green, yellow less blue; one byte a
 * value. The arrays may not be changed.
 *
 * @param width columns, one pitch to either side of the land's middle
 * @param height rows, from the body to beyond the land's open end
 * @param xFromPitch place of the first column, pitches from the land's middle
 * @param yFromPitch place of the first row, pitches from the toe, negative towards the body
 * @param pixelsPerPitch scale
 * @param joints the joints, pin 1 first
 * @param typical the middle value of the joints, place by place
 */
public record RowPictures(
    int width,
    int height,
    double xFromPitch,
    double yFromPitch,
    double pixelsPerPitch,
    List<byte[]> joints,
    byte[] typical) {

  /** Planes of a picture. */
  public static final int PLANES = 3;

  /** Copies the list; refuses a picture of another size. */
  public RowPictures {
    joints = List.copyOf(joints);
    int bytes = PLANES * width * height;
    if (typical.length != bytes || joints.stream().anyMatch(joint -> joint.length != bytes)) {
      throw new IllegalArgumentException("each picture must have " + bytes + " bytes");
    }
  }
}
