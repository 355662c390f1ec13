package leadlight.row.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leadlight.model.Homography;
import leadlight.model.picture.ColourPatch;
import leadlight.row.strip.Grey;
import leadlight.row.tuning.RowTuning;
import leadlight.vision.Pyramid;

/** Comb search over directions and scales, coarse pitches first. */
public final class CoarseSearch {

  private static final double DIRECTION_SIDE_PX = 640;
  private static final double MOST_SIDE_PX = 2600;

  /** A pitch of 10 photo pixels is then one of 6.25. */
  private static final double FINEST = 1.6;

  private final RowTuning tuning;
  private final int teeth;
  private final Pyramid photo;
  private final double side;
  private final List<Double> directions;

  public CoarseSearch(RowTuning tuning, int teeth, Pyramid photo) {
    this.tuning = tuning;
    this.teeth = teeth;
    this.photo = photo;
    this.side = Math.max(photo.widthPx(), photo.heightPx());
    this.directions = directions(Math.max(1, side / DIRECTION_SIDE_PX));
  }

  /** By how much to reduce the picture: most first, each time half as much. */
  public List<Double> reductions() {
    List<Double> reductions = new ArrayList<>();
    double f = FINEST;
    while (f * CombSearch.LEAST_PITCH * (teeth - 1) < 1.4 * side) {
      if (side / f <= MOST_SIDE_PX) {
        reductions.add(0, f);
      }
      f *= 2;
    }
    return reductions;
  }

  /** Candidates at one reduction, best first; of hits on one row only the best. */
  public List<CombHit> candidates(double reduction) {
    List<CombHit> hits = new ArrayList<>();
    for (double direction : directions) {
      hits.addAll(new CombSearch(teeth).search(photo, reduction, direction));
      hits.addAll(new CombSearch(teeth).search(photo, reduction, direction + Math.PI / 2));
    }
    return distinct(hits);
  }

  private List<Double> directions(double f) {
    int width = (int) (photo.widthPx() / f);
    int height = (int) (photo.heightPx() / f);
    Homography map = new Homography(f, 0, f / 2 - 0.5, 0, f, f / 2 - 0.5, 0, 0, 1);
    ColourPatch patch = photo.straightened(map, width, height, f);
    return new DirectionSearch(tuning).directions(Grey.of(patch));
  }

  private List<CombHit> distinct(List<CombHit> hits) {
    hits.sort(Comparator.comparingDouble((CombHit h) -> -h.score()));
    List<CombHit> kept = new ArrayList<>();
    for (CombHit hit : hits) {
      if (kept.stream().noneMatch(k -> k.sameRow(hit, teeth))) {
        kept.add(hit);
        if (kept.size() == tuning.comb().mostCandidates()) {
          break;
        }
      }
    }
    return kept;
  }
}
