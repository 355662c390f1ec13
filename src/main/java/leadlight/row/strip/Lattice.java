package leadlight.row.strip;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.row.LandSpec;
import leadlight.model.row.RowSpec;

/**
 * Where the lands of a row stand, in pitches from the left one, as seen in the strip.
 *
 * @param u places, ascending from 0
 * @param kinds lands of one width have one number
 */
public record Lattice(double[] u, int[] kinds) {

  /** The lattice of a row as the connector gives it. */
  public static Lattice of(RowSpec spec) {
    int n = spec.leads();
    double[] u = new double[n];
    int[] kinds = new int[n];
    List<Double> widths = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      LandSpec land = spec.lands().get(i);
      u[i] = land.uMm() / spec.pitchMm();
      double width = land.widthMm().orElse(0);
      if (!widths.contains(width)) {
        widths.add(width);
      }
      kinds[i] = widths.indexOf(width);
    }
    return new Lattice(u, kinds);
  }

  public int count() {
    return u.length;
  }

  public double span() {
    return u[u.length - 1];
  }

  /** The places of the lands of one kind. */
  public List<Double> placesOf(int kind) {
    List<Double> places = new ArrayList<>();
    for (int k = 0; k < u.length; k++) {
      if (kinds[k] == kind) {
        places.add(u[k]);
      }
    }
    return places;
  }
}
