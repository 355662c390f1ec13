package leadlight.cli.connector;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import leadlight.cli.terminal.TextColumns;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorRow;
import leadlight.connector.Lands;
import leadlight.model.row.LandSpec;
import leadlight.model.row.RowSpec;

/** The table of {@code leadlight connector list}. */
final class ConnectorList {

  private ConnectorList() {}

  static String of(List<Connector> connectors) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("ID", "LEADS", "PITCH mm", "LANDS mm", "WHAT"));
    for (Connector connector : connectors) {
      RowSpec first = connector.rowSpec(0, OptionalInt.empty());
      rows.add(
          List.of(
              connector.id(),
              leads(connector),
              pitch(connector.rows().get(0), first),
              lands(first),
              connector.name()));
    }
    return TextColumns.lines(rows);
  }

  /** "10 + 9", or "2 x 20, or N" where the number is the user's. */
  private static String leads(Connector connector) {
    List<String> counts =
        connector.rows().stream()
            .map(row -> Integer.toString(row.lands().at(OptionalInt.empty()).size()))
            .toList();
    boolean equal = counts.stream().distinct().count() == 1;
    String text =
        counts.size() > 2 && equal
            ? counts.size() + " x " + counts.get(0)
            : String.join(" + ", counts);
    return connector.rows().get(0).lands().anyCount() ? text + ", or N" : text;
  }

  private static String pitch(ConnectorRow row, RowSpec spec) {
    String pitch = Mm.text(spec.pitchMm());
    return row.lands() instanceof Lands.Each ? pitch + ", uneven" : pitch;
  }

  /** "0.30 x 2.60", or "0.30-0.60 x 1.15" where widths differ. */
  static String lands(RowSpec spec) {
    double[] widths =
        spec.lands().stream().mapToDouble(land -> land.widthMm().orElseThrow()).sorted().toArray();
    String width = Mm.text(widths[0]);
    if (widths[widths.length - 1] > widths[0]) {
      width += "-" + Mm.text(widths[widths.length - 1]);
    }
    LandSpec land = spec.lands().get(0);
    return width + " x " + Mm.text(land.lengthMm().orElseThrow());
  }
}
