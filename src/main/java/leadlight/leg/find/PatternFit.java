package leadlight.leg.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import leadlight.model.PointPx;
import leadlight.vision.Frame;

/** Lays the pattern of a part's legs over outlines that were found: every pair of them is tried. */
final class PatternFit {

  private final LegTuning tuning;
  private final LegPattern pattern;
  private final EdgeField field;
  private final double leastPxPerMm;
  private final double mostPxPerMm;

  PatternFit(Frame frame, LegTuning tuning, LegPattern pattern, double halfShown) {
    this.tuning = tuning;
    this.pattern = pattern;
    double scale = Math.max(frame.widthPx(), frame.heightPx()) / pattern.extentMm();
    this.leastPxPerMm = tuning.leastScale().value() * scale;
    this.mostPxPerMm = tuning.mostScale().value() * scale;
    Obround land = pattern.shapes().get(0);
    double lengthPx = Math.max(land.widthMm(), land.heightMm()) * scale;
    double factor = Math.min(1, tuning.searchLengthPx().value() * 1.5 / lengthPx);
    this.field = new EdgeField(frame, factor, tuning.faintSlope().value(), halfShown);
  }

  /** The pattern laid somewhere, with how well its outlines fit; places in the photo's pixels. */
  private record Laid(double angleRad, double pxPerMm, double x0, double y0, double score) {

    PointPx middle(LegRequest.Leg leg) {
      double cos = pxPerMm * Math.cos(angleRad);
      double sin = pxPerMm * Math.sin(angleRad);
      return new PointPx(
          x0 + cos * leg.xMm() - sin * leg.yMm(), y0 + sin * leg.xMm() + cos * leg.yMm());
    }

    LandPlace place(LegRequest.Leg leg) {
      return new LandPlace(middle(leg), angleRad, pxPerMm, pxPerMm);
    }

    Laid scored(double by) {
      return new Laid(angleRad, pxPerMm, x0, y0, by);
    }

    /** Shifted by pixels, turned and scaled by a share about the middle of the pattern's frame. */
    List<Laid> neighbours(double px, double share) {
      return List.of(
          new Laid(angleRad, pxPerMm, x0 + px, y0, 0),
          new Laid(angleRad, pxPerMm, x0 - px, y0, 0),
          new Laid(angleRad, pxPerMm, x0, y0 + px, 0),
          new Laid(angleRad, pxPerMm, x0, y0 - px, 0),
          new Laid(angleRad + share, pxPerMm, x0, y0, 0),
          new Laid(angleRad - share, pxPerMm, x0, y0, 0),
          new Laid(angleRad, pxPerMm * (1 + share), x0, y0, 0),
          new Laid(angleRad, pxPerMm / (1 + share), x0, y0, 0));
    }

    /** Whether another lies on the same lands with other numbers. */
    boolean turnedFrom(Laid other) {
      return Math.cos(angleRad - other.angleRad) < 0;
    }
  }

  /**
   * The legs where the pattern fits best; none if it fits nowhere. Where it fits almost as well
   * turned half round, both, without numbers.
   */
  List<List<FoundLeg>> fit(List<LandSearch.Hit> hits, LegRequest.LeadsAt leadsAt) {
    List<Laid> laid =
        IntStream.range(0, hits.size())
            .parallel()
            .mapToObj(i -> laidOver(hits, i))
            .toList()
            .stream()
            .flatMap(List::stream)
            .filter(it -> agrees(it, leadsAt))
            .sorted(Comparator.comparingDouble(it -> -it.score()))
            .toList();
    if (laid.isEmpty()) {
      return List.of();
    }
    List<Laid> settled =
        laid.stream()
            .limit(tuning.mostHits())
            .map(this::settled)
            .sorted(Comparator.comparingDouble(it -> -it.score()))
            .toList();
    Laid best = settled.get(0);
    Optional<Laid> turned =
        laid.stream().filter(it -> it.turnedFrom(best)).findFirst().map(this::settled);
    boolean numbered =
        turned.isEmpty() || turned.get().score() < tuning.toldApartTo().value() * best.score();
    return numbered
        ? List.of(legs(best, true))
        : List.of(legs(best, false), legs(turned.get(), false));
  }

