package leadlight.leg.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leadlight.model.BoardSide;
import leadlight.model.PointPx;
import leadlight.vision.Frame;

/** Finds the lands of anchor legs: as a pattern where their places are known, else one by one. */
public final class LegFinder {

  private final Frame frame;
  private final LegTuning tuning;
  private final double halfShown;
  private final LandSearch search;

  public LegFinder(Frame frame, LegTuning tuning, BoardSide side) {
    this.frame = frame;
    this.tuning = tuning;
    this.halfShown = side == BoardSide.COMPONENT ? tuning.halfShown().value() : 0;
    this.search = new LandSearch(frame, tuning, halfShown);
  }

  /** The legs in the order of their numbers, or of their places where they have none. */
  public List<FoundLeg> find(LegRequest request) {
    return request.pattern() ? pattern(request) : alike(request.legs().get(0));
  }

  private int bigPx() {
    return Math.max(frame.widthPx(), frame.heightPx());
  }

  /** All lands of one shape and scale. */
  private List<FoundLeg> alike(LegRequest.Leg leg) {
    List<LandSearch.Hit> hits =
        search.hits(
            leg.land(),
            tuning.leastOfPicture().value() * bigPx(),
            tuning.mostOfPicture().value() * bigPx());
    List<LandSearch.Hit> refined =
        hits.stream()
            .limit(tuning.mostLegs())
            .map(hit -> search.refined(leg.land(), hit.place()))
            .filter(hit -> hit.score() >= tuning.foundFrom().value())
            .toList();
    List<FoundLeg> found = new ArrayList<>();
    for (LandSearch.Hit hit : search.distinct(ofOneScale(refined))) {
      found.add(new FoundLeg(leg, leg.number(), copper(leg, hit.place()), hit.score()));
    }
    if (leg.number() > 0) {
      return found.stream().limit(1).toList();
    }
    found.sort(
        Comparator.<FoundLeg>comparingDouble(it -> Math.rint(it.place().centre().y() / 50))
            .thenComparingDouble(it -> it.place().centre().x()));
    return found;
  }

  /** The outline that shows is the mask's; the copper lies a margin inside. */
  private LandPlace copper(LegRequest.Leg leg, LandPlace mask) {
    double margin = 2 * tuning.together().marginMm().value();
    return mask.stretched(
        leg.landWidthMm() / (leg.landWidthMm() + margin),
        leg.landHeightMm() / (leg.landHeightMm() + margin));
  }

  /** The scale of the best outline, or of a larger one around it that is almost as good. */
  private List<LandSearch.Hit> ofOneScale(List<LandSearch.Hit> hits) {
    if (hits.isEmpty()) {
      return List.of();
    }
    double best = hits.stream().mapToDouble(LandSearch.Hit::score).max().orElseThrow();
    LandSearch.Hit leading =
        hits.stream()
            .filter(hit -> hit.score() >= tuning.likeBest().value() * best)
            .max(Comparator.comparingDouble(hit -> hit.place().pxPerMm()))
            .orElseThrow();
    double most = 1 + tuning.stretch().value() / 2;
    return hits.stream()
        .filter(
            hit -> {
              double ratio = hit.place().pxPerMm() / leading.place().pxPerMm();
              return ratio < most && ratio > 1 / most;
            })
        .toList();
  }

  private List<FoundLeg> pattern(LegRequest request) {
    LegPattern pattern = LegPattern.of(request);
    double scale = bigPx() / pattern.extentMm();
    List<LandSearch.Hit> hits = new ArrayList<>();
    for (Obround shape : pattern.shapes()) {
      double lengthMm = Math.max(shape.widthMm(), shape.heightMm());
      hits.addAll(
          search.hits(
              shape,
              tuning.leastScale().value() * scale * lengthMm,
              tuning.mostScale().value() * scale * lengthMm));
    }
    List<List<FoundLeg>> laid =
        new PatternFit(frame, tuning, pattern, halfShown).fit(hits, request.leadsAt());
    if (laid.isEmpty()) {
      return List.of();
    }
    List<FoundLeg> refined = laid.get(0).stream().map(this::refined).toList();
    if (match(refined) < tuning.foundFrom().value()) {
      return List.of();
    }
    List<FoundLeg> together =
        laid.stream()
            .map(legs -> new LegsTogether(frame, tuning, halfShown, legs, pattern.extentMm()))
            .map(LegsTogether::placed)
            .max(Comparator.comparingDouble(this::shown))
            .orElseThrow();
    return shown(together) < tuning.together().least().value() * shown(refined)
        ? held(laid.get(0), refined)
        : together;
  }

