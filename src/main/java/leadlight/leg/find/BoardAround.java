package leadlight.leg.find;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import leadlight.data.DataFile;
import leadlight.data.Figure;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.picture.ColourPatch;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.DoubtOfLeg;
import leadlight.vision.Frame;

/**
 * Whether what lies around the lands can be a solder side: one board, all round. A shell beside the
 * legs says that the photo shows the component side, and the limits of the solder side would vouch
 * for legs by the wrong ones. Where the board itself is as pale as steel a shell would not show.
 */
public final class BoardAround {

  private static final int DIRECTIONS = 72;
  private static final int STEPS = 7;

  private final ColourPatch picture;
  private final double factor;
  private final Limits limits = DataFile.builtIn("legs/around.json").read(Limits.class);

  /**
   * Takes the photo in which the legs lie.
   *
   * @param landPx mean length of a land there
   */
  BoardAround(Frame frame, double landPx) {
    this.factor = Math.min(1, LegTuning.builtIn().fineLengthPx().value() / landPx);
    try (Frame small =
        factor < 1
            ? frame.shrunk(factor)
            : frame.cropped(0, 0, frame.widthPx(), frame.heightPx())) {
      this.picture =
          small.straightened(
              new Homography(1, 0, 0, 0, 1, 0, 0, 0, 1), small.widthPx(), small.heightPx());
    }
  }

  /** Why none of these legs may be judged as of the solder side; empty if nothing speaks so. */
  public static Optional<Doubt> noSolderSide(Frame frame, List<FoundLeg> legs) {
    double landPx =
        legs.stream()
            .mapToDouble(
                leg ->
                    Math.max(leg.leg().landWidthMm(), leg.leg().landHeightMm())
                        * leg.place().pxPerMm())
            .average()
            .orElse(0);
    return landPx < 1 ? Optional.empty() : new BoardAround(frame, landPx).doubt(legs);
  }

  private Optional<Doubt> doubt(List<FoundLeg> legs) {
    List<Look> looks = legs.stream().map(this::look).flatMap(Optional::stream).toList();
    if (2 * looks.size() < legs.size()) {
      return Optional.of(new DoubtOfLeg.ShellNotTold());
    }
    double[] contrasts = looks.stream().mapToDouble(Look::contrast).sorted().toArray();
    double contrast = contrasts[contrasts.length / 2];
    if (contrast >= limits.contrast().value()) {
      return Optional.of(new DoubtOfLeg.ShellInView(Math.exp(contrast)));
    }
    long pale = looks.stream().filter(Look::pale).count();
    return 2 * pale >= looks.size() ? Optional.of(new DoubtOfLeg.ShellNotTold()) : Optional.empty();
  }

  /**
   * Around one land.
   *
   * @param contrast greatest between two opposite sectors, natural logarithm of the levels' ratio
   * @param pale most sectors may be steel
   */
  private record Look(double contrast, boolean pale) {}

  /** Nothing if too little of what lies around it is in the picture to show a shell. */
  private Optional<Look> look(FoundLeg leg) {
    List<List<double[]>> seen =
        IntStream.range(0, DIRECTIONS).mapToObj(direction -> seen(leg, direction)).toList();
    List<Optional<double[]>> sectors =
        IntStream.range(0, DIRECTIONS).mapToObj(direction -> sector(seen, direction)).toList();
    double contrast = 0;
    int pairs = 0;
    for (int i = 0; i < DIRECTIONS / 2; i++) {
      Optional<double[]> other = sectors.get(i + DIRECTIONS / 2);
      if (sectors.get(i).isPresent() && other.isPresent()) {
        contrast = Math.max(contrast, contrast(sectors.get(i).get(), other.get()));
        pairs++;
      }
    }
    if (pairs < limits.leastPairs().value() * DIRECTIONS / 2) {
      return Optional.empty();
    }
    List<double[]> shown = sectors.stream().flatMap(Optional::stream).toList();
    return Optional.of(
        new Look(contrast, 2 * shown.stream().filter(this::pale).count() >= shown.size()));
  }

