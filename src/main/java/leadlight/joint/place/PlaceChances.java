package leadlight.joint.place;

import java.util.List;
import java.util.stream.IntStream;
import leadlight.joint.cut.FootBands;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.Stats;

/**
 * How likely each place of a lead is, given how its top fits there ({@link FootScores}): Bayes'
 * rule on a raster of places of the toe and of the foot's other end. Before looking, a lead lies
 * with its neighbours, or, rarely, anywhere. A lead that looks like none of the row (residue,
 * solder over it) fits nowhere: scores below a floor say nothing, and the place before looking
 * stays likely. Two leads cannot lie in one place, so places that a neighbour probably fills lose.
 */
final class PlaceChances {

  private static final double STEP = 1.0 / PatchGrid.DENSITY;

  private final PlacementModel.Chances given;
  private final FootBands bands;
  private final double leadHalf;
  private final double[] before;

  /**
   * Takes what holds for the row.
   *
   * @param common offset of the row's leads from their lands, pitches
   */
  PlaceChances(PlacementModel.Chances given, FootBands bands, double leadHalf, double common) {
    this.given = given;
    this.bands = bands;
    this.leadHalf = leadHalf;
    this.before = before(common);
  }

  /**
   * Where a lead lies, against its land's middle, pitches; positive towards pin N.
   *
   * @param toe at the toe
   * @param end at the far end of {@link FootBands}
   * @param uToe root mean square distance of the likely places of the toe
   * @param uEnd the same at the end
   */
  record Place(double toe, double end, double uToe, double uEnd) {}

  /** Places of all leads by their scores, pin 1 first. */
  List<Place> places(List<FootScores.Fit> scores) {
    List<double[]> fits = scores.parallelStream().map(this::fits).toList();
    List<double[]> chances = fits.parallelStream().map(this::chances).toList();
    List<double[]> toes = chances.stream().map(chance -> sums(chance, true)).toList();
    return IntStream.range(0, fits.size())
        .parallel()
        .mapToObj(i -> place(given(chances.get(i), free(i, toes)), fits.get(i)))
        .toList();
  }

  /** Chances of a lead's places, given how free they are of neighbours. */
  private static double[] given(double[] alone, double[] free) {
    double[] chance = alone.clone();
    for (int at = 0; at < chance.length; at++) {
      chance[at] *= free[at / FootScores.PLACES];
    }
    normalise(chance);
    return chance;
  }

  /** Weight of each pair of places before looking, logarithm. */
  private double[] before(double common) {
    double[] near = new double[FootScores.PLACES * FootScores.PLACES];
    double[] anywhere = near.clone();
    for (int at = 0; at < near.length; at++) {
      double off = offset(at / FootScores.PLACES) - common;
      double turn = offset(at / FootScores.PLACES) - offset(at % FootScores.PLACES);
      near[at] = gauss(off / given.near().value()) * gauss(turn / given.turned().value());
      anywhere[at] = Math.exp(-(Math.abs(off) + Math.abs(turn)) / given.displaced().value());
    }
    normalise(near);
    normalise(anywhere);
    double rare = given.displacedShare().value();
    for (int at = 0; at < near.length; at++) {
      near[at] = Math.log((1 - rare) * near[at] + rare * anywhere[at] + 1e-12);
    }
    return near;
  }

  private static double gauss(double z) {
    return Math.exp(-z * z / 2);
  }

  /** Score of each pair of places: of the toe, and twice the mean over the bands. */
  private double[] fits(FootScores.Fit scores) {
    double[] fits = new double[FootScores.PLACES * FootScores.PLACES];
    for (int band = 0; band < FootBands.COUNT; band++) {
      double share = bands.share(band);
      for (int at = 0; at < fits.length; at++) {
        int toe = at / FootScores.PLACES;
        int end = at % FootScores.PLACES;
        int place = (int) Math.rint(toe + (end - toe) * share);
        fits[at] += 2 * scores.bands()[band][place] / FootBands.COUNT;
      }
    }
    for (int at = 0; at < fits.length; at++) {
      fits[at] += scores.toe()[at / FootScores.PLACES];
    }
    return fits;
  }

