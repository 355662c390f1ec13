package leadlight.row.strip;

import leadlight.model.picture.ColourPatch;
import leadlight.model.picture.Plane;

/** Colour to brightness. */
public final class Grey {

  private Grey() {}

  /** The mean of the three channels: metal is grey to gold, so no channel is preferred. */
  public static Plane of(ColourPatch patch) {
    float[] r = patch.red().data();
    float[] g = patch.green().data();
    float[] b = patch.blue().data();
    float[] grey = new float[r.length];
    for (int i = 0; i < grey.length; i++) {
      grey[i] = (r[i] + g[i] + b[i]) / 3;
    }
    return new Plane(patch.width(), patch.height(), grey);
  }
}
