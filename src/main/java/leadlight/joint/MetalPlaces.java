package leadlight.joint;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import leadlight.joint.cut.GeometryFinder;
import leadlight.joint.cut.JointPatch;
import leadlight.joint.cut.JointTuning;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.RowLight;
import leadlight.joint.cut.Straightener;
import leadlight.joint.cut.Zone;
import leadlight.joint.place.StraightRow;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.numeric.Quantiles;
import leadlight.vision.Frame;

/**
 * How much each place of a row looks like the row's own metal: 1 as its typical lead on its land, 0
 * as the board between them. What the joint is like does not matter: a bare land, a lifted or a
 * flooded lead are metal as much as a sound joint, so a bad end joint is a place of the row, too.
 *
 * <p>In three stretches along the land its mean colour, less that of the gap beside it, is
 * projected on the row's typical such difference (least squares). On the side away from the row the
 * board may have another colour than the gaps (one opening of the mask for all lands), so that
 * there only the size of the difference counts. Print, copper and traces fill a place on one side
 * or in one stretch only, or run on beyond the land's end. Approximate; the row must be metal in
 * most of its places.
 *
 * <p>Where gaps are flooded, leads differ from gaps by less than from each other: what the row's
 * own places scatter by is added to the typical difference, as squares, so that little of what then
 * shows counts as metal or as board.
 */
public final class MetalPlaces {

  private static final JointTuning.Metal METAL = JointTuning.builtIn().metal();

  /** A thousandth of the row's range of light, squared: there is nothing to be seen. */
  private static final double LEAST_SQUARE = 1e-6;

  private static final int STRETCHES = 3;
  private static final int PLANES = 3;

  private final List<LevelledPatch> places;
  private final RowGeometry geometry;
  private final int first;
  private final double[][] typical;
  private final double[] scale;

  /**
   * What lies at the places of a row and beyond its ends.
   *
   * @param spec the row with some places more at either end
   * @param row where they are
   * @param beyond how many places were added at either end
   */
  public static MetalPlaces of(Frame frame, RowSpec spec, RowOutcome.Found row, int beyond) {
    int leads = spec.leads() - 2 * beyond;
    List<JointPatch> patches = new Straightener(spec, row.leads()).patches(frame);
    List<JointPatch> own = patches.subList(beyond, beyond + leads);
    RowGeometry geometry = new GeometryFinder(spec, own).find();
    StraightRow straight = StraightRow.of(patches, geometry, RowLight.of(own, geometry));
    return new MetalPlaces(straight.levelled(), geometry, beyond, leads);
  }

  private MetalPlaces(List<LevelledPatch> places, RowGeometry geometry, int first, int leads) {
    this.places = places;
    this.geometry = geometry;
    this.first = first;
    this.typical =
        IntStream.range(0, STRETCHES)
            .mapToObj(stretch -> typical(stretch, places.subList(first, first + leads)))
            .toArray(double[][]::new);
    this.scale =
        IntStream.range(0, STRETCHES)
            .mapToDouble(stretch -> scale(stretch, places.subList(first, first + leads)))
            .toArray();
  }

  /**
   * Square of a stretch's typical difference, or of the row's usual distance from it if greater.
   */
  private double scale(int stretch, List<LevelledPatch> row) {
    double[] off =
        row.stream()
            .flatMap(place -> Arrays.stream(sides(place, from(stretch), from(stretch + 1))))
            .mapToDouble(side -> square(less(side, typical[stretch])))
            .toArray();
    return Math.max(square(typical[stretch]), Quantiles.middle(off));
  }

  private static double[] less(double[] a, double[] b) {
    double[] less = new double[PLANES];
    for (int i = 0; i < PLANES; i++) {
      less[i] = a[i] - b[i];
    }
    return less;
  }

  /**
   * How surely each place is a lead of the row: the lesser of its two sides, each the mean of its
   * stretches; the inner side in the row's own colours, the outer by size.
   */
  public List<Double> surely() {
    return IntStream.range(0, places.size())
        .mapToObj(i -> surely(places.get(i), i < first ? 1 : 0))
        .toList();
  }

