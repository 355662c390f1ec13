package leadlight.joint.cut;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import leadlight.model.row.LandSpec;
import leadlight.model.row.RowSpec;
import leadlight.numeric.Parabola;
import leadlight.numeric.Quantiles;

/**
 * Finds the widths of leads and lands from the row's own median joint: the strongest pair of edges
 * that lie alike on both sides of the middle. A width that the connector states is taken as stated.
 */
public final class GeometryFinder {

  private static final JointTuning.Widths WIDTHS = JointTuning.builtIn().widths();

  private final RowSpec spec;
  private final List<JointPatch> patches;

  public GeometryFinder(RowSpec spec, List<JointPatch> patches) {
    this.spec = spec;
    this.patches = patches;
  }

  public RowGeometry find() {
    double ahead = medianOf(JointPatch::ahead);
    double heelY = medianOf(JointPatch::heelY);
    double landHalf =
        statedLandHalf().orElseGet(() -> edge(false, 0.3 * ahead, 0.85 * ahead, WIDTHS.land()));
    return new RowGeometry(leadHalf(landHalf, heelY), landHalf, ahead, heelY);
  }

  /**
   * The widths with the lead's read where its foot surely lies, as the heel may be misread. A width
   * at the border of what is sought is no edge but the flank of the land's: a lead that does not
   * stand out from its land has the usual width.
   */
  public RowGeometry reread(RowGeometry found, FootBands bands) {
    double half = leadHalf(found.landHalf(), bands.end());
    double most = found.landHalf() - WIDTHS.leadWithinLand() - 1.5 / PatchGrid.DENSITY;
    boolean flank = spec.leadWidthMm().isEmpty() && half > Math.max(most, WIDTHS.lead().usual());
    return new RowGeometry(
        flank ? WIDTHS.lead().usual() : half, found.landHalf(), found.ahead(), found.heelY());
  }

  private double leadHalf(double landHalf, double footEnd) {
    if (spec.leadWidthMm().isPresent()) {
      return spec.leadWidthMm().getAsDouble() / spec.pitchMm() / 2;
    }
    return edge(
        true, 0.8 * footEnd, -0.15, WIDTHS.lead().below(landHalf - WIDTHS.leadWithinLand()));
  }

  private OptionalDouble statedLandHalf() {
    double[] stated =
        spec.lands().stream()
            .map(LandSpec::widthMm)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(width -> width.getAsDouble() / spec.pitchMm() / 2)
            .toArray();
    return stated.length < spec.leads()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Quantiles.middle(stated));
  }

  private double medianOf(ToDoubleFunction<JointPatch> value) {
    return Quantiles.middle(patches.stream().mapToDouble(value).toArray());
  }

  /** Half distance of the strongest edge pair of the median profile; refined by a parabola. */
  private double edge(boolean onLead, double y0, double y1, JointTuning.Prior prior) {
    double[] strength = edgeStrength(onLead, y0, y1);
    int first = (int) Math.round(prior.least() * PatchGrid.DENSITY);
    int last = Math.max(first, (int) Math.round(prior.most() * PatchGrid.DENSITY));
    int best = first;
    for (int i = first; i <= last; i++) {
      strength[i] *= prior.weight(i / (double) PatchGrid.DENSITY);
      if (strength[i] > strength[best]) {
        best = i;
      }
    }
    return (best + parabolaShift(strength, best)) / PatchGrid.DENSITY;
  }

  /** Edge strength by distance from the middle, both sides and all three planes added up. */
  private double[] edgeStrength(boolean onLead, double y0, double y1) {
    int middle = PatchGrid.column(0);
    double[] strength = new double[middle];
    List<List<float[]>> planes =
        onLead
            ? List.of(
                patches.stream().map(JointPatch::light).toList(),
                patches.stream().map(JointPatch::redGreen).toList(),
                patches.stream().map(JointPatch::yellowBlue).toList())
            : List.of(
                patches.stream().map(JointPatch::landLight).toList(),
                patches.stream().map(JointPatch::landRedGreen).toList(),
                patches.stream().map(JointPatch::landYellowBlue).toList());
    for (List<float[]> plane : planes) {
      double[] slope = Stats.slope(Stats.smoothed(medianProfile(plane, y0, y1)));
      for (int i = 0; i < middle; i++) {
        strength[i] += Math.abs(slope[middle + i]) + Math.abs(slope[middle - i]);
      }
    }
    return strength;
  }

  private static double[] medianProfile(List<float[]> planes, double y0, double y1) {
    double[][] profiles = new double[planes.size()][];
    for (int i = 0; i < profiles.length; i++) {
      profiles[i] =
          new Zone(planes.get(i), -PatchGrid.X_HALF, PatchGrid.X_HALF, y0, y1).acrossLead();
    }
    double[] median = new double[PatchGrid.WIDTH];
    double[] column = new double[profiles.length];
    for (int x = 0; x < median.length; x++) {
      for (int i = 0; i < profiles.length; i++) {
        column[i] = profiles[i][x];
      }
      median[x] = Quantiles.middle(column);
    }
    return median;
  }

  private static double parabolaShift(double[] values, int at) {
    if (at == 0 || at == values.length - 1) {
      return 0;
    }
    double shift = Parabola.vertex(values[at - 1], values[at], values[at + 1]);
    return Math.max(-0.5, Math.min(0.5, shift));
  }
}