  private List<FoundLeg> legs(Laid laid, boolean numbered) {
    return pattern.legs().stream()
        .map(
            leg ->
                new FoundLeg(
                    likest(laid, leg), numbered ? leg.number() : 0, laid.place(leg), laid.score()))
        .toList();
  }

  private static boolean agrees(Laid laid, LegRequest.LeadsAt leadsAt) {
    double cos = Math.cos(laid.angleRad());
    double sin = Math.sin(laid.angleRad());
    double half = Math.sqrt(0.5);
    return switch (leadsAt) {
      case ABOVE -> cos > half;
      case BELOW -> cos < -half;
      case RIGHT -> sin > half;
      case LEFT -> sin < -half;
      case UNKNOWN -> true;
    };
  }

  private List<Laid> laidOver(List<LandSearch.Hit> hits, int first) {
    List<Laid> laid = new ArrayList<>();
    for (int second = 0; second < hits.size(); second++) {
      for (LegRequest.Leg a : pattern.legs()) {
        for (LegRequest.Leg b : pattern.legs()) {
          if (first != second && a.number() < b.number()) {
            laid(hits.get(first), hits.get(second), a, b).ifPresent(laid::add);
          }
        }
      }
    }
    return laid;
  }

  private Optional<Laid> laid(
      LandSearch.Hit first, LandSearch.Hit second, LegRequest.Leg a, LegRequest.Leg b) {
    double px = second.place().centre().x() - first.place().centre().x();
    double py = second.place().centre().y() - first.place().centre().y();
    double mx = b.xMm() - a.xMm();
    double my = b.yMm() - a.yMm();
    double pxPerMm = Math.hypot(px, py) / Math.hypot(mx, my);
    if (pxPerMm < leastPxPerMm || pxPerMm > mostPxPerMm) {
      return Optional.empty();
    }
    double angle = Math.atan2(py, px) - Math.atan2(my, mx);
    double cos = pxPerMm * Math.cos(angle);
    double sin = pxPerMm * Math.sin(angle);
    double x0 = first.place().centre().x() - (cos * a.xMm() - sin * a.yMm());
    double y0 = first.place().centre().y() - (sin * a.xMm() + cos * a.yMm());
    Laid unscored = new Laid(angle, pxPerMm, x0, y0, 0);
    double score = score(unscored);
    return score < tuning.hitFrom().value() / 2
        ? Optional.empty()
        : Optional.of(new Laid(angle, pxPerMm, x0, y0, score));
  }

  /** The pattern moved to where its outlines fit best. */
  private Laid settled(Laid start) {
    Laid best = start;
    double reach = pattern.extentMm() * start.pxPerMm() / 2;
    for (double px = 0.04 * reach; px * field.factor() > 0.4; px /= 1.6) {
      boolean better = true;
      while (better) {
        better = false;
        for (Laid next : best.neighbours(px, px / reach)) {
          double score = score(next);
          if (score > best.score() + 1e-9) {
            best = next.scored(score);
            better = true;
          }
        }
      }
    }
    return best;
  }

  /** Mean over the legs; each may lie a little beside its place. */
  private double score(Laid laid) {
    double sum = 0;
    for (LegRequest.Leg leg : pattern.legs()) {
      double own = score(laid.place(leg), leg.land());
      double best = own;
      for (Obround shape : pattern.shapes()) {
        if (!shape.equals(leg.land())) {
          best = Math.max(best, tuning.otherShape().value() * score(laid.place(leg), shape));
        }
      }
      sum += best;
    }
    return sum / pattern.legs().size();
  }

  private double score(LandPlace place, Obround shape) {
    LandPlace here = place.scaled(field.factor());
    EdgeField.Stencil stencil = field.new Stencil(shape, here, 2);
    double best = 0;
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        best = Math.max(best, stencil.score(here.centre().x() + dx, here.centre().y() + dy));
      }
    }
    return best;
  }

  /** The leg with the land that fits best there: makers give legs of one part other lands. */
  private LegRequest.Leg likest(Laid laid, LegRequest.Leg leg) {
    LegRequest.Leg best = leg;
    double most = score(laid.place(leg), leg.land());
    for (LegRequest.Leg other : pattern.legs()) {
      double score = tuning.otherShape().value() * score(laid.place(leg), other.land());
      if (!other.land().equals(leg.land()) && score > most) {
        most = score;
        best = leg.withLandOf(other);
      }
    }
    return best;
  }
}
