package leadlight.model.picture;

import java.util.List;
import leadlight.model.Homography;

/**
 * Where to look at one joint, and how light it is along its lead.
 *
 * @param pitchToPhoto to photo pixels from pitches: x from the land's middle towards pin N, y from
 *     the toe, negative towards the body
 * @param profile light along the lead's middle, shares of the row's range of light (0 dark, 1
 *     bright, both may be passed); sample i lies at {@link RowView#yPitch}(i)
 */
public record JointView(Homography pitchToPhoto, List<Double> profile) {

  /** Copies the list. */
  public JointView {
    profile = List.copyOf(profile);
  }
}
