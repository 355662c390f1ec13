package leadlight.joint.place;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import leadlight.joint.cut.FootBands;
import leadlight.joint.cut.GeometryFinder;
import leadlight.joint.cut.JointPatch;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.Signals;
import leadlight.joint.cut.TypicalJoint;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.model.row.RowSpec;
import leadlight.numeric.Quantiles;

/**
 * Says where each lead is, how surely, and how far it stands off its land on the board. The joints
 * stay cut as they were found: what judges them has learnt from such cuts.
 *
 * <p>A lead that {@link PlaceChances} finds near the row's place keeps that, since it is finer.
 * Then the row as a whole is put right by what its median joint shows ({@link RowShape}). On the
 * board, two things are no shift of a lead: an offset that all leads share, as far as a tilted view
 * of tops that lie above their lands explains it; and one that grows evenly along the row, since
 * the leads of one body keep their pitch and it is the fitted lands that are stretched.
 */
public final class LeadMeter {

  private final RowSpec spec;
  private final PlacementModel model;
  private final List<LevelledPatch> joints;
  private final RowGeometry geometry;
  private final FootBands bands;

  public LeadMeter(
      RowSpec spec, PlacementModel model, List<LevelledPatch> joints, RowGeometry geometry) {
    this.spec = spec;
    this.model = model;
    this.joints = joints;
    this.bands = FootBands.of(geometry);
    List<JointPatch> patches = joints.stream().map(LevelledPatch::patch).toList();
    this.geometry = new GeometryFinder(spec, patches).reread(geometry, bands);
  }

  /** Places of all leads, given where the row's finder has them, and the row's typical joint. */
  public PlacedRow measure(List<Lead> asFound, TypicalJoint typical) {
    List<Spot> spots = spots(asFound);
    double common = median(spots, Spot::toe);
    double stretch = stretch(spots, common);
    Signals row = RowShape.of(typical, geometry, bands, median(spots, Spot::foundToe));
    row.put("place_px", median(spots, spot -> spot.joint.pitchPx()));
    row.put("place_typical_u_row", median(spots, Spot::uFound));
    row.put("place_typical_u_lead", median(spots, Spot::uAlong));
    row.put("place_typical_match", median(spots, spot -> spot.found.match()));
    row.put("place_by_row", model.alongRow().of(row));
    row.put("place_by_lead", model.alongLead().of(row));
    List<PlacedLead> leads = new ArrayList<>();
    double middle = landAt(spots.size() / 2);
    for (int i = 0; i < spots.size(); i++) {
      double fitted = clamp(common) + stretch * (landAt(i) - middle);
      leads.add(placed(spots.get(i), row, common, fitted));
    }
    return new PlacedRow(geometry, leads);
  }

  private static double median(List<Spot> spots, ToDoubleFunction<Spot> value) {
    return Quantiles.middle(spots.stream().mapToDouble(value).toArray());
  }

  private double clamp(double common) {
    double most = model.shifts().parallax().value();
    return Math.max(-most, Math.min(most, common));
  }

  private double landAt(int index) {
    return spec.lands().get(index).uMm() / spec.pitchMm();
  }

  /** A lead's place against its land as the photo shows it, pitches. */
  private record Spot(
      JointPatch joint,
      Lead found,
      double foundToe,
      double foundHeel,
      PlaceChances.Place place,
      boolean asFound) {

    double toe() {
      return asFound ? foundToe : place.toe();
    }

    double end() {
      return asFound ? foundHeel : place.end();
    }

    double uFound() {
      return found.uAcrossPx() / joint.pitchPx();
    }

    double uAlong() {
      return found.uAlongPx() / joint.pitchPx();
    }
  }

  private List<Spot> spots(List<Lead> asFound) {
    double[] toes = new double[asFound.size()];
    double[] heels = new double[toes.length];
    for (int i = 0; i < toes.length; i++) {
      JointPatch joint = joints.get(i).patch();
      toes[i] = joint.offset() + across(joint, joint.lead().toePx(), asFound.get(i).toePx());
      heels[i] = joint.heelOffset() + across(joint, joint.lead().heelPx(), asFound.get(i).heelPx());
    }
    FootScores scores = new FootScores(joints, bands, geometry.leadHalf());
    List<PlaceChances.Place> places =
        new PlaceChances(model.chances(), bands, geometry.leadHalf(), Quantiles.middle(toes))
            .places(joints.parallelStream().map(scores::of).toList());
    return IntStream.range(0, toes.length)
        .mapToObj(i -> spot(i, asFound.get(i), toes[i], heels[i], places.get(i)))
        .toList();
  }

  private Spot spot(int i, Lead found, double toe, double heel, PlaceChances.Place place) {
    PlacementModel.Shifts limits = model.shifts();
    boolean same =
        Math.abs(place.toe() - toe) < limits.sameFrom().value()
            && Math.abs(place.toe() - place.end()) < limits.sameTurn().value()
            && place.uToe() < limits.sameU().value();
    JointPatch joint = joints.get(i).patch();
    return new Spot(joint, found, toe, heel, place, same || known(joint, found));
  }

