package leadlight.register;

import java.util.Comparator;
import java.util.List;
import leadlight.model.Homography;
import leadlight.model.picture.ColourPatch;
import leadlight.model.picture.Plane;
import leadlight.model.row.RowOutcome;
import leadlight.register.Alignment.Freedom;
import leadlight.vision.Frame;
import leadlight.vision.Matching;

/** Lays other photos over one photo whose row is known. */
public final class Registrar {

  private final RegisterTuning tuning;
  private final Frame photo;
  private final RowOutcome.Found row;
  private final double pitchMm;
  private final RowGrid grid;

  /**
   * Takes the photo that stays.
   *
   * @param row the row in it
   * @param pitchMm the row's nominal pitch
   */
  public Registrar(RegisterTuning tuning, Frame photo, RowOutcome.Found row, double pitchMm) {
    this.tuning = tuning;
    this.photo = photo;
    this.row = row;
    this.pitchMm = pitchMm;
    this.grid = RowGrid.around(row, pitchMm, tuning);
  }

  /** The finest grid: the row with board around it. */
  public RowGrid finest() {
    return grid;
  }

  /** From the finest grid to the photo that stays. */
  public Homography gridToPhoto() {
    return row.mmToPx().after(grid.toMm());
  }

  /** The colour of a photo that was laid over, beside that of the one that stays. */
  public Overlay colour(Frame moving, Overlay laid) {
    return new Overlay(
        Cut.colour(photo, grid, gridToPhoto()),
        Cut.colour(moving, grid, laid.gridToMoving()),
        laid.gridToMoving(),
        laid.likeness(),
        laid.ownLikeness(),
        laid.margin());
  }

  /** Lays a photo over, taken by a camera that moved little. */
  public Overlay overlay(Frame moving) {
    return refined(moving, near(moving), Look.LIGHT);
  }

  /**
   * Lays a photo over whose row was found: of the map that the two rows give, and of those that are
   * counted one pin off, the one under which most of what is this row's own is found again.
   *
   * @param mmToMoving the row frame in the other photo
   */
  public Overlay overlay(Frame moving, Homography mmToMoving) {
    List<Overlay> tried =
        List.of(0, -1, 1).stream()
            .map(pins -> counted(moving, mmToMoving, pins))
            .sorted(Comparator.comparingDouble(Overlay::ownLikeness).reversed())
            .toList();
    Overlay best = closer(moving, tried.get(0));
    return best.withMargin(best.ownLikeness() - tried.get(1).ownLikeness());
  }

  /** Laid by light from there on, if that makes the two more alike: under one lamp it does. */
  private Overlay closer(Frame moving, Overlay by) {
    Homography mmToMoving = by.gridToMoving().after(inverseMm(grid));
    Overlay closer =
        compared(moving, laid(moving, grid, mmToMoving, Look.LIGHT, Freedom.PROJECTIVE));
    return closer.likeness() > by.likeness() ? closer : by;
  }

  private Overlay counted(Frame moving, Homography mmToMoving, int pins) {
    return refined(moving, mmToMoving.after(shift(pins * pitchMm, 0)), Look.OUTLINES);
  }

  private static Homography shift(double uMm, double vMm) {
    return new Homography(1, 0, uMm, 0, 1, vMm, 0, 0, 1);
  }

  private static Homography inverseMm(RowGrid level) {
    return level.toMm().inverse();
  }

  /** Row frame to the other photo, by the best place of the whole row at a coarse scale. */
  private Homography near(Frame moving) {
    RowGrid coarse = level(tuning.coarsePitchPx().value());
    double reach = tuning.reachPitch().value() * pitchMm;
    RowGrid wide =
        new RowGrid(
            coarse.fromUMm() - reach,
            coarse.fromVMm() - reach,
            coarse.pxPerMm(),
            coarse.width() + (int) (2 * reach * coarse.pxPerMm()),
            coarse.height() + (int) (2 * reach * coarse.pxPerMm()));
    Plane part = evened(Cut.of(photo, coarse, row.mmToPx().after(coarse.toMm()), tuning));
    Plane whole = evened(Cut.of(moving, wide, row.mmToPx().after(wide.toMm()), tuning));
    Plane scores = Matching.correlation(grey(whole), grey(part));
    int best = 0;
    for (int i = 1; i < scores.data().length; i++) {
      best = scores.data()[i] > scores.data()[best] ? i : best;
    }
    double du = best % scores.width() / coarse.pxPerMm() - reach;
    double dv = best / scores.width() / coarse.pxPerMm() - reach;
    return row.mmToPx().after(shift(du, dv));
  }

