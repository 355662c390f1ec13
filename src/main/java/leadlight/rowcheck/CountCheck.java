package leadlight.rowcheck;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import leadlight.joint.MetalPlaces;
import leadlight.model.PointPx;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.row.LandSpec;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.vision.Frame;

/**
 * Whether an evenly pitched row has as many leads as were said: the next places beyond either end
 * must not look like the row's metal, and its end places must. A wrong number would let an end
 * joint vanish, or name every pin one off.
 */
public final class CountCheck {

  private final RowSpec spec;
  private final RowLimits.Ends limits = RowLimits.builtIn().ends();

  public CountCheck(RowSpec spec) {
    this.spec = spec;
  }

  /** The row, counted from its true first lead; or that another number of leads shows. */
  public RowOutcome checked(Photo photo, RowOutcome.Found row) {
    if (!spec.even()) {
      return row;
    }
    int beyond = limits.mostBeyond();
    if (!whole(photo, row)) {
      return new RowOutcome.NotFound(new NoteOfRow.RowCropped(spec.leads()), row.considered());
    }
    RowOutcome.Found wide = widened(row, beyond);
    MetalPlaces metal = MetalPlaces.of(photo.frame(), widened(beyond), wide, beyond);
    List<Boolean> shown = wide.leads().stream().map(lead -> inside(photo, lead)).toList();
    Ends ends = new Ends(metal, shown, beyond);
    int moved = ends.moved();
    if (moved != 0) {
      return MovedRow.byPins(row, moved);
    }
    return ends.shown() == spec.leads()
        ? row
        : new RowOutcome.NotFound(
            new NoteOfRow.OtherCount(spec.leads(), ends.shown()), row.considered());
  }

  /** What the ends of a row show. */
  private final class Ends {

    private final MetalPlaces metal;
    private final List<Boolean> inPicture;
    private final int moreBefore;
    private final int moreBehind;
    private final int lessBefore;
    private final int lessBehind;

    Ends(MetalPlaces metal, List<Boolean> inPicture, int beyond) {
      this.metal = metal;
      this.inPicture = inPicture;
      int last = inPicture.size() - 1 - beyond;
      this.moreBefore = more(beyond - 1, -1);
      this.moreBehind = more(last + 1, 1);
      this.lessBefore = moreBefore > 0 ? 0 : less(beyond, 1);
      this.lessBehind = moreBehind > 0 ? 0 : less(last, -1);
    }

    /** Leads beyond an end; none if they run out of the picture, which cuts off a longer row. */
    private int more(int from, int step) {
      int count = 0;
      for (int i = from; i >= 0 && i < inPicture.size(); i += step) {
        if (!inPicture.get(i)) {
          return 0;
        }
        boolean lead =
            metal.surely().get(i) >= limits.leadFrom()
                && Math.abs(metal.runsOn().get(i)) <= limits.runsOnTo();
        if (!lead) {
          break;
        }
        count++;
      }
      return count;
    }

    /** Places at an end that hold neither lead nor land. */
    private int less(int from, int step) {
      int count = 0;
      while (count < spec.leads() / 2
          && metal.perhaps().get(from + count * step) <= limits.boardTo()) {
        count++;
      }
      return count;
    }

    int shown() {
      return spec.leads() + moreBefore + moreBehind - lessBefore - lessBehind;
    }

    /** Leads by which the row is counted too early (more than 0) or too late, if only that. */
    int moved() {
      if (moreBehind > 0 && moreBehind == lessBefore) {
        return moreBehind;
      }
      return moreBefore > 0 && moreBefore == lessBehind ? -moreBefore : 0;
    }
  }

  /** Whether the end lands lie in the picture with their full width. */
  private boolean whole(Photo photo, RowOutcome.Found row) {
    int last = row.leads().size() - 1;
    return whole(photo, row.leads().get(0), row.leads().get(1))
        && whole(photo, row.leads().get(last), row.leads().get(last - 1));
  }

  /** The land's outer edge, away from the neighbour. */
  private boolean whole(Photo photo, Lead end, Lead neighbour) {
    return inside(photo.frame(), beside(end.landToePx(), neighbour.landToePx()))
        && inside(photo.frame(), beside(end.landHeelPx(), neighbour.landHeelPx()));
  }

  private PointPx beside(PointPx at, PointPx neighbour) {
    double by = limits.halfLandPitch();
    return new PointPx(
        at.x() + by * (at.x() - neighbour.x()), at.y() + by * (at.y() - neighbour.y()));
  }

  private static boolean inside(Photo photo, Lead lead) {
    return inside(photo.frame(), lead.toePx()) && inside(photo.frame(), lead.heelPx());
  }

  private static boolean inside(Frame frame, PointPx p) {
    return p.x() >= 0 && p.y() >= 0 && p.x() < frame.widthPx() && p.y() < frame.heightPx();
  }

  private RowSpec widened(int beyond) {
    OptionalDouble width = spec.lands().get(0).widthMm();
    List<LandSpec> lands =
        IntStream.rangeClosed(1, spec.leads() + 2 * beyond)
            .mapToObj(
                pin ->
                    new LandSpec(
                        pin,
                        Integer.toString(pin),
                        (pin - 1) * spec.pitchMm(),
                        width,
                        OptionalDouble.empty()))
            .toList();
    return new RowSpec(
        spec.connectorId(), lands, spec.pitchMm(), spec.leadWidthMm(), spec.pin1Reversed());
  }

  private static RowOutcome.Found widened(RowOutcome.Found row, int beyond) {
    List<Lead> leads = new ArrayList<>();
    for (int i = -beyond; i < row.leads().size() + beyond; i++) {
      leads.add(MovedRow.renumbered(leads.size() + 1, MovedRow.place(row, i)));
    }
    return MovedRow.with(row, row.mmToPx(), leads);
  }
}