  private double surely(LevelledPatch place, int inner) {
    double outside = 0;
    for (int stretch = 0; stretch < STRETCHES; stretch++) {
      double[][] sides = sides(place, from(stretch), from(stretch + 1));
      outside += Math.sqrt(square(sides[1 - inner]) / scale[stretch]) / STRETCHES;
    }
    return Math.min(along(place, inner), outside);
  }

  /** How much of a lead each place may be: the greatest of its sides and stretches. */
  public List<Double> perhaps() {
    return places.stream().map(this::perhaps).toList();
  }

  private double perhaps(LevelledPatch place) {
    double most = 0;
    for (int stretch = 0; stretch < STRETCHES; stretch++) {
      for (double[] side : sides(place, from(stretch), from(stretch + 1))) {
        most = Math.max(most, dot(side, typical[stretch]) / square(typical[stretch]));
      }
    }
    return most;
  }

  /** Mean of a side's stretches, in the row's own colours. */
  private double along(LevelledPatch place, int side) {
    double sum = 0;
    for (int stretch = 0; stretch < STRETCHES; stretch++) {
      sum += along(sides(place, from(stretch), from(stretch + 1))[side], stretch);
    }
    return sum / STRETCHES;
  }

  /** How unlike board the strip beyond each place's land is, more or less than 0. */
  public List<Double> runsOn() {
    return places.stream().map(this::beyond).toList();
  }

  private double lesser(double[][] sides, int stretch) {
    return Math.min(along(sides[0], stretch), along(sides[1], stretch));
  }

  private double beyond(LevelledPatch place) {
    double end = geometry.ahead();
    return lesser(sides(place, end + METAL.beyondFrom(), end + METAL.beyondTo()), STRETCHES - 1);
  }

  /** Begin of a stretch: they part the way from the middle of the foot to the land's end. */
  private double from(int stretch) {
    double begin = geometry.heelY() / 2;
    return begin + stretch * (geometry.ahead() - begin) / STRETCHES;
  }

  private double[] typical(int stretch, List<LevelledPatch> row) {
    double[][][] sides =
        row.stream()
            .map(place -> sides(place, from(stretch), from(stretch + 1)))
            .toArray(double[][][]::new);
    double[] middle = new double[PLANES];
    for (int plane = 0; plane < PLANES; plane++) {
      int at = plane;
      middle[plane] =
          Quantiles.middle(
              Arrays.stream(sides).mapToDouble(s -> (s[0][at] + s[1][at]) / 2).toArray());
    }
    return middle;
  }

  /** Colour of the land less that of the gap, to either side. */
  private double[][] sides(LevelledPatch place, double y0, double y1) {
    return new double[][] {
      difference(place, -METAL.gap(), y0, y1), difference(place, METAL.gap(), y0, y1)
    };
  }

  private double[] difference(LevelledPatch place, double gap, double y0, double y1) {
    double half = METAL.withinLand() * geometry.landHalf();
    double gapHalf = METAL.withinGap() * Math.max(0, METAL.gap() - geometry.landHalf());
    List<float[]> planes = List.of(place.landLight(), place.landRedGreen(), place.landYellowBlue());
    double[] difference = new double[PLANES];
    for (int i = 0; i < PLANES; i++) {
      difference[i] =
          new Zone(planes.get(i), -half, half, y0, y1).mean()
              - new Zone(planes.get(i), gap - gapHalf, gap + gapHalf, y0, y1).mean();
    }
    return difference;
  }

  private double along(double[] difference, int stretch) {
    return dot(difference, typical[stretch]) / scale[stretch];
  }

  private static double dot(double[] a, double[] b) {
    double dot = 0;
    for (int i = 0; i < PLANES; i++) {
      dot += a[i] * b[i];
    }
    return dot;
  }

  /** Never zero, since all is divided by it. */
  private static double square(double[] difference) {
    return dot(difference, difference) + LEAST_SQUARE;
  }
}
