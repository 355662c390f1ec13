package leadlight.row.find;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leadlight.model.Homography;
import leadlight.model.picture.ColourPatch;
import leadlight.row.strip.Lattice;
import leadlight.row.strip.LeadPicture;
import leadlight.row.strip.Strip;
import leadlight.row.strip.Zone;
import leadlight.row.tuning.RowTuning;

/**
 * Which N of N + k places are the row: the ones whose inside looks like leads and whose outside
 * does not.
 *
 * @param shift how many pitches the row lies further right than assumed
 * @param score mean likeness inside less likeness just outside, per lead
 * @param margin how much better than the next choice, summed likeness
 * @param inside mean likeness inside
 * @param outside the larger likeness beyond either end
 * @param lastLead the smaller likeness of the two leads at the ends
 * @param cropped whether a lead of the choice lies outside the photo
 * @param runsOut whether the places beyond the less clean end reach the photo's edge
 */
public record EndChoice(
    int shift,
    double score,
    double margin,
    double inside,
    double outside,
    double lastLead,
    boolean cropped,
    boolean runsOut) {

  private static final RowTuning.Ends ENDS = RowTuning.builtIn().ends();

  static final int REACH = 6;

  /** What a place outside the photo counts as, seen as a place beyond an end. */
  private static final double UNSEEN = 0.5;

  /** Looks up and down the row from the assumed place. */
  static EndChoice of(Strip strip, Lattice lattice, Zone zone) {
    Places places =
        new Places(strip, lattice, zone.from() - ENDS.besideZone(), zone.to() + ENDS.besideZone());
    int reach = REACH - 2;
    List<EndChoice> choices = new ArrayList<>();
    for (int shift = -reach; shift <= reach; shift++) {
      choices.add(places.choice(shift));
    }
    choices.sort((a, b) -> Double.compare(b.score, a.score));
    EndChoice best = choices.get(0);
    double margin = (best.score - choices.get(1).score) * lattice.count();
    return new EndChoice(
        best.shift,
        best.score,
        margin,
        best.inside,
        best.outside,
        best.lastLead,
        best.cropped,
        best.runsOut);
  }

  /** The map moved to the chosen place. */
  Homography moved(Homography uvToPhoto) {
    return uvToPhoto.after(new Homography(1, 0, shift, 0, 1, 0, 0, 0, 1));
  }

  /** The places of a strip, each judged once per kind of land. */
  private static final class Places {

    private final Strip strip;
    private final Lattice lattice;
    private final double middle;
    private final Map<Integer, LeadPicture> pictures = new HashMap<>();
    private final Map<Long, Double> known = new HashMap<>();

    Places(Strip strip, Lattice lattice, double vFrom, double vTo) {
      this.strip = strip;
      this.lattice = lattice;
      this.middle = (vFrom + vTo) / 2;
      ColourPatch ripples = LeadPicture.ripples(strip);
      for (int kind : lattice.kinds()) {
        pictures.computeIfAbsent(
            kind, q -> LeadPicture.of(strip, ripples, lattice.placesOf(q), vFrom, vTo));
      }
    }

    EndChoice choice(int shift) {
      int n = lattice.count();
      double inside = 0;
      boolean cropped = false;
      for (int k = 0; k < n; k++) {
        double u = lattice.u()[k] + shift;
        cropped |= !seen(u);
        inside += Math.max(0, likeness(u, k));
      }
      double left = beyond(shift - 1.0, shift - 2.0, 0);
      double right = beyond(lattice.span() + shift + 1, lattice.span() + shift + 2, n - 1);
      double score = (inside - left - right) / n;
      double last = Math.min(likeness(shift, 0), likeness(lattice.span() + shift, n - 1));
      boolean runsOut =
          !seen(left > right ? shift - 3.0 : lattice.span() + shift + 3)
              && Math.min(left, right) < ENDS.runsOutBelow();
      return new EndChoice(
          shift, score, 0, inside / n, Math.max(left, right), last, cropped, runsOut);
    }

    /** The first place beyond an end tells most: next to it the last lead must stand. */
    private double beyond(double first, double second, int k) {
      return ENDS.nextWeight() * outer(first, k) + ENDS.secondWeight() * outer(second, k);
    }

    private double outer(double u, int k) {
      return seen(u) ? Math.max(0, likeness(u, k)) : UNSEEN;
    }

    private boolean seen(double u) {
      return strip.shows(u - ENDS.seenHalf(), middle) && strip.shows(u + ENDS.seenHalf(), middle);
    }

    private double likeness(double u, int k) {
      if (!strip.shows(u, middle)) {
        return 0;
      }
      int kind = lattice.kinds()[k];
      long key = Math.round(u * 1000) * 64 + kind;
      return known.computeIfAbsent(key, q -> pictures.get(kind).likeness(strip, u));
    }
  }
}
