package leadlight.row;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import leadlight.model.BodySide;
import leadlight.model.PointPx;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.row.RowCandidate;
import leadlight.model.row.RowHint;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.row.find.CoarseSearch;
import leadlight.row.find.CombHit;
import leadlight.row.find.EvenRun;
import leadlight.row.find.RowFit;
import leadlight.row.place.RowBuilder;
import leadlight.row.strip.Lattice;
import leadlight.row.strip.Strip;
import leadlight.row.tuning.RowTuning;
import leadlight.vision.Frame;
import leadlight.vision.Pyramid;

/**
 * One search in one photo; its frame must stay open until this is closed. Not safe for use by
 * several threads at once.
 */
public final class RowSearch implements AutoCloseable {

  private final RowTuning tuning;
  private final Pyramid photo;
  private final RowSpec spec;
  private final Optional<RowHint> hint;
  private final Optional<BodySide> told;
  private final EvenRun run;
  private final Lattice lattice;
  private final Acceptance acceptance;
  private final List<RowFit> fits = new ArrayList<>();
  private boolean searched;

  RowSearch(RowTuning tuning, Frame frame, RowSpec spec, Optional<RowHint> hint) {
    this.tuning = tuning;
    this.photo = new Pyramid(frame);
    this.spec = spec;
    this.hint = hint;
    this.told = hint.flatMap(RowHint::body);
    this.run = EvenRun.of(spec);
    this.lattice = Lattice.of(spec);
    this.acceptance = new Acceptance(tuning.acceptance(), spec.leads());
  }

  @Override
  public void close() {
    photo.close();
  }

  /** The row that is meant, or why none is. */
  public RowOutcome outcome() {
    search();
    List<RowCandidate> considered = considered();
    if (fits.isEmpty()) {
      return new RowOutcome.NotFound(new NoteOfRow.NoRow(spec.leads()), considered);
    }
    Optional<Note> refusal = acceptance.refusal(fits.get(0), lattice);
    if (refusal.isPresent()) {
      return new RowOutcome.NotFound(refusal.get(), considered);
    }
    return chosen(considered);
  }

  /**
   * All rows that might be meant, for a judge who looks at their leads: the best places, each as it
   * lies and half a pitch aside, with the body on either side, or where it was told. None runs out
   * of the picture.
   */
  public List<PossibleRow> possible() {
    search();
    RowBuilder builder = new RowBuilder(tuning, spec, lattice, told);
    List<RowCandidate> considered = considered();
    List<PossibleRow> rows = new ArrayList<>();
    for (int place = 0; place < Math.min(tuning.comb().mostFits(), fits.size()); place++) {
      for (RowFit fit : List.of(fits.get(place), fits.get(place).halfAside(photo, lattice))) {
        if (acceptance.refusalOfPlace(fit, lattice).isEmpty()) {
          boolean endsShow = acceptance.refusalOfNumber(fit).isEmpty();
          for (boolean bodyAbove : builder.sides(fit)) {
            rows.add(new PossibleRow(builder.build(photo, fit, bodyAbove, considered), endsShow));
          }
        }
      }
    }
    return rows;
  }

  private List<RowCandidate> considered() {
    return fits.stream().map(this::candidate).toList();
  }

  private void search() {
    if (searched) {
      return;
    }
    searched = true;
    CoarseSearch coarse = new CoarseSearch(tuning, run.count(), photo);
    for (double reduction : coarse.reductions()) {
      fit(coarse.candidates(reduction));
      if (fits.stream().anyMatch(f -> accepted(f) && f.score() >= tuning.comb().settled())) {
        break;
      }
    }
    fits.sort(order());
  }

