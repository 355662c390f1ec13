package leadlight.drill.set;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.drill.pool.Known;
import leadlight.drill.pool.ToolSaid;
import leadlight.drill.set.PracticeSet.Spot;
import leadlight.model.FindingKind;
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
}