  /** Mean of the legs that lie in the picture. */
  private double shown(List<FoundLeg> legs) {
    return legs.stream()
        .filter(leg -> leg.inside(frame.widthPx(), frame.heightPx()))
        .mapToDouble(FoundLeg::match)
        .average()
        .orElse(0);
  }

  private static double match(List<FoundLeg> legs) {
    return legs.stream().mapToDouble(FoundLeg::match).average().orElse(0);
  }

  /** Legs whose own outline hardly shows are placed by those whose does. */
  private List<FoundLeg> held(List<FoundLeg> laid, List<FoundLeg> refined) {
    List<FoundLeg> well =
        refined.stream().filter(it -> it.match() >= tuning.wellFrom().value()).toList();
    if (well.isEmpty()) {
      return laid;
    }
    Similarity fit = Similarity.of(well, laid);
    List<FoundLeg> held = new ArrayList<>();
    for (FoundLeg leg : refined) {
      held.add(
          leg.match() >= tuning.wellFrom().value()
              ? leg
              : new FoundLeg(leg.leg(), leg.number(), fit.place(leg.leg()), leg.match()));
    }
    return held;
  }

  private FoundLeg refined(FoundLeg leg) {
    LandSearch.Hit hit = search.refined(leg.leg().land(), leg.place());
    return new FoundLeg(leg.leg(), leg.number(), hit.place(), hit.score());
  }

  /**
   * Scale, turn and shift from a part to the photo that bring the legs nearest to where they were
   * found, by least squares (Umeyama 1991, IEEE Transactions on Pattern Analysis 13(4), without
   * mirroring).
   */
  private static final class Similarity {

    private final double cos;
    private final double sin;
    private final double x0;
    private final double y0;
    private final double pxPerMmX;
    private final double pxPerMmY;

    private Similarity(
        double cos, double sin, double x0, double y0, double pxPerMmX, double pxPerMmY) {
      this.cos = cos;
      this.sin = sin;
      this.x0 = x0;
      this.y0 = y0;
      this.pxPerMmX = pxPerMmX;
      this.pxPerMmY = pxPerMmY;
    }

    /**
     * The map of some legs.
     *
     * @param legs legs that were found; a single one gives its place alone, with turn and scale of
     *     the pattern
     * @param pattern all legs as the pattern was laid
     */
    static Similarity of(List<FoundLeg> legs, List<FoundLeg> pattern) {
      double angle = pattern.get(0).place().angleRad();
      double scale = pattern.get(0).place().pxPerMm();
      double mx = legs.stream().mapToDouble(it -> it.leg().xMm()).average().orElseThrow();
      double my = legs.stream().mapToDouble(it -> it.leg().yMm()).average().orElseThrow();
      double px = legs.stream().mapToDouble(it -> it.place().centre().x()).average().orElseThrow();
      double py = legs.stream().mapToDouble(it -> it.place().centre().y()).average().orElseThrow();
      double along = 0;
      double across = 0;
      double spread = 0;
      for (FoundLeg leg : legs) {
        double x = leg.leg().xMm() - mx;
        double y = leg.leg().yMm() - my;
        double u = leg.place().centre().x() - px;
        double v = leg.place().centre().y() - py;
        along += x * u + y * v;
        across += x * v - y * u;
        spread += x * x + y * y;
      }
      double cos = spread == 0 ? scale * Math.cos(angle) : along / spread;
      double sin = spread == 0 ? scale * Math.sin(angle) : across / spread;
      return new Similarity(
          cos,
          sin,
          px - (cos * mx - sin * my),
          py - (sin * mx + cos * my),
          legs.stream().mapToDouble(it -> it.place().pxPerMmX()).average().orElseThrow(),
          legs.stream().mapToDouble(it -> it.place().pxPerMmY()).average().orElseThrow());
    }

    LandPlace place(LegRequest.Leg leg) {
      return new LandPlace(
          new PointPx(
              x0 + cos * leg.xMm() - sin * leg.yMm(), y0 + sin * leg.xMm() + cos * leg.yMm()),
          Math.atan2(sin, cos),
          pxPerMmX,
          pxPerMmY);
    }
  }
}
