package leadlight.leg.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import leadlight.model.PointPx;
import leadlight.vision.Frame;

/** Looks for outlines of one shape at any place, turn and scale. */
final class LandSearch {

  private final Frame frame;
  private final LegTuning tuning;
  private final double halfShown;

  /**
   * Takes the picture.
   *
   * @param halfShown weight of the better half of an outline
   */
  LandSearch(Frame frame, LegTuning tuning, double halfShown) {
    this.halfShown = halfShown;
    this.frame = frame;
    this.tuning = tuning;
  }

  /**
   * An outline that was found.
   *
   * @param place where, in the photo's pixels
   * @param score how much of it is an edge, 0 to 1
   */
  record Hit(LandPlace place, double score) {

    boolean near(Hit other, double px) {
      return place.centre().distanceTo(other.place.centre()) < px;
    }
  }

  /**
   * The best places, best first, no two within half a land of each other.
   *
   * @param leastPx shortest length of a land in the photo
   * @param mostPx longest
   */
  List<Hit> hits(Obround shape, double leastPx, double mostPx) {
    double lengthMm = Math.max(shape.widthMm(), shape.heightMm());
    List<Hit> all = new ArrayList<>();
    double px = leastPx;
    while (px <= mostPx) {
      double octaveEnd = Math.min(mostPx, px * 2 - 1e-9);
      double factor = Math.min(1, tuning.searchLengthPx().value() / px);
      EdgeField field = new EdgeField(frame, factor, tuning.faintSlope().value(), halfShown);
      List<Double> lengths = new ArrayList<>();
      for (double length = px; length <= octaveEnd; length *= 1 + tuning.scaleStep().value()) {
        lengths.add(length);
      }
      IntStream.range(0, lengths.size())
          .parallel()
          .mapToObj(i -> atScale(field, shape, lengths.get(i) * factor / lengthMm))
          .toList()
          .forEach(all::addAll);
      px *= 2;
    }
    return distinct(all);
  }

  private List<Hit> atScale(EdgeField field, Obround shape, double pxPerMm) {
    boolean round = shape.widthMm() == shape.heightMm();
    double step = tuning.angleStepRad().value();
    int turns = round ? 1 : (int) Math.ceil(Math.PI / step);
    int stride = 2;
    List<Hit> hits = new ArrayList<>();
    for (int turn = 0; turn < turns; turn++) {
      LandPlace turned = new LandPlace(new PointPx(0, 0), turn * step, pxPerMm, pxPerMm);
      EdgeField.Stencil stencil = field.new Stencil(shape, turned, 3);
      for (int y = 0; y < field.height(); y += stride) {
        for (int x = 0; x < field.width(); x += stride) {
          double score = stencil.score(x, y);
          if (score >= tuning.hitFrom().value()) {
            hits.add(new Hit(turned.moved(x, y).scaled(1 / field.factor()), score));
          }
        }
      }
    }
    return distinct(hits);
  }

  /** The best of outlines that are one and the same, best first. */
  List<Hit> distinct(List<Hit> hits) {
    List<Hit> sorted = new ArrayList<>(hits);
    sorted.sort(
        Comparator.comparingDouble((Hit hit) -> -hit.score())
            .thenComparingDouble(hit -> hit.place().centre().y())
            .thenComparingDouble(hit -> hit.place().centre().x()));
    List<Hit> kept = new ArrayList<>();
    for (Hit hit : sorted) {
      double apart = tuning.apartMm().value() * hit.place().pxPerMm();
      if (kept.stream().noneMatch(other -> other.near(hit, apart) && alike(other, hit))) {
        kept.add(hit);
      }
      if (kept.size() == tuning.mostHits()) {
        break;
      }
    }
    return kept;
  }

  /** Whether two outlines are of one size: a hole in its land is another outline. */
  private boolean alike(Hit a, Hit b) {
    double ratio = a.place().pxPerMm() / b.place().pxPerMm();
    double most = 1 + tuning.stretch().value() / 2;
    return ratio < most && ratio > 1 / most;
  }

  /** The place that fits best near one that nearly does. */
  Hit refined(Obround shape, LandPlace start) {
    double lengthPx = Math.max(shape.widthMm(), shape.heightMm()) * start.pxPerMm();
    double factor = Math.min(1, tuning.fineLengthPx().value() / lengthPx);
    EdgeField field = new EdgeField(frame, factor, tuning.faintSlope().value(), halfShown);
    return refined(field, shape, start);
  }

  Hit refined(EdgeField field, Obround shape, LandPlace start) {
    LandPlace best = start.scaled(field.factor());
    double score = field.outline(shape, best);
    double lengthPx = Math.max(shape.widthMm(), shape.heightMm()) * best.pxPerMm();
    for (double step = lengthPx / 12; step > 0.2; step /= 1.6) {
      boolean better = true;
      for (int tries = 0; better && tries < 12; tries++) {
        better = false;
        for (LandPlace next : neighbours(best, step, step / lengthPx)) {
          double here = field.outline(shape, next);
          if (here > score && plausible(next, start.scaled(field.factor()))) {
            score = here;
            best = next;
            better = true;
          }
        }
      }
    }
    return new Hit(best.scaled(1 / field.factor()), score);
  }

  private boolean plausible(LandPlace place, LandPlace start) {
    double stretch = place.pxPerMm() / start.pxPerMm();
    double skew = place.pxPerMmX() / place.pxPerMmY();
    double most = 1 + tuning.stretch().value();
    return stretch < most && stretch > 1 / most && skew < most && skew > 1 / most;
  }

  private static List<LandPlace> neighbours(LandPlace at, double px, double share) {
    return List.of(
        at.moved(px, 0),
        at.moved(-px, 0),
        at.moved(0, px),
        at.moved(0, -px),
        at.turned(share),
        at.turned(-share),
        at.stretched(1 + share, 1),
        at.stretched(1 / (1 + share), 1),
        at.stretched(1, 1 + share),
        at.stretched(1, 1 / (1 + share)),
        at.stretched(1 + share, 1 + share),
        at.stretched(1 / (1 + share), 1 / (1 + share)));
  }
}
