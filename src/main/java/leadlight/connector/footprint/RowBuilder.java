package leadlight.connector.footprint;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import leadlight.connector.ConnectorRow;
import leadlight.connector.ConnectorRow.End;
import leadlight.connector.ConnectorRow.OpenEnd;
import leadlight.connector.Lands;
import leadlight.connector.Mm;
import leadlight.connector.footprint.Footprint.Pad;
import leadlight.data.Basis;

/** Makes a connector's row of a run of lands. */
final class RowBuilder {

  /** Pitches and sizes that differ by less are equal: footprints are rounded to 0.001 mm. */
  private static final double EQUAL_MM = 0.0021;

  private final Basis basis;
  private final List<String> remarks;

  RowBuilder(Basis basis, List<String> remarks) {
    this.basis = basis;
    this.remarks = remarks;
  }

  /**
   * The row.
   *
   * @param openEnd on the footprint
   * @param turn from the footprint to the connector's frame
   */
  ConnectorRow row(String id, LandRun run, OpenEnd openEnd, Turn turn, boolean underBody) {
    Turn held = new Turn(openEnd);
    List<Pad> fromLeft =
        run.lands().stream()
            .sorted(Comparator.comparingDouble(pad -> held.x(pad.xMm(), pad.yMm())))
            .toList();
    End pin1 = pin1(id, fromLeft);
    List<Pad> ordered = new ArrayList<>(fromLeft);
    if (pin1 == End.RIGHT) {
      Collections.reverse(ordered);
    }
    Pad first = run.lands().get(0);
    Pad last = run.lands().get(run.lands().size() - 1);
    double x = (first.xMm() + last.xMm()) / 2;
    double y = (first.yMm() + last.yMm()) / 2;
    return new ConnectorRow(
        id,
        turn.x(x, y),
        turn.y(x, y),
        turn.of(openEnd),
        pin1,
        underBody,
        lands(ordered, run.alongX()),
        Optional.empty(),
        basis);
  }

  private End pin1(String id, List<Pad> fromLeft) {
    String left = fromLeft.get(0).name();
    String right = fromLeft.get(fromLeft.size() - 1).name();
    int order =
        PinOrder.counts(left) && PinOrder.counts(right) ? PinOrder.BY_NAME.compare(left, right) : 0;
    if (order == 0) {
      remarks.add("row " + id + ": its pin names give no order, pin 1 is taken as the leftmost");
    }
    return order > 0 ? End.RIGHT : End.LEFT;
  }

  private static Lands lands(List<Pad> ordered, boolean alongX) {
    List<String> names = names(ordered);
    List<Lands.Land> lands = new ArrayList<>();
    double start = LandRun.along(ordered.get(0), alongX);
    for (int i = 0; i < ordered.size(); i++) {
      Pad pad = ordered.get(i);
      lands.add(
          new Lands.Land(
              names.get(i),
              Mm.tidy(Math.abs(LandRun.along(pad, alongX) - start)),
              LandRun.width(pad, alongX),
              LandRun.length(pad, alongX)));
    }
    double pitch = Mm.tidy(lands.get(lands.size() - 1).uMm() / (lands.size() - 1));
    return even(lands, pitch)
        ? new Lands.Even(
            lands.size(),
            pitch,
            lands.get(0).widthMm(),
            lands.get(0).lengthMm(),
            plainNumbers(names) ? List.of() : names,
            Optional.empty())
        : new Lands.Each(lands);
  }

  private static boolean even(List<Lands.Land> lands, double pitch) {
    Lands.Land first = lands.get(0);
    return IntStream.range(0, lands.size())
        .allMatch(
            i ->
                Math.abs(lands.get(i).uMm() - i * pitch) < EQUAL_MM
                    && Math.abs(lands.get(i).widthMm() - first.widthMm()) < EQUAL_MM
                    && Math.abs(lands.get(i).lengthMm() - first.lengthMm()) < EQUAL_MM);
  }

  private static boolean plainNumbers(List<String> names) {
    return IntStream.range(0, names.size())
        .allMatch(i -> names.get(i).equals(Integer.toString(i + 1)));
  }

  /** Each land's name, its number where it has none, with a count where a name comes again. */
  private static List<String> names(List<Pad> ordered) {
    Map<String, Integer> seen = new HashMap<>();
    List<String> names = new ArrayList<>();
    for (Pad pad : ordered) {
      String name = pad.names().isEmpty() ? "unnamed" : pad.name();
      int count = seen.merge(name, 1, Integer::sum);
      names.add(count == 1 ? name : name + "." + count);
    }
    boolean nameless = ordered.stream().allMatch(pad -> pad.names().isEmpty());
    return nameless
        ? IntStream.rangeClosed(1, names.size()).mapToObj(Integer::toString).toList()
        : names;
  }
}
