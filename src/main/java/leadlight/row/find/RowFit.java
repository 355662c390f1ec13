package leadlight.row.find;

import java.util.Optional;
import leadlight.model.BodySide;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.picture.Plane;
import leadlight.row.strip.Lattice;
import leadlight.row.strip.LeadPicture;
import leadlight.row.strip.Strip;
import leadlight.row.strip.Waves;
import leadlight.row.strip.Zone;
import leadlight.vision.Pyramid;

/**
 * A candidate row fitted to the photo.
 *
 * @param uvToPhoto row units (pitches from the left lead; along the leads) to photo pixels
 * @param zone extent of the leads and lands along v
 */
public record RowFit(Homography uvToPhoto, Zone zone, Strip strip, EndChoice ends) {

  public static final int PER_PITCH = 16;
  private static final double REACH_V = 5.5;

  /** A side is told roughly: up to 60 degrees off, so that of a slanted row either axis may do. */
  private static final double LEAST_COSINE = 0.5;

  public static RowFit of(
      Pyramid photo, CombHit hit, Lattice lattice, EvenRun run, double usualLean) {
    double c = Math.cos(hit.angleRad()) * hit.pitchPx();
    double s = Math.sin(hit.angleRad()) * hit.pitchPx();
    double middle = lattice.u()[run.first()] + (run.count() - 1) / 2.0;
    PointPx m = hit.middlePx();
    Homography map = new Homography(c, -s, m.x() - c * middle, s, c, m.y() - s * middle, 0, 0, 1);
    LatticeFit fit = new LatticeFit(lattice, usualLean);
    Zone zone = null;
    for (int round = 0; round < 3; round++) {
      Strip strip = strip(photo, map, lattice, 0);
      Waves waves = new Waves(strip, lattice);
      zone = Zone.of(waves, 1.0);
      map = fit.along(strip, waves, zone);
      strip = strip(photo, map, lattice, zone.middle());
      waves = new Waves(strip, lattice);
      map = fit.level(strip, waves, zone);
      map = map.after(new Homography(1, 0, 0, 0, 1, zone.middle(), 0, 0, 1));
      map = fit.leaning(map, waves, zone);
    }
    RowFit fitted = settled(photo, map, lattice);
    for (int round = 0; round < 3 && fitted.ends.shift() != 0; round++) {
      fitted = settled(photo, fitted.ends.moved(fitted.uvToPhoto), lattice);
    }
    return fitted;
  }

  /** The row in its place: centred on the leads, with its own lead picture and its neighbours. */
  private static RowFit settled(Pyramid photo, Homography map, Lattice lattice) {
    Strip strip = strip(photo, map, lattice, 0);
    Zone zone = Zone.of(new Waves(strip, lattice), 1.5);
    Homography centred = centred(strip, lattice, zone);
    strip = strip(photo, centred, lattice, 0);
    EndChoice ends = EndChoice.of(strip, lattice, zone);
    return new RowFit(centred, zone, strip, ends);
  }

  /** The fit half a pitch aside, where the gaps of this one are its leads. */
  public RowFit halfAside(Pyramid photo, Lattice lattice) {
    RowFit aside =
        inPlace(photo, uvToPhoto.after(new Homography(1, 0, 0.5, 0, 1, 0, 0, 0, 1)), lattice);
    return aside.ends.shift() == 0
        ? aside
        : inPlace(photo, aside.ends.moved(aside.uvToPhoto), lattice);
  }

  private RowFit inPlace(Pyramid photo, Homography map, Lattice lattice) {
    Strip aside = strip(photo, map, lattice, 0);
    EndChoice choice = EndChoice.of(aside, lattice, zone);
    return new RowFit(map, zone, aside, choice);
  }

  private static Strip strip(Pyramid photo, Homography map, Lattice lattice, double vMiddle) {
    double beyond = EndChoice.REACH + 1;
    return Strip.of(
        photo,
        map,
        -beyond,
        lattice.span() + beyond,
        vMiddle - REACH_V,
        vMiddle + REACH_V,
        PER_PITCH);
  }

  /** Puts u = 0 on the lead's middle: the axis of symmetry that is brighter than its surround. */
  private static Homography centred(Strip strip, Lattice lattice, Zone zone) {
    int s = strip.perPitch();
    Plane[] cells = new Plane[lattice.count()];
    for (int k = 0; k < cells.length; k++) {
      double u = lattice.u()[k];
      cells[k] = strip.cut(strip.grey(), u - 1, u + 1, zone.from(), zone.to());
    }
    double shift = Symmetry.axis(LeadPicture.median(cells), s);
    return strip.uvToPhoto().after(new Homography(1, 0, shift, 0, 1, 0, 0, 0, 1));
  }

  /**
   * Likeness inside less outside, lessened where the row is not periodic along its whole length.
   */
  public double score() {
    return ends.score() * Math.min(1, zone.lock() / 0.5);
  }

  /**
   * Whether a body on a side of the photo lies on the strip's upper side; empty if the row runs
   * that way.
   */
  public Optional<Boolean> upper(BodySide side, Lattice lattice) {
    PointPx at = uvToPhoto.map(lattice.span() / 2, zone.middle());
    PointPx up = uvToPhoto.map(lattice.span() / 2, zone.middle() - 1);
    double cosine = side.cosine(up.x() - at.x(), up.y() - at.y());
    return Math.abs(cosine) < LEAST_COSINE ? Optional.empty() : Optional.of(cosine > 0);
  }

  /** Whether the other fit has come to the same leads. */
  public boolean samePlace(RowFit other, Lattice lattice) {
    double half = lattice.span() / 2;
    PointPx a = uvToPhoto.map(half, zone.middle());
    PointPx b = other.uvToPhoto.map(half, other.zone.middle());
    double pitch = Strip.pitchPx(uvToPhoto, half, 0);
    return a.distanceTo(b) < 2.5 * pitch;
  }
}
