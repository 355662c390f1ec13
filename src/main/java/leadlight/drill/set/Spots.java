package leadlight.drill.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.drill.pool.Known;
import leadlight.drill.pool.ToolSaid;
import leadlight.drill.set.PracticeSet.Mark;
import leadlight.drill.set.PracticeSet.Spot;
import leadlight.model.FindingKind;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;

/** The joints of one picture, ready to be asked for. */
public final class Spots {

  private final String file;
  private final double pitchMm;
  private final RowOutcome.Found place;
  private final Window window;

  /** Takes the photo's name, its row, and what of it is shown. */
  public Spots(String file, double pitchMm, RowOutcome.Found place, Window window) {
    this.file = file;
    this.pitchMm = pitchMm;
    this.place = place;
    this.window = window;
  }

  public Spot of(int pin, Optional<Known> known, Optional<ToolSaid> tool) {
    Lead lead = place.leads().get(pin - 1);
    List<FindingKind> kinds = deciding(known, tool);
    Marks marks = new Marks(window, pitchMm, lead, place.leads().size());
    return new Spot(
        pin,
        file + " pin " + pin,
        Math.round(window.xPx(pin)),
        Math.round(window.px(pitchMm) / 2),
        known,
        tool,
        marks.of(kinds, bridgeTo(known, tool)));
  }

  /** What is truly wrong; where nothing is known to be, what the tool names first. */
  private static List<FindingKind> deciding(Optional<Known> known, Optional<ToolSaid> tool) {
    List<FindingKind> truth = known.map(Known::findings).orElse(List.of());
    List<FindingKind> told = tool.map(ToolSaid::kinds).orElse(List.of());
    return truth.isEmpty() ? told.stream().limit(1).toList() : truth;
  }

  private static OptionalInt bridgeTo(Optional<Known> known, Optional<ToolSaid> tool) {
    OptionalInt truth = known.map(Known::bridgeTo).orElse(OptionalInt.empty());
    return truth.isPresent()
        ? truth
        : tool.stream()
            .flatMap(t -> t.remarks().stream())
            .filter(r -> r.kind() == FindingKind.BRIDGE && r.pins().size() == 2)
            .mapToInt(r -> r.pins().get(1))
            .findFirst();
  }

  /**
   * Where the feature lies that decides: an outline round it, in pixels of the specimen's picture.
   */
  private static final class Marks {

    /** Half of a joint's width, in pitches. */
    private static final double HALF = 0.42;

    /** Part of a land's length that an outline leaves free at each end. */
    private static final double MARGIN = 0.04;

    private final Window window;
    private final double pitchPx;
    private final Lead lead;
    private final int leads;

    Marks(Window window, double pitchMm, Lead lead, int leads) {
      this.window = window;
      this.pitchPx = window.px(pitchMm);
      this.lead = lead;
      this.leads = leads;
    }

    /** One outline a finding, each place once. */
    List<Mark> of(List<FindingKind> findings, OptionalInt bridgeTo) {
      return findings.stream().flatMap(f -> of(f, bridgeTo).stream()).distinct().toList();
    }

    private List<Mark> of(FindingKind finding, OptionalInt bridgeTo) {
      return switch (finding) {
        case BRIDGE -> gaps(bridgeTo);
        case OPEN, VOID, TOE_OVERHANG -> List.of(box(toe(), 1));
        default -> List.of(box(0, 1));
      };
    }

    /** The stretch from a little before the lead's end to the land's end, as shares of the land. */
    private double toe() {
      double heel = window.at(lead.landHeelPx()).y();
      double length = window.at(lead.landToePx()).y() - heel;
      double share = (window.at(lead.toePx()).y() - heel) / length;
      return Math.max(0, Math.min(0.85, share - 0.15));
    }

    private Mark box(double from, double to) {
      double x = window.xPx(lead.pin());
      return between(x - HALF * pitchPx, x + HALF * pitchPx, from, to);
    }

    /** The gap to the other pin; both gaps if it is not known. */
    private List<Mark> gaps(OptionalInt bridgeTo) {
      List<Mark> gaps = new ArrayList<>();
      for (int other : List.of(lead.pin() - 1, lead.pin() + 1)) {
        boolean there = other >= 1 && other <= leads;
        if (there && (bridgeTo.isEmpty() || bridgeTo.getAsInt() == other)) {
          double one = window.xPx(lead.pin());
          double two = window.xPx(other);
          gaps.add(between(Math.min(one, two), Math.max(one, two), 0, 1));
        }
      }
      return gaps;
    }

    private Mark between(double left, double right, double from, double to) {
      PointPx heel = window.at(lead.landHeelPx());
      double length = window.at(lead.landToePx()).y() - heel.y();
      double top = heel.y() + (from - MARGIN) * length;
      return new Mark(
          tenth(left), tenth(top), tenth(right - left), tenth((to - from + 2 * MARGIN) * length));
    }

    private static double tenth(double px) {
      return Math.round(px * 10) / 10.0;
    }
  }
}
