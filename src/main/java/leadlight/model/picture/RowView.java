package leadlight.model.picture;

import java.util.List;
import leadlight.model.Checks;

/**
 * What a person needs to see why a row was judged as it was. Places are in pitches as in {@link
 * JointView}.
 *
 * @param joints one a joint, pin 1 first
 * @param typical the row's typical joint: the median of its straightened joints, pixel by pixel
 * @param typicalProfile the median of their profiles
 * @param bands the stretches along the lead that are judged
 * @param xFromPitch place of the first column of {@code typical}
 * @param yFromPitch place of its first row, and of the first sample of the profiles
 * @param pixelsPerPitch columns of {@code typical}, and samples of the profiles, a pitch
 * @param heelPitch place of the row's heels, negative
 * @param aheadPitch place of the land's open end
 */
public record RowView(
    List<JointView> joints,
    ColourPatch typical,
    List<Double> typicalProfile,
    List<ProfileBand> bands,
    double xFromPitch,
    double yFromPitch,
    double pixelsPerPitch,
    double heelPitch,
    double aheadPitch) {

  /** Copies the lists. */
  public RowView {
    joints = List.copyOf(joints);
    typicalProfile = List.copyOf(typicalProfile);
    bands = List.copyOf(bands);
    Checks.above("pixelsPerPitch", pixelsPerPitch, 0);
  }

  /** Place of sample i of the profiles. */
  public double yPitch(int i) {
    return yFromPitch + i / pixelsPerPitch;
  }
}