  private double[] chances(double[] fits) {
    double sharp = given.sharpness().value();
    double floor = sharp * given.floor().value();
    double[] chances = new double[fits.length];
    for (int at = 0; at < fits.length; at++) {
      double fit = sharp * fits[at];
      double most = Math.max(fit, floor);
      chances[at] = most + Math.log1p(Math.exp(-Math.abs(fit - floor))) + before[at];
    }
    return weights(chances);
  }

  /** Logarithms to chances; pairs that would turn a foot too far have none. */
  private double[] weights(double[] logarithms) {
    double most = Stats.greatest(logarithms);
    double[] weights = new double[logarithms.length];
    for (int at = 0; at < weights.length; at++) {
      double turn = offset(at / FootScores.PLACES) - offset(at % FootScores.PLACES);
      weights[at] = Math.abs(turn) > given.mostTurn().value() ? 0 : Math.exp(logarithms[at] - most);
    }
    normalise(weights);
    return weights;
  }

  private static void normalise(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
  }

  /** Chances of the toe's places, or of the end's. */
  private static double[] sums(double[] pairs, boolean ofToe) {
    double[] sums = new double[FootScores.PLACES];
    for (int at = 0; at < pairs.length; at++) {
      sums[ofToe ? at / FootScores.PLACES : at % FootScores.PLACES] += pairs[at];
    }
    return sums;
  }

  /** How surely each place of lead i is not filled by a neighbour. */
  private double[] free(int i, List<double[]> toes) {
    double need = 2 * leadHalf - given.overlap().value();
    double[] free = new double[FootScores.PLACES];
    for (int x = 0; x < free.length; x++) {
      free[x] =
          (i + 1 < toes.size() ? 1 - filled(toes.get(i + 1), x, 1, need) : 1)
              * (i > 0 ? 1 - filled(toes.get(i - 1), x, -1, need) : 1);
    }
    return free;
  }

  /** Nearly the chance that the neighbour lies on place x; never 1, as it may be misplaced too. */
  private double filled(double[] neighbour, int x, int side, double need) {
    double chance = 0;
    for (int there = 0; there < neighbour.length; there++) {
      if (side * (offset(there) - offset(x)) + 1 < need) {
        chance += neighbour[there];
      }
    }
    return given.believed().value() * chance;
  }

  private Place place(double[] chance, double[] fits) {
    double[] fit = fits.clone();
    for (int at = 0; at < fit.length; at++) {
      fit[at] *= given.sharpness().value();
    }
    double[] alone = weights(fit);
    double[] toes = sums(chance, true);
    double[] ends = sums(chance, false);
    double toe = middle(Stats.indexOfGreatest(toes), sums(alone, true));
    double end = middle(Stats.indexOfGreatest(ends), sums(alone, false));
    return new Place(toe, end, spread(toes, toe), spread(ends, end));
  }

  /** The likeliest place, refined by how the top fits near it, without what was believed before. */
  private static double middle(int likeliest, double[] fit) {
    int reach = PatchGrid.DENSITY / 10;
    double sum = 0;
    double weight = 0;
    for (int i = likeliest - reach; i <= likeliest + reach; i++) {
      if (i >= 0 && i < fit.length) {
        sum += fit[i] * offset(i);
        weight += fit[i];
      }
    }
    return weight > 0 ? sum / weight : offset(likeliest);
  }

  private static double spread(double[] chances, double about) {
    double sum = 0;
    for (int i = 0; i < chances.length; i++) {
      double distance = offset(i) - about;
      sum += chances[i] * distance * distance;
    }
    return Math.sqrt(sum);
  }

  private static double offset(int index) {
    return (index - FootScores.STEPS) * STEP;
  }
}
