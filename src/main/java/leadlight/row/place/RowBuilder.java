package leadlight.row.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.model.BodySide;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.row.Lead;
import leadlight.model.row.RowCandidate;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.row.find.RowFit;
import leadlight.row.strip.Lattice;
import leadlight.row.strip.Strip;
import leadlight.row.strip.Zone;
import leadlight.row.tuning.RowTuning;
import leadlight.vision.Pyramid;

/** From a fitted row to the leads: body side, numbering, toes. */
public final class RowBuilder {

  private static final int FINE = 32;

  /** Where the leads' middles may lie about a fitted lattice: anywhere. */
  private static final double ANYWHERE = 0.5;

  /** The same where each half pitch has its own candidate: near. */
  private static final double NEAR = 0.2;

  private final RowTuning tuning;
  private final RowSpec spec;
  private final Lattice lattice;
  private final Optional<BodySide> told;

  /**
   * @param told where the body lies in the photo, if a person said so; then no cue is asked
   */
  public RowBuilder(RowTuning tuning, RowSpec spec, Lattice lattice, Optional<BodySide> told) {
    this.tuning = tuning;
    this.spec = spec;
    this.lattice = lattice;
    this.told = told;
  }

  /** Chance that the body lies on the strip's upper side. */
  private double upper(RowFit fit) {
    return told.flatMap(side -> fit.upper(side, lattice))
        .map(above -> above ? 1.0 : 0.0)
        .orElseGet(() -> BodyCueMeter.of(fit, lattice).upper(tuning.bodyCues()));
  }

  /** The sides on which the body may lie: whether it is the strip's upper one. */
  public List<Boolean> sides(RowFit fit) {
    return told.flatMap(side -> fit.upper(side, lattice))
        .map(List::of)
        .orElseGet(() -> List.of(true, false));
  }

  public RowOutcome build(Pyramid photo, RowFit fit, List<RowCandidate> considered) {
    double upper = upper(fit);
    if (Math.max(upper, 1 - upper) < tuning.acceptance().leastBodySide()) {
      return new RowOutcome.NotFound(new NoteOfRow.BodySideUnknown(), considered);
    }
    double pitchPx = pitchPx(fit);
    Located located = located(photo, fit, upper >= 0.5, pitchPx, ANYWHERE);
    if (located.refiner.axisSpread() > tuning.acceptance().mostAxisSpread()) {
      return new RowOutcome.NotFound(new NoteOfRow.MiddlesUnknown(), considered);
    }
    double confidence = Math.max(upper, 1 - upper) * Math.max(0, Math.min(1, fit.score()));
    return found(located, pitchPx, confidence, considered);
  }

  /** The row with its body on a given side, whatever the cues say. */
  public RowOutcome.Found build(
      Pyramid photo, RowFit fit, boolean bodyAbove, List<RowCandidate> considered) {
    double upper = upper(fit);
    double pitchPx = pitchPx(fit);
    double confidence = (bodyAbove ? upper : 1 - upper) * Math.max(0, Math.min(1, fit.score()));
    return found(located(photo, fit, bodyAbove, pitchPx, NEAR), pitchPx, confidence, considered);
  }

  private double pitchPx(RowFit fit) {
    return Strip.pitchPx(fit.uvToPhoto(), lattice.span() / 2, 0);
  }

  /** Turned so that the body is above, and centred on the leads. */
  private Located located(
      Pyramid photo, RowFit fit, boolean bodyAbove, double pitchPx, double axisReach) {
    Homography map = fit.uvToPhoto();
    Zone zone = fit.zone();
    if (!bodyAbove) {
      map = map.after(new Homography(-1, 0, lattice.span(), 0, -1, 0, 0, 0, 1));
      zone = new Zone(-zone.to(), -zone.from(), zone.lock());
    }
    Located located = locate(photo, map, zone, pitchPx, axisReach);
    if (Math.abs(located.refiner.axis()) > tuning.spread().latticeOff()) {
      map = map.after(new Homography(1, 0, located.refiner.axis(), 0, 1, 0, 0, 0, 1));
      located = locate(photo, map, zone, pitchPx, axisReach);
    }
    return located;
  }

  private record Located(Strip strip, ToesAndHeels ends, LeadRefiner refiner) {}

  private Located locate(
      Pyramid photo, Homography map, Zone zone, double pitchPx, double axisReach) {
    double vTo = zone.to() + tuning.toe().beyondZone() + 0.5;
    Strip strip = Strip.of(photo, map, -2, lattice.span() + 2, zone.from() - 1.5, vTo, FINE);
    ToesAndHeels ends = ToesAndHeels.of(strip, lattice, zone, spec.pitchMm(), tuning.toe());
    LeadRefiner refiner =
        new LeadRefiner(
            strip,
            lattice,
            ends,
            tuning.spread(),
            pitchPx,
            axisReach,
            tuning.acceptance().mostAxisSpread());
    return new Located(strip, ends, refiner);
  }

  private RowOutcome.Found found(
      Located located, double pitchPx, double confidence, List<RowCandidate> considered) {
    Strip strip = located.strip;
    ToesAndHeels ends = located.ends;
    LeadRefiner refiner = located.refiner;
    int n = spec.leads();
    Homography map = strip.uvToPhoto();
    List<Lead> leads = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int k = spec.pin1Reversed() ? n - 1 - i : i;
      double u = lattice.u()[k];
      LeadRefiner.Place place = refiner.place(k);
      leads.add(
          new Lead(
              i + 1,
              map.map(u + place.du(), ends.toe() + place.dv()),
              map.map(u + place.du(), ends.heel()),
              map.map(u, ends.landToe()),
              map.map(u, ends.landHeel()),
              place.match(),
              place.uAcross() * pitchPx,
              place.uAlong() * pitchPx));
    }
    PointPx first = leads.get(0).toePx();
    PointPx last = leads.get(n - 1).toePx();
    PointPx heel = map.map(lattice.span() / 2, ends.heel());
    PointPx toe = map.map(lattice.span() / 2, ends.toe());
    double f = 1 / spec.pitchMm();
    Homography mmToUv =
        spec.pin1Reversed()
            ? new Homography(-f, 0, lattice.span(), 0, f, 0, 0, 0, 1)
            : new Homography(f, 0, 0, 0, f, 0, 0, 0, 1);
    return new RowOutcome.Found(
        map.after(mmToUv),
        leads,
        first.distanceTo(last) / lattice.span(),
        Math.atan2(last.y() - first.y(), last.x() - first.x()),
        first.distanceTo(last) / spec.spanMm(),
        BodySide.towards(heel.x() - toe.x(), heel.y() - toe.y()),
        confidence,
        0,
        considered);
  }
}