  private RowOutcome chosen(List<RowCandidate> considered) {
    RowFit best = fits.get(0);
    for (RowFit other : fits) {
      if (!accepted(other)) {
        break;
      }
      double ratio = length(other) / length(best);
      if (ratio > tuning.acceptance().larger()) {
        best = other;
      }
    }
    for (RowFit other : fits) {
      boolean alike =
          other != best
              && accepted(other)
              && length(best) / length(other) < tuning.acceptance().larger()
              && best.score() - other.score() < tuning.acceptance().alike();
      if (alike) {
        return new RowOutcome.NotFound(new NoteOfRow.TwoRows(spec.leads()), considered);
      }
    }
    return new RowBuilder(tuning, spec, lattice, told).build(photo, best, considered);
  }

  private double length(RowFit fit) {
    return fit.uvToPhoto().map(0, 0).distanceTo(fit.uvToPhoto().map(lattice.span(), 0));
  }

  private boolean accepted(RowFit fit) {
    return acceptance.refusal(fit, lattice).isEmpty();
  }

  private void fit(List<CombHit> hits) {
    if (hits.isEmpty()) {
      return;
    }
    double promising =
        Math.max(tuning.comb().leastScore(), tuning.comb().shareOfBest() * hits.get(0).score());
    List<CombHit> best =
        hits.stream()
            .filter(hit -> hit.score() > promising)
            .limit(tuning.comb().mostFits())
            .toList();
    // What costs is done on all cores, what depends on the order afterwards.
    IntStream.range(0, best.size()).parallel().mapToObj(i -> fit(best.get(i), i)).toList().stream()
        .filter(this::hinted)
        .forEach(this::keep);
  }

  /** Of fits to one place the better one stays. */
  private void keep(RowFit fit) {
    for (int i = 0; i < fits.size(); i++) {
      if (fits.get(i).samePlace(fit, lattice)) {
        if (order().compare(fit, fits.get(i)) < 0) {
          fits.set(i, fit);
        }
        return;
      }
    }
    fits.add(fit);
  }

  private Comparator<RowFit> order() {
    return Comparator.comparing((RowFit f) -> !accepted(f)).thenComparing(f -> -f.score());
  }

  /** In an uneven row the best two combs may have caught part of the even run only. */
  private RowFit fit(CombHit hit, int fitted) {
    int reach = run.count() == lattice.count() || fitted > 1 ? 0 : 2;
    RowFit best = null;
    for (int shift = -reach; shift <= reach; shift++) {
      RowFit fit = RowFit.of(photo, hit.movedAlong(shift), lattice, run, tuning.comb().usualLean());
      if (best == null || fit.score() > best.score()) {
        best = fit;
      }
    }
    return best;
  }

  private boolean hinted(RowFit fit) {
    return hint.flatMap(RowHint::box).map(box -> touches(box, fit)).orElse(true)
        && told.map(side -> fit.upper(side, lattice).isPresent()).orElse(true);
  }

  /** Whether the box, widened by two pitches, touches the row's middle line. */
  private boolean touches(RowHint.Box box, RowFit fit) {
    double play = 2 * Strip.pitchPx(fit.uvToPhoto(), lattice.span() / 2, 0);
    for (double u : lattice.u()) {
      PointPx p = fit.uvToPhoto().map(u, fit.zone().middle());
      if (p.x() > box.x() - play
          && p.x() < box.x() + box.widthPx() + play
          && p.y() > box.y() - play
          && p.y() < box.y() + box.heightPx() + play) {
        return true;
      }
    }
    return false;
  }

  private RowCandidate candidate(RowFit fit) {
    PointPx first = fit.uvToPhoto().map(0, 0);
    PointPx last = fit.uvToPhoto().map(lattice.span(), 0);
    String likeness =
        "its places match their common lead picture by %.2f, those beyond its ends by %.2f"
            .formatted(fit.ends().inside(), fit.ends().outside());
    return new RowCandidate(
        first,
        last,
        first.distanceTo(last) / lattice.span(),
        fit.score(),
        acceptance.refusal(fit, lattice).map(r -> likeness + "; " + r.code()).orElse(likeness));
  }
}
