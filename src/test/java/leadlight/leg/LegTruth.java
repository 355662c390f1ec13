package leadlight.leg;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadlight.connector.ConnectorLibrary;
import leadlight.leg.find.FoundLeg;
import leadlight.leg.find.LandPlace;
import leadlight.leg.find.LegRequest;
import leadlight.model.BoardSide;
import leadlight.model.PointPx;

/** A picture of anchor legs with its truth. */
record LegTruth(Path photo, BoardSide side, String part, JsonNode json) {

  private static final ObjectMapper JSON = new ObjectMapper();

  /** One leg as it is. */
  record TrueLeg(
      int number,
      PointPx centre,
      String condition,
      double wettedDeg,
      double covered,
      double open,
      boolean cut,
      String verdict) {}

  static List<LegTruth> of(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".truth.json"))
          .sorted()
          .map(LegTruth::read)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static LegTruth read(Path file) {
    try {
      JsonNode json = JSON.readTree(file.toFile());
      return new LegTruth(
          file.resolveSibling(json.get("photo").asText()),
          BoardSide.valueOf(json.get("side").asText().toUpperCase(java.util.Locale.ROOT)),
          json.get("part").asText(),
          json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  double pxPerMm() {
    return json.get("px_per_mm").asDouble();
  }

  double landWidthMm() {
    return json.at("/land_mm/0").asDouble();
  }

  List<TrueLeg> legs() {
    List<TrueLeg> legs = new ArrayList<>();
    for (JsonNode leg : json.get("legs")) {
      legs.add(
          new TrueLeg(
              leg.get("leg").asInt(),
              new PointPx(leg.at("/centre_px/0").asDouble(), leg.at("/centre_px/1").asDouble()),
              leg.get("condition").asText(),
              leg.get("wetted_deg").asDouble(),
              leg.get("land_covered").asDouble(),
              leg.get("hole_open").asDouble(),
              leg.get("cut_by_frame").asBoolean(),
              leg.get("class2").asText()));
    }
    return legs;
  }

  /** Whether the truth tells each direction, as that of scenes does. */
  boolean exact() {
    return json.at("/legs/0").has("wet_sectors");
  }

  /** 1 where solder meets the leg in a sector, 0 where not, -1 where the truth does not tell. */
  int wet(TrueLeg leg, int sector) {
    return exact() ? node(leg).get("wet_sectors").get(sector).asInt() : -1;
  }

  /** Share of the ring that solder covers in a sector, or -1. */
  double reach(TrueLeg leg, int sector) {
    return exact() ? node(leg).get("covered_reach").get(sector).asDouble() : -1;
  }

  /** Share of the land that something above it hides, or 0 where the truth does not tell. */
  double hidden(TrueLeg leg) {
    return node(leg).path("hidden").asDouble(0);
  }

  private JsonNode node(TrueLeg leg) {
    for (JsonNode each : json.get("legs")) {
      if (each.get("leg").asInt() == leg.number()) {
        return each;
      }
    }
    throw new IllegalStateException("no leg " + leg.number());
  }

  /** Where the legs of a scene are, by their true outlines. */
  List<FoundLeg> places() {
    List<LegRequest.Leg> known = ConnectorLegs.of(ConnectorLibrary.builtIn().find(part));
    List<FoundLeg> places = new ArrayList<>();
    for (TrueLeg leg : legs()) {
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
    return legs().size() == 1 ? bySize(legs().get(0).number()) : byPart();
  }

  /** As a user would ask who knows sizes alone. */
  LegRequest bySize(int number) {
    return new LegRequest(
        side,
        List.of(
            new LegRequest.Leg(
                number,
                0,
                0,
                landWidthMm(),
                json.at("/land_mm/1").asDouble(),
                json.at("/hole_mm/0").asDouble(),
                json.at("/hole_mm/1").asDouble())),
        false,
        LegRequest.LeadsAt.UNKNOWN);
  }

  private LegRequest byPart() {
    return new LegRequest(
        side,
        ConnectorLegs.of(ConnectorLibrary.builtIn().find(part)),
        true,
        LegRequest.LeadsAt.UNKNOWN);
  }

  /** What was found at a true leg: within a quarter of its land's width. */
  <T> Optional<T> at(TrueLeg leg, List<T> found, java.util.function.Function<T, PointPx> centre) {
    double reach = 0.25 * landWidthMm() * pxPerMm();
    return found.stream()
        .filter(each -> centre.apply(each).distanceTo(leg.centre()) < reach)
        .min(Comparator.comparingDouble(each -> centre.apply(each).distanceTo(leg.centre())));
  }
}
