package leadlight.report.picture;

import java.util.List;
import leadlight.model.result.LegSet;
import leadlight.vision.Frame;

/**
 * The legs of a connector with their pictures.
 *
 * @param set what was made of them
 * @param pictures the upright photos, in the set's order; they stay open
 */
public record LegPhotos(LegSet set, List<Frame> pictures) {

  /** Copies the list; each photo has its picture. */
  public LegPhotos {
    pictures = List.copyOf(pictures);
    if (pictures.size() != set.photos().size()) {
      throw new IllegalArgumentException("each photo of legs needs its picture");
    }
  }

  /** No legs. */
  public static final LegPhotos NONE = new LegPhotos(new LegSet(List.of(), List.of()), List.of());
}
