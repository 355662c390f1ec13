package leadlight.row;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadlight.model.PointPx;
import leadlight.model.RowCandidate;
import leadlight.model.RowHint;
import leadlight.model.RowOutcome;
import leadlight.model.RowSpec;
import leadlight.vision.Frame;
import leadlight.vision.Pyramid;

/**
 * Finds the row of a known number of leads in a photo: any angle, any scale, the body on any side.
 *
 * <p>Coarse: combs of N teeth in the reduced picture, along the directions of its edges. Then each
 * candidate is straightened, its pitch, drift, slant and slope fitted, folded to the row's own lead
 * picture, and the N places chosen whose inside looks like leads and whose outside does not. Then
 * the body's side is judged, which fixes the numbering, and each lead's toe is located.
 * Deterministic; cost grows with the picture's area only in the halving of its copies.
 */
public final class RowFinder {

  private final RowTuning tuning;

  /** A finder with the built-in tuning. */
  public RowFinder() {
    this.tuning = RowTuning.standard();
  }

  /**
   * Looks for the row.
   *
   * @param frame the upright photo
   * @param spec what is known of the row
   * @param hint where a person pointed at the row; leads must lie in or near it
   */
  public RowOutcome find(Frame frame, RowSpec spec, Optional<RowHint> hint) {
    try (Pyramid photo = new Pyramid(frame)) {
      EvenRun run = EvenRun.of(spec);
      Lattice lattice = Lattice.of(spec, false);
      List<CombHit> hits = new CoarseSearch(tuning, run.count()).candidates(photo);
      List<RowFit> fits = fits(photo, hits, lattice, run);
      List<RowCandidate> considered = new ArrayList<>();
      for (RowFit fit : fits) {
        considered.add(candidate(fit, lattice));
      }
      if (fits.isEmpty()) {
        return new RowOutcome.NotFound(
            "no row of "
                + spec.leads()
                + " leads shows; check the number of leads, or take the photo so that the row fills"
                + " most of the width",
            considered);
      }
      RowFit best = fits.get(0);
      if (best.score() < tuning.leastScore()) {
        return new RowOutcome.NotFound(
            "nothing looks enough like a row of "
                + spec.leads()
                + " leads; check the number of leads, and that the whole row is sharp and in the"
                + " picture",
            considered);
      }
      return new RowBuilder(tuning, spec, lattice).build(photo, best, considered);
    }
  }

  private List<RowFit> fits(Pyramid photo, List<CombHit> hits, Lattice lattice, EvenRun run) {
    List<RowFit> fits = new ArrayList<>();
    for (CombHit hit : hits) {
      if (fits.size() < tuning.mostFits() && hit.score() > 0.6 * hits.get(0).score()) {
        RowFit fit = fit(photo, hit, lattice, run);
        if (fits.stream().noneMatch(f -> f.samePlace(fit, lattice))) {
          fits.add(fit);
        }
      }
    }
    fits.sort(Comparator.comparingDouble((RowFit f) -> -f.score()));
    return fits;
  }

  /** In an uneven row the comb may have caught part of the even run only. */
  private static RowFit fit(Pyramid photo, CombHit hit, Lattice lattice, EvenRun run) {
    int reach = run.count() == lattice.count() ? 0 : 2;
    RowFit best = null;
    for (int shift = -reach; shift <= reach; shift++) {
      RowFit fit = RowFit.of(photo, hit.movedAlong(shift), lattice, run);
      if (best == null || fit.score() > best.score()) {
        best = fit;
      }
    }
    return best;
  }

  private static RowCandidate candidate(RowFit fit, Lattice lattice) {
    PointPx first = fit.uvToPhoto().map(0, 0);
    PointPx last = fit.uvToPhoto().map(lattice.span(), 0);
    return new RowCandidate(
        first,
        last,
        first.distanceTo(last) / lattice.span(),
        fit.score(),
        "its places match their common lead picture by %.2f, those beyond its ends by %.2f"
            .formatted(fit.ends().inside(), fit.ends().outside()));
  }
}
