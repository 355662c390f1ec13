package leadlight.leg;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import leadlight.app.trial.LegTrial;
import leadlight.connector.ConnectorLibrary;
import leadlight.leg.find.FoundLeg;
import leadlight.leg.find.LandPlace;
import leadlight.leg.find.LegRequest;
import leadlight.model.BoardSide;
import leadlight.model.PointPx;
import leadlight.trial.truth.LegsTruth;

/** A picture of anchor legs with its truth, and what only the truth of scenes tells. */
record LegTruth(LegsTruth told, JsonNode json) {

  private static final ObjectMapper JSON = new ObjectMapper();

  static List<LegTruth> of(Path folder) {
    return LegsTruth.of(folder).stream().map(LegTruth::read).toList();
  }

  private static LegTruth read(LegsTruth told) {
    String name = told.photo().toString();
    Path file = Path.of(name.substring(0, name.lastIndexOf('.')) + ".truth.json");
    try {
      return new LegTruth(told, JSON.readTree(file.toFile()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same told of another photo, or as another side. */
  LegTruth toldOf(Path photo, BoardSide side) {
    return new LegTruth(
        new LegsTruth(
            photo, side, told.part(), told.pxPerMm(), told.landMm(), told.holeMm(), told.legs()),
        json);
  }

  Path photo() {
    return told.photo();
  }

  BoardSide side() {
    return told.side();
  }

  List<LegsTruth.Leg> legs() {
    return told.legs();
  }

  /** Whether the truth tells each direction, as that of scenes does. */
  boolean exact() {
    return json.at("/legs/0").has("wet_sectors");
  }

  /** 1 where solder meets the leg in a sector, 0 where not, -1 where the truth does not tell. */
  int wet(LegsTruth.Leg leg, int sector) {
    return exact() ? node(leg).get("wet_sectors").get(sector).asInt() : -1;
  }

  /** Share of the ring that solder covers in a sector, or -1. */
  double reach(LegsTruth.Leg leg, int sector) {
    return exact() ? node(leg).get("covered_reach").get(sector).asDouble() : -1;
  }

  /** Share of the land that something above it hides, or 0 where the truth does not tell. */
  double hidden(LegsTruth.Leg leg) {
    return node(leg).path("hidden").asDouble(0);
  }

  private JsonNode node(LegsTruth.Leg leg) {
    for (JsonNode each : json.get("legs")) {
      if (each.get("leg").asInt() == leg.number()) {
        return each;
      }
    }
    throw new IllegalStateException("no leg " + leg.number());
  }

  /** Where the legs of a scene are, by their true outlines. */
  List<FoundLeg> places() {
    List<LegRequest.Leg> known = ConnectorLegs.of(ConnectorLibrary.builtIn().find(told.part()));
    List<FoundLeg> places = new ArrayList<>();
    for (LegsTruth.Leg leg : legs()) {
      LegRequest.Leg of = known.get(leg.number() - 1);
      JsonNode land = node(leg).get("land_px");
      int quarter = land.size() / 4;
      double[] x = between(land, 2 * quarter, 0);
      double[] y = between(land, 3 * quarter, quarter);
      places.add(
          new FoundLeg(
              of,
              leg.number(),
              new LandPlace(
                  leg.centre(),
                  Math.atan2(x[1], x[0]),
                  Math.hypot(x[0], x[1]) / of.landWidthMm(),
                  Math.hypot(y[0], y[1]) / of.landHeightMm()),
              1));
    }
    return places;
  }

  private static double[] between(JsonNode outline, int from, int to) {
    return new double[] {
      outline.get(to).get(0).asDouble() - outline.get(from).get(0).asDouble(),
      outline.get(to).get(1).asDouble() - outline.get(from).get(1).asDouble()
    };
  }

  /** As a user would ask: by the connector, or by sizes and the leg's number for a single one. */
  LegRequest byConnector() {
    return LegTrial.request(told);
  }

  /** As a user would ask who knows sizes alone. */
  LegRequest bySize(int number) {
    LegsTruth.Size land = told.landMm();
    LegsTruth.Size hole = told.holeMm();
    return new LegRequest(
        side(),
        List.of(
            new LegRequest.Leg(
                number, 0, 0, land.widthMm(), land.heightMm(), hole.widthMm(), hole.heightMm())),
        false,
        LegRequest.LeadsAt.UNKNOWN);
  }

  /** What was found at a true leg. */
  <T> Optional<T> at(LegsTruth.Leg leg, List<T> found, Function<T, PointPx> centre) {
    return told.at(leg, found, centre);
  }
}
