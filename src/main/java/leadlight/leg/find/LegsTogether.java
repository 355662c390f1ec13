package leadlight.leg.find;

import java.util.List;
import leadlight.model.PointPx;
import leadlight.vision.Frame;

/**
 * Places all legs of a part at once: one turn, two scales and one shift for the part, and one
 * margin by which the mask stands back from the copper, since the outline that shows is mostly the
 * mask's. A single outline is caught by a fillet or a leg close to it; all of them together are
 * not. Then each leg moves a little by itself, for makers' places and stamped parts differ.
 */
final class LegsTogether {

  private final EdgeField field;
  private final LegTuning.Together tuning;
  private final List<FoundLeg> legs;
  private final List<FoundLeg> shown;
  private final double extentPx;

  /**
   * Takes the legs as the pattern was laid.
   *
   * @param extentMm longer side of the box around the part's lands
   */
  LegsTogether(
      Frame frame, LegTuning tuning, double halfShown, List<FoundLeg> legs, double extentMm) {
    this.tuning = tuning.together();
    this.legs = legs;
    List<FoundLeg> inside =
        legs.stream().filter(it -> it.inside(frame.widthPx(), frame.heightPx())).toList();
    this.shown = inside.size() < 2 ? legs : inside;
    double pxPerMm = legs.get(0).place().pxPerMm();
    double lengthPx =
        legs.stream()
            .mapToDouble(it -> Math.max(it.leg().landWidthMm(), it.leg().landHeightMm()) * pxPerMm)
            .average()
            .orElseThrow();
    double factor = Math.min(1, this.tuning.lengthPx().value() / lengthPx);
    this.field = new EdgeField(frame, factor, tuning.faintSlope().value(), halfShown);
    this.extentPx = extentMm * pxPerMm * field.factor() / 2;
  }

  /** The part laid on the shrunk picture. */
  private record Laid(
      double angleRad, double pxPerMmX, double pxPerMmY, double x0, double y0, double marginMm) {

    LandPlace place(LegRequest.Leg leg) {
      double x = leg.xMm() * pxPerMmX;
      double y = leg.yMm() * pxPerMmY;
      double cos = Math.cos(angleRad);
      double sin = Math.sin(angleRad);
      return new LandPlace(
          new PointPx(x0 + cos * x - sin * y, y0 + sin * x + cos * y),
          angleRad,
          pxPerMmX,
          pxPerMmY);
    }

    List<Laid> neighbours(double px, double share, double mm) {
      return List.of(
          new Laid(angleRad, pxPerMmX, pxPerMmY, x0 + px, y0, marginMm),
          new Laid(angleRad, pxPerMmX, pxPerMmY, x0 - px, y0, marginMm),
          new Laid(angleRad, pxPerMmX, pxPerMmY, x0, y0 + px, marginMm),
          new Laid(angleRad, pxPerMmX, pxPerMmY, x0, y0 - px, marginMm),
          new Laid(angleRad + share, pxPerMmX, pxPerMmY, x0, y0, marginMm),
          new Laid(angleRad - share, pxPerMmX, pxPerMmY, x0, y0, marginMm),
          new Laid(angleRad, pxPerMmX * (1 + share), pxPerMmY, x0, y0, marginMm),
          new Laid(angleRad, pxPerMmX / (1 + share), pxPerMmY, x0, y0, marginMm),
          new Laid(angleRad, pxPerMmX, pxPerMmY * (1 + share), x0, y0, marginMm),
          new Laid(angleRad, pxPerMmX, pxPerMmY / (1 + share), x0, y0, marginMm),
          new Laid(angleRad, pxPerMmX, pxPerMmY, x0, y0, marginMm + mm),
          new Laid(angleRad, pxPerMmX, pxPerMmY, x0, y0, Math.max(0, marginMm - mm)));
    }
  }

  /** The legs at their places, copper to copper, each with how well its own outline shows. */
  List<FoundLeg> placed() {
    Laid laid = settled();
    return legs.stream().map(leg -> alone(leg, laid)).toList();
  }

  private Laid settled() {
    LegRequest.Leg first = legs.get(0).leg();
    LandPlace start = legs.get(0).place().scaled(field.factor());
    double cos = Math.cos(start.angleRad()) * start.pxPerMm();
    double sin = Math.sin(start.angleRad()) * start.pxPerMm();
    Laid best =
        new Laid(
            start.angleRad(),
            start.pxPerMm(),
            start.pxPerMm(),
            start.centre().x() - (cos * first.xMm() - sin * first.yMm()),
            start.centre().y() - (sin * first.xMm() + cos * first.yMm()),
            tuning.marginMm().value());
    double score = score(best);
    for (double px = tuning.firstStepPx().value();
        px > tuning.lastStepPx().value();
        px /= tuning.finer().value()) {
      boolean better = true;
      while (better) {
        better = false;
        for (Laid next : best.neighbours(px, px / extentPx, px / best.pxPerMmX())) {
          double here = score(next);
          if (here > score + 1e-9) {
            score = here;
            best = next;
            better = true;
          }
        }
      }
    }
    return best;
  }

  private double score(Laid laid) {
    double off = (laid.marginMm() - tuning.marginMm().value()) / tuning.marginSpreadMm().value();
    double skew = Math.log(laid.pxPerMmX() / laid.pxPerMmY()) / tuning.skew().value();
    return shown.stream()
            .mapToDouble(leg -> outline(leg, laid.place(leg.leg()), laid.marginMm()))
            .average()
            .orElseThrow()
        - tuning.holds().value() * (off * off + skew * skew);
  }

  private double outline(FoundLeg leg, LandPlace at, double marginMm) {
    Obround shape =
        new Obround(
            leg.leg().landWidthMm() + 2 * marginMm, leg.leg().landHeightMm() + 2 * marginMm);
    return field.outline(shape, at);
  }

  /** One leg moved to where its own outline fits better, against a price for leaving the part's. */
  private FoundLeg alone(FoundLeg leg, Laid laid) {
    LandPlace start = laid.place(leg.leg());
    LandPlace best = start;
    double score = outline(leg, start, laid.marginMm());
    double spread = tuning.ownSpreadMm().value() * start.pxPerMm();
    for (double px = spread; px > tuning.lastStepPx().value(); px /= tuning.finer().value()) {
      for (int[] way : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
        LandPlace next = best.moved(px * way[0], px * way[1]);
        double far = next.centre().distanceTo(start.centre()) / spread;
        double here = outline(leg, next, laid.marginMm()) - tuning.holds().value() * far * far;
        if (here > score + 1e-9) {
          score = here;
          best = next;
        }
      }
    }
    return new FoundLeg(
        leg.leg(),
        leg.number(),
        best.scaled(1 / field.factor()),
        outline(leg, best, laid.marginMm()));
  }
}