  /** Colours beyond the land in one direction, as far as they lie in the picture. */
  private List<double[]> seen(FoundLeg leg, int direction) {
    double dx = Math.cos(2 * Math.PI * direction / DIRECTIONS);
    double dy = Math.sin(2 * Math.PI * direction / DIRECTIONS);
    double half = Math.min(leg.leg().landWidthMm(), leg.leg().landHeightMm()) / 2;
    double reach = leg.leg().land().reachMm(dx, dy);
    double from = limits.fromLand().value() - 1;
    double step = (limits.toLand().value() - 1 - from) / (STEPS - 1);
    return IntStream.range(0, STEPS)
        .mapToDouble(i -> reach + (from + i * step) * half)
        .mapToObj(mm -> leg.place().at(dx * mm, dy * mm))
        .map(this::colour)
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<double[]> colour(PointPx at) {
    int x = (int) Math.rint((at.x() + 0.5) * factor - 0.5);
    int y = (int) Math.rint((at.y() + 0.5) * factor - 0.5);
    return x < 0 || y < 0 || x >= picture.width() || y >= picture.height()
        ? Optional.empty()
        : Optional.of(
            new double[] {
              picture.red().at(x, y), picture.green().at(x, y), picture.blue().at(x, y)
            });
  }

  /** Median colour of a sector; none if less than half of it lies in the picture. */
  private Optional<double[]> sector(List<List<double[]>> seen, int direction) {
    int beside = (int) Math.rint(limits.sectorDeg().value() / 2 * DIRECTIONS / 360);
    List<double[]> all =
        IntStream.rangeClosed(direction - beside, direction + beside)
            .mapToObj(i -> seen.get(Math.floorMod(i, DIRECTIONS)))
            .flatMap(List::stream)
            .toList();
    if (2 * all.size() < (2 * beside + 1) * STEPS) {
      return Optional.empty();
    }
    double[] median = new double[3];
    for (int channel = 0; channel < median.length; channel++) {
      int at = channel;
      double[] levels = all.stream().mapToDouble(colour -> colour[at]).sorted().toArray();
      median[channel] = levels[levels.length / 2];
    }
    return Optional.of(median);
  }

  private double contrast(double[] one, double[] other) {
    double dark = limits.dark().value();
    return IntStream.range(0, one.length)
        .mapToDouble(i -> Math.abs(Math.log((one[i] + dark) / (other[i] + dark))))
        .max()
        .orElseThrow();
  }

  private boolean pale(double[] colour) {
    double most = Arrays.stream(colour).max().orElseThrow();
    double least = Arrays.stream(colour).min().orElseThrow();
    double dark = limits.dark().value();
    return most >= limits.paleFrom().value()
        && Math.log((most + dark) / (least + dark)) <= limits.paleToColour().value();
  }

  /**
   * {@code models/legs/around.json}.
   *
   * @param fromLand where looking begins, half-lands from a land's middle
   * @param toLand where it ends
   * @param sectorDeg width of a sector, degrees
   * @param leastPairs share of the directions across a land that must show at both ends
   * @param contrast natural logarithm of the ratio of levels from which two sectors are two things
   * @param dark added to levels before their ratio is taken
   * @param paleFrom level of the lightest channel from which a surface may be steel
   * @param paleToColour logarithm of the ratio of channels up to which it may be
   */
  record Limits(
      @JsonProperty(required = true) Figure fromLand,
      @JsonProperty(required = true) Figure toLand,
      @JsonProperty(required = true) Figure sectorDeg,
      @JsonProperty(required = true) Figure leastPairs,
      @JsonProperty(required = true) Figure contrast,
      @JsonProperty(required = true) Figure dark,
      @JsonProperty(required = true) Figure paleFrom,
      @JsonProperty(required = true) Figure paleToColour) {}
}