  /** True if the lead was given more surely than any photo tells: nothing is put right then. */
  private boolean known(JointPatch joint, Lead found) {
    return Math.hypot(found.uAcrossPx(), found.uAlongPx())
        < model.shifts().knownU().value() * joint.pitchPx();
  }

  /** Pitches along the row from one point to another. */
  private static double across(JointPatch joint, PointPx from, PointPx to) {
    return ((to.x() - from.x()) * joint.acrossX() + (to.y() - from.y()) * joint.acrossY())
        / (joint.pitchPx() * joint.pitchPx());
  }

  /**
   * Growth of the offsets along the row, pitches a pitch: the median of the slopes of far pairs
   * (Theil 1950, Sen 1968), so that displaced leads do not matter.
   */
  private double stretch(List<Spot> spots, double common) {
    int apart = Math.max(1, spots.size() / 3);
    double displaced = model.shifts().displacedFrom().value();
    List<Double> slopes = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      for (int k = i + apart; k < spots.size(); k++) {
        double a = spots.get(i).toe();
        double b = spots.get(k).toe();
        if (Math.max(Math.abs(a - common), Math.abs(b - common)) < displaced) {
          slopes.add((b - a) / (landAt(k) - landAt(i)));
        }
      }
    }
    return slopes.isEmpty()
        ? 0
        : Quantiles.middle(slopes.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private PlacedLead placed(Spot spot, Signals row, double common, double fitted) {
    Signals signals = signals(spot, row, common);
    boolean known = known(spot.joint, spot.found);
    double ahead = known ? 0 : -row.get("place_by_lead");
    Lead lead = known ? spot.found : lead(spot, signals, -row.get("place_by_row"), ahead);
    return new PlacedLead(
        lead,
        new PlacedLead.Shift(spot.toe() - fitted, uShift(spot, spot.place.uToe())),
        new PlacedLead.Shift(spot.end() - fitted, uShift(spot, spot.place.uEnd())),
        ahead,
        -bands.end(),
        signals);
  }

  /** The lead in the photo, with what puts the row right, pitches along the row and ahead. */
  private Lead lead(Spot spot, Signals signals, double across, double ahead) {
    double pitchPx = spot.joint.pitchPx();
    Lead cut = spot.joint.lead();
    double heel =
        spot.asFound
            ? spot.foundHeel
            : spot.toe() + (spot.end() - spot.toe()) * spot.joint.heelY() / bands.end();
    return new Lead(
        cut.pin(),
        moved(cut.toePx(), spot.joint, spot.toe() + across - spot.joint.offset(), ahead),
        moved(cut.heelPx(), spot.joint, heel + across - spot.joint.heelOffset(), 0),
        cut.landToePx(),
        cut.landHeelPx(),
        cut.match(),
        Math.exp(model.uAlongRow().of(signals)) * pitchPx,
        Math.exp(model.uAlongLead().of(signals)) * pitchPx);
  }

  private double uShift(Spot spot, double uPlace) {
    double own = Math.hypot(uPlace, model.shifts().commonU().value());
    double seen = spot.asFound ? own : Math.hypot(own, model.shifts().movedU().value());
    return spot.uFound() < model.shifts().unsureFrom().value()
        ? seen
        : Math.hypot(seen, spot.uFound());
  }

  /** A point moved in the joint's own frame, pitches across and along. */
  private static PointPx moved(PointPx from, JointPatch joint, double across, double along) {
    PointPx toe = joint.lead().landToePx();
    PointPx heel = joint.lead().landHeelPx();
    double perPitch = along * joint.pitchPx() / toe.distanceTo(heel);
    return new PointPx(
        from.x() + across * joint.acrossX() + perPitch * (toe.x() - heel.x()),
        from.y() + across * joint.acrossY() + perPitch * (toe.y() - heel.y()));
  }

  /** What the row shows, and this lead. */
  private static Signals signals(Spot spot, Signals row, double common) {
    Signals all = new Signals();
    row.asMap().forEach(all::put);
    all.put("place_match", spot.found.match());
    all.put("place_u_found", spot.uFound());
    all.put("place_u_toe", spot.place.uToe());
    all.put("place_u_end", spot.place.uEnd());
    all.put("place_off_row", Math.abs(spot.toe() - common));
    all.put("place_as_found", spot.asFound ? 1 : 0);
    all.put("place_moved", Math.abs(spot.toe() - spot.foundToe));
    all.put("place_turn", Math.abs(spot.toe() - spot.end()));
    all.put(
        "place_cues_apart",
        Math.abs(row.get("place_toe_middle") - row.get("place_toe_middle_light")));
    all.put("place_by_row_size", Math.abs(row.get("place_by_row")));
    all.put("place_middle_off", Math.abs(row.get("place_toe_middle")));
    all.put("place_lands_off", Math.abs(row.get("place_land_middle") - row.get("place_offset")));
    return all;
  }
}
