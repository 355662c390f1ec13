package leadlight.cli.connector;

import static java.util.Locale.ROOT;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.cli.terminal.TextColumns;
import leadlight.connector.AnchorLegs;
import leadlight.connector.BridgeHarm;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorRow;
import leadlight.connector.LeadShape;
import leadlight.connector.Leg;
import leadlight.connector.SignalGroup;
import leadlight.data.Basis;
import leadlight.model.row.LandSpec;
import leadlight.model.row.RowSpec;

/** What {@code leadlight connector show} prints: all that is known, with what it rests on. */
final class ConnectorDetails {

  private final Connector connector;
  private final OptionalInt leads;
  private final StringBuilder out = new StringBuilder();
  private final BasisNotes bases = new BasisNotes();

  private ConnectorDetails(Connector connector, OptionalInt leads) {
    this.connector = connector;
    this.leads = leads;
  }

  static String of(Connector connector, OptionalInt leads) {
    return new ConnectorDetails(connector, leads).text();
  }

  private String text() {
    out.append(connector.id()).append(": ").append(connector.name()).append("\n");
    connector.notes().forEach(note -> out.append(TextColumns.lines(List.of(List.of(note)))));
    for (int i = 0; i < connector.rows().size(); i++) {
      row(connector.rows().get(i), connector.rowSpec(i, leads));
    }
    connector.legs().ifPresent(this::legs);
    connector.signals().forEach(group -> bases.add(group.name(), group.basis()));
    if (!connector.signals().isEmpty()) {
      faults();
    }
    if (!connector.bridges().isEmpty()) {
      bridges();
    }
    heading("What this rests on");
    out.append(TextColumns.lines(bases.rows()));
    return out.toString();
  }

  private void row(ConnectorRow row, RowSpec spec) {
    String where = row.underBody() ? ", hidden under the body" : "";
    heading("Row " + row.id() + where);
    List<List<String>> lines = new ArrayList<>();
    lines.add(
        List.of(
            "leads",
            String.format(
                ROOT,
                "%d, pitch %s mm, span %.3f mm",
                spec.leads(),
                Mm.text(spec.pitchMm()),
                spec.spanMm())));
    lines.add(List.of("lands", ConnectorList.lands(spec) + " mm, across x along the lead"));
    row.lead().ifPresent(lead -> lines.add(List.of("lead", lead(lead))));
    lines.add(
        List.of(
            "pin 1", row.pin1().name().toLowerCase(ROOT) + "most, the body held above the leads"));
    out.append(TextColumns.lines(lines));
    bases.add("row " + row.id(), row.basis());
    row.lead().ifPresent(lead -> bases.add("leads of row " + row.id(), lead.basis()));
    if (named(spec) || !connector.signals().isEmpty()) {
      pins(spec);
    }
  }

  private static boolean named(RowSpec spec) {
    return spec.lands().stream()
        .anyMatch(land -> !land.name().equals(Integer.toString(land.pin())));
  }

  private void pins(RowSpec spec) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(List.of("", "PIN", "NAME", "AT mm", "WIDTH mm", "SIGNAL"));
    for (LandSpec land : spec.lands()) {
      lines.add(
          List.of(
              "",
              Integer.toString(land.pin()),
              land.name(),
              String.format(ROOT, "%.3f", land.uMm()),
              Mm.text(land.widthMm().orElseThrow()),
              connector.signalOf(land.name()).map(g -> g.pins().get(land.name())).orElse("")));
    }
    out.append(TextColumns.lines(lines));
  }

  private static String lead(LeadShape lead) {
    return Stream.of(
            part("width", lead.widthMm()),
            part("thickness", lead.thicknessMm()),
            part("foot", lead.footLengthMm()),
            part("foot seen from above", lead.visibleLengthMm()),
            part("land beyond the open end", lead.landAheadOfToeMm()))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(", ", "", " mm"));
  }

  private static Optional<String> part(String what, OptionalDouble mm) {
    return mm.isPresent() ? Optional.of(what + " " + Mm.text(mm.getAsDouble())) : Optional.empty();
  }

  private void legs(AnchorLegs legs) {
    heading("Anchor legs (x right, y down, from the middle of the first row, body above it)");
    List<List<String>> lines = new ArrayList<>();
    lines.add(List.of("NAME", "KIND", "X mm", "Y mm", "LAND mm", "OPENING mm"));
    for (Leg leg : legs.each()) {
      lines.add(
          List.of(
              leg.name(),
              leg.kind().name().toLowerCase(ROOT),
              place(leg),
              String.format(ROOT, "%.3f", leg.yMm()),
              size(leg.land()),
              leg.opening().map(ConnectorDetails::size).orElse("")));
    }
    out.append(TextColumns.lines(lines));
    bases.add("anchor legs", legs.basis());
  }

  private String place(Leg leg) {
    double half = connector.rowSpec(0, leads).spanMm() / 2;
    double x =
        switch (leg.from()) {
          case MIDDLE -> leg.xMm();
          case LEFT_END -> leg.xMm() - half;
          case RIGHT_END -> leg.xMm() + half;
        };
    return String.format(ROOT, "%.3f", x);
  }

  private static String size(Leg.Size size) {
    return Mm.text(size.widthMm()) + " x " + Mm.text(size.heightMm());
  }

  private void faults() {
    heading("What faults do");
    List<List<String>> lines = new ArrayList<>();
    for (SignalGroup group : connector.signals()) {
      lines.add(List.of(group.name(), "pins", String.join(", ", group.pins().keySet())));
      lines.add(List.of("", "open", group.open()));
      lines.add(List.of("", "short", group.shorted()));
    }
    out.append(TextColumns.lines(lines));
  }

  private void bridges() {
    heading("Bridges that do most harm, worst first");
    List<List<String>> lines = new ArrayList<>();
    for (BridgeHarm pair : connector.bridges()) {
      lines.add(List.of(String.join(" - ", pair.pins()), pair.harm()));
      bases.add("bridges", pair.basis());
    }
    out.append(TextColumns.lines(lines));
  }

  private void heading(String text) {
    out.append("\n").append(text).append("\n");
  }

  /** Collects what figures rest on, things with the same basis in one line. */
  private static final class BasisNotes {

    private final Map<String, Set<String>> things = new LinkedHashMap<>();

    void add(String thing, Basis basis) {
      String words = basis.words() + basis.note().map(note -> "; " + note).orElse("");
      things.computeIfAbsent(words, key -> new LinkedHashSet<>()).add(thing);
    }

    /** One row a basis: the things, then what they rest on. */
    List<List<String>> rows() {
      return things.entrySet().stream()
          .map(entry -> List.of(String.join(", ", entry.getValue()) + ": " + entry.getKey()))
          .toList();
    }
  }
}
