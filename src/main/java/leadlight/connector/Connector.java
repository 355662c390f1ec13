package leadlight.connector;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import leadlight.model.UserError;
import leadlight.model.row.LandSpec;
import leadlight.model.row.RowSpec;

/**
 * A connector as its file has it ({@code models/schema/connector.schema.json}).
 *
 * <p>Frame: millimetres on the board, seen from above, held so that the body lies above the first
 * row's leads (their open ends point down); x right, y down; the origin is the middle of the first
 * row.
 *
 * @param schema always {@value #SCHEMA}
 * @param id name in commands and reports: lower-case letters, digits, dots and dashes
 * @param name for people
 * @param notes what a reader must know
 * @param rows rows of lands, the one to photograph first
 * @param legs anchor legs; their places follow the first row where it may have any number of leads
 * @param signals what the pins carry, by group
 * @param bridges neighbour pairs whose bridge does most harm, worst first
 */
public record Connector(
    @JsonProperty(required = true) String schema,
    @JsonProperty(required = true) String id,
    @JsonProperty(required = true) String name,
    List<String> notes,
    @JsonProperty(required = true) List<ConnectorRow> rows,
    Optional<AnchorLegs> legs,
    List<SignalGroup> signals,
    List<BridgeHarm> bridges) {

  /** The version of the file format. */
  public static final String SCHEMA = "leadlight/connector/1";

  public static final String ID_RULE = "id must be lower-case letters, digits, dots and dashes";

  /** Copies the lists; refuses a file without rows and pins that no row has. */
  public Connector {
    if (!SCHEMA.equals(schema)) {
      throw new IllegalArgumentException(
          "schema must be \"" + SCHEMA + "\", is \"" + schema + "\"");
    }
    if (!isId(id)) {
      throw new IllegalArgumentException(ID_RULE + ", is \"" + id + "\"");
    }
    notes = Copies.list(notes);
    rows = Copies.list(rows);
    signals = Copies.list(signals);
    bridges = Copies.list(bridges);
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("a connector needs one row or more");
    }
    requirePins(rows, signals, bridges);
  }

  public static boolean isId(String id) {
    return id.matches("[a-z0-9][a-z0-9.-]*");
  }

  private static void requirePins(
      List<ConnectorRow> rows, List<SignalGroup> signals, List<BridgeHarm> bridges) {
    Set<String> known = new HashSet<>();
    rows.forEach(r -> r.lands().at(OptionalInt.empty()).forEach(land -> known.add(land.name())));
    Set<String> used = new HashSet<>();
    signals.forEach(group -> used.addAll(group.pins().keySet()));
    bridges.forEach(pair -> used.addAll(pair.pins()));
    for (String pin : used) {
      if (!known.contains(pin)) {
        throw new IllegalArgumentException(
            "signals or bridges name pin " + pin + ", no row has it");
      }
    }
  }

  /**
   * What to look for in a photo of one row.
   *
   * @param rowIndex place in {@link #rows}, 0 for the first
   * @param leads how many leads, where the file leaves that open; its own number otherwise
   * @throws UserError if the row cannot have that many leads
   */
  public RowSpec rowSpec(int rowIndex, OptionalInt leads) {
    ConnectorRow row = rows.get(rowIndex);
    List<LandSpec> lands;
    try {
      lands = row.lands().at(leads);
    } catch (IllegalArgumentException e) {
      throw new UserError("connector " + id + ", row " + row.id() + ": " + e.getMessage());
    }
    return new RowSpec(
        id,
        lands,
        Pitch.commonestMm(lands),
        row.lead().map(LeadShape::widthMm).orElseGet(OptionalDouble::empty),
        row.pin1() == ConnectorRow.End.RIGHT);
  }

  /** The group that a pin belongs to, by the land's name. */
  public Optional<SignalGroup> signalOf(String pin) {
    return signals.stream().filter(group -> group.pins().containsKey(pin)).findFirst();
  }

  /** What a bridge between two pins does, where the file says so; in either order. */
  public Optional<BridgeHarm> bridgeHarm(String pin, String other) {
    return bridges.stream().filter(pair -> pair.joins(pin, other)).findFirst();
  }

  /** The nominal pitch of a row. */
  private static final class Pitch {

    /** Distances that differ by less count as one: drawings give pitches to 0.01 mm or coarser. */
    private static final double SAME_MM = 0.005;

    private Pitch() {}

    /** The commonest distance between neighbours, the shorter of two equally common ones. */
    static double commonestMm(List<LandSpec> lands) {
      TreeMap<Long, Integer> counts = new TreeMap<>();
      for (int i = 1; i < lands.size(); i++) {
        double distanceMm = lands.get(i).uMm() - lands.get(i - 1).uMm();
        counts.merge(Math.round(distanceMm / SAME_MM), 1, Integer::sum);
      }
      long best = counts.firstKey();
      for (long bin : counts.keySet()) {
        best = counts.get(bin) > counts.get(best) ? bin : best;
      }
      return meanInBin(lands, best);
    }

    private static double meanInBin(List<LandSpec> lands, long bin) {
      double sumMm = 0;
      int count = 0;
      for (int i = 1; i < lands.size(); i++) {
        double distanceMm = lands.get(i).uMm() - lands.get(i - 1).uMm();
        if (Math.round(distanceMm / SAME_MM) == bin) {
          sumMm += distanceMm;
          count++;
        }
      }
      return Math.round(sumMm / count * 1e6) / 1e6;
    }
  }
}