  private static ColourPatch grey(Plane light) {
    return new ColourPatch(light, light, light);
  }

  /** What two photos are laid over each other by. */
  private enum Look {
    /** Their light: most exact under one lamp, and led astray by another. */
    LIGHT(Freedom.PROJECTIVE, Freedom.PROJECTIVE),
    /** Their outlines, which no lamp moves; less exact, so fewer unknowns until the last level. */
    OUTLINES(Freedom.SIMILAR, Freedom.AFFINE);

    private final Freedom first;
    private final Freedom last;

    Look(Freedom first, Freedom last) {
      this.first = first;
      this.last = last;
    }
  }

  private Overlay refined(Frame moving, Homography mmToMoving, Look look) {
    Homography map = mmToMoving;
    for (double pitchPx :
        new double[] {tuning.coarsePitchPx().value(), tuning.middlePitchPx().value()}) {
      if (pitchPx < row.pitchPx()) {
        RowGrid level = level(pitchPx);
        map = laid(moving, level, map, look, look.first).after(inverseMm(level));
      }
    }
    return compared(moving, laid(moving, grid, map, look, look.last));
  }

  private RowGrid level(double pitchPx) {
    return grid.scaled(Math.min(1, pitchPx / (grid.pxPerMm() * pitchMm)));
  }

  /** The map from a level's grid to the other photo. */
  private Homography laid(
      Frame moving, RowGrid level, Homography mmToMoving, Look look, Freedom freedom) {
    Cut fixed = Cut.of(photo, level, row.mmToPx().after(level.toMm()), tuning);
    Plane shown = shown(fixed, look);
    Homography map = mmToMoving.after(level.toMm());
    int rounds = (int) tuning.rounds().value();
    double startPx = gridPixel(level, map);
    for (int round = 0; round < rounds; round++) {
      Cut other = Cut.of(moving, level, map, tuning);
      Homography next =
          map.after(new Alignment(shown, shown(other, look), both(fixed, other), freedom).step());
      double stretch = gridPixel(level, next) / startPx;
      if (!(stretch < tuning.mostStretch().value() && stretch > 1 / tuning.mostStretch().value())) {
        break;
      }
      map = next;
    }
    return map;
  }

  private Overlay compared(Frame moving, Homography map) {
    Cut fixed = Cut.of(photo, grid, gridToPhoto(), tuning);
    Plane fixedEven = evened(fixed);
    Cut other = Cut.of(moving, grid, map, tuning);
    Plane otherEven = evened(other);
    boolean[] both = both(fixed, other);
    double pitchPx = grid.pxPerMm() * pitchMm;
    double own =
        Likeness.of(
            Likeness.own(fixedEven, pitchPx), Likeness.own(otherEven, pitchPx), inner(both, grid));
    return new Overlay(fixed, other, map, Likeness.of(fixedEven, otherEven, both), own, 0);
  }

  private Plane shown(Cut cut, Look look) {
    Plane even = evened(cut);
    return look == Look.LIGHT ? even : Outlines.of(even, radius(cut.grid()), tuning);
  }

  /** How long a pixel of the grid is in the other photo, at the middle. */
  private static double gridPixel(RowGrid level, Homography gridToMoving) {
    double x = level.width() / 2.0;
    double y = level.height() / 2.0;
    return gridToMoving.map(x, y).distanceTo(gridToMoving.map(x + 1, y));
  }

  /** Evened light of a cut, at its own scale. */
  private Plane evened(Cut cut) {
    return Evened.of(cut.light(), radius(cut.grid()), tuning.floorLevels().value());
  }

  private int radius(RowGrid level) {
    return (int) Math.max(2, Math.round(tuning.evenPitch().value() * pitchMm * level.pxPerMm()));
  }

  /** Without the ends, which differ from the middle in one way in all rows. */
  private boolean[] inner(boolean[] use, RowGrid level) {
    boolean[] inner = use.clone();
    double ends = (tuning.beyondEndsPitch().value() + 1) * pitchMm * level.pxPerMm();
    for (int i = 0; i < inner.length; i++) {
      int x = i % level.width();
      inner[i] &= x >= ends && x < level.width() - ends;
    }
    return inner;
  }

  private static boolean[] both(Cut a, Cut b) {
    boolean[] both = new boolean[a.seen().length];
    for (int i = 0; i < both.length; i++) {
      both[i] = a.seen()[i] && b.seen()[i];
    }
    return both;
  }
}
