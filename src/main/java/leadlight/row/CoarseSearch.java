package leadlight.row;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leadlight.model.ColourPatch;
import leadlight.model.Homography;
import leadlight.vision.Pyramid;

/** Comb search over directions and scales, coarse pitches first. */
final class CoarseSearch {

  private static final double DIRECTION_SIDE_PX = 640;
  private final RowTuning tuning;
  private final int teeth;

  CoarseSearch(RowTuning tuning, int teeth) {
    this.tuning = tuning;
    this.teeth = teeth;
  }

  /** Candidates, best first; of hits on one row only the best. */
  List<CombHit> candidates(Pyramid photo) {
    double side = Math.max(photo.widthPx(), photo.heightPx());
    List<Double> directions = directions(photo, Math.max(1, side / DIRECTION_SIDE_PX));
    List<CombHit> hits = new ArrayList<>();
    for (double f = finest(side); f * CombSearch.LEAST_PITCH * (teeth - 1) < 1.4 * side; f *= 2) {
      for (double direction : directions) {
        hits.addAll(new CombSearch(teeth).search(photo, f, direction));
        hits.addAll(new CombSearch(teeth).search(photo, f, direction + Math.PI / 2));
      }
    }
    return distinct(hits);
  }

  private static double finest(double side) {
    double f = 1.6;
    while (side / f > 1800) {
      f *= 2;
    }
    return f;
  }

  private List<Double> directions(Pyramid photo, double f) {
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
        if (kept.size() == tuning.mostCandidates()) {
          break;
        }
      }
    }
    return kept;
  }
}
