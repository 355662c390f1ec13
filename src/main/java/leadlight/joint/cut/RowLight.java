package leadlight.joint.cut;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import leadlight.numeric.Quantiles;

/**
 * The photo's own reference levels, learnt from the row since the lamp is unknown: dark and bright
 * end of what the joints and gaps show. Measures are given as shares of the range between them.
 *
 * @param dark level of the darkest parts, 0 to 255
 * @param range bright less dark level, at least {@link #LEAST_RANGE}
 */
public record RowLight(double dark, double range) {

  /** A few hundredths of the ends are noise and glints. */
  private static final double TAIL = 0.03;

  /** Keeps sensor noise of a flat, dark photo from being blown up to contrast. */
  private static final double LEAST_RANGE = 20;

  public static RowLight of(List<JointPatch> patches, RowGeometry geometry) {
    double[] levels =
        patches.stream()
            .flatMapToDouble(
                patch ->
                    DoubleStream.of(
                        new Zone(patch.light(), -0.5, 0.5, -1.2, geometry.ahead()).values()))
            .toArray();
    Arrays.sort(levels);
    double dark = Quantiles.ofSorted(levels, TAIL);
    double bright = Quantiles.ofSorted(levels, 1 - TAIL);
    return new RowLight(dark, Math.max(LEAST_RANGE, bright - dark));
  }

  /** Levels to shares of the range. */
  public float[] levelled(float[] light) {
    float[] out = new float[light.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = (float) ((light[i] - dark) / range);
    }
    return out;
  }

  /** Colour differences to shares of the range. */
  float[] scaled(float[] difference) {
    float[] out = new float[difference.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = (float) (difference[i] / range);
    }
    return out;
  }
}
