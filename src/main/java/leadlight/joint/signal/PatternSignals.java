package leadlight.joint.signal;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.Signals;
import leadlight.joint.cut.Stats;
import leadlight.joint.cut.Zone;
import leadlight.numeric.Quantiles;

/**
 * Likeness with the row's own pictures, by normalised cross-correlation: of the toe with the row's
 * median toe and with the median of its most banded toes, and of the heel, where each lead that is
 * there leaves the body, with the row's median heel. All joints of a row may be bad, so likeness
 * supports and never decides.
 */
final class PatternSignals {

  /** Share of the joints whose bands are clearest that make up the banded toe's picture. */
  private static final int BANDED_ONE_IN = 6;

  private final List<LevelledPatch> joints;
  private final RowGeometry geometry;

  PatternSignals(List<LevelledPatch> joints, RowGeometry geometry) {
    this.joints = joints;
    this.geometry = geometry;
  }

  /** Adds likenesses to the signals, one entry a joint, which must hold the toe's band already. */
  void measure(List<Signals> into) {
    List<double[]> toes = joints.stream().map(this::toe).toList();
    List<double[]> heels = joints.stream().map(this::heel).toList();
    double[] typicalToe = median(toes);
    double[] bandedToe = median(banded(toes, into));
    double[] typicalHeel = median(heels);
    for (int i = 0; i < joints.size(); i++) {
      into.get(i)
          .put("toe_like_row", likeness(toes.get(i), typicalToe))
          .put("toe_like_banded", likeness(toes.get(i), bandedToe))
          .put("heel_like_row", likeness(heels.get(i), typicalHeel));
    }
  }

  private double[] toe(LevelledPatch joint) {
    double land = geometry.landHalf();
    return new Zone(joint.light(), -land, land, -0.5, 1.05 * geometry.ahead()).values();
  }

  private double[] heel(LevelledPatch joint) {
    double land = geometry.landHalf();
    double heel = geometry.heelY();
    return new Zone(joint.landLight(), -land, land, heel - 0.45, heel + 0.15).values();
  }

  private static List<double[]> banded(List<double[]> toes, List<Signals> signals) {
    int count = Math.max(2, toes.size() / BANDED_ONE_IN);
    return IntStream.range(0, toes.size())
        .boxed()
        .sorted(
            Comparator.comparingDouble((Integer i) -> -signals.get(i).get("toe_band_edges"))
                .thenComparing(i -> i))
        .limit(count)
        .map(toes::get)
        .toList();
  }

  private static double[] median(List<double[]> pictures) {
    double[] median = new double[pictures.get(0).length];
    double[] pixel = new double[pictures.size()];
    for (int i = 0; i < median.length; i++) {
      for (int k = 0; k < pixel.length; k++) {
        pixel[k] = pictures.get(k)[i];
      }
      median[i] = Quantiles.middle(pixel);
    }
    return median;
  }

  /** Normalised cross-correlation; flat pictures are kept from blowing up by a small floor. */
  private static double likeness(double[] one, double[] other) {
    double floor = 0.03;
    double meanOne = Stats.mean(one);
    double meanOther = Stats.mean(other);
    double product = 0;
    for (int i = 0; i < one.length; i++) {
      product += (one[i] - meanOne) * (other[i] - meanOther);
    }
    return product
        / one.length
        / ((Stats.deviation(one) + floor) * (Stats.deviation(other) + floor));
  }
}
