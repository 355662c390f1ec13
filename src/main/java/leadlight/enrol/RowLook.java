package leadlight.enrol;

import java.util.List;
import leadlight.enrol.learn.Enrolment;
import leadlight.model.picture.RowPictures;

/**
 * What a bench needs of a photo's row.
 *
 * @param pictures the joints, pin 1 first
 * @param setting how the photo was taken
 * @param joints what is known of each joint besides, pin 1 first
 */
public record RowLook(RowPictures pictures, Enrolment.Setting setting, List<Joint> joints) {

  /** Copies the list. */
  public RowLook {
    joints = List.copyOf(joints);
  }

  /**
   * A joint.
   *
   * @param fit whether its picture shows enough to learn from: sharp, not covered, not burnt out
   * @param general log odds of the general opinion that nothing holds it; 0 where that was never
   *     shown to be right on such photos
   */
  public record Joint(boolean fit, double general) {}
}
