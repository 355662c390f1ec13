package leadlight.trial.truth;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import leadlight.model.BoardSide;
import leadlight.model.PointPx;
import leadlight.model.UserError;

/**
 * What is true of a photo of anchor legs.
 *
 * @param photo the file
 * @param side of the board that it shows
 * @param part connector
 * @param pxPerMm scale
 * @param landMm width and height of a land
 * @param holeMm of its hole
 * @param legs those in the picture
 */
public record LegsTruth(
    Path photo,
    BoardSide side,
    String part,
    double pxPerMm,
    Size landMm,
    Size holeMm,
    List<Leg> legs) {

  /** How far from a true middle a leg still counts as found there, share of the land's width. */
  private static final double NEAR = 0.25;

  /** Copies the list. */
  public LegsTruth {
    legs = List.copyOf(legs);
  }

  /** Width and height, millimetres. */
  public record Size(double widthMm, double heightMm) {}

  /**
   * One leg as it is.
   *
   * @param number 1 to n
   * @param centre middle of its land
   * @param condition how it was soldered
   * @param wettedDeg degrees of its outline that solder meets
   * @param covered share of its land that solder covers
   * @param open share of its hole that is open
   * @param cut whether the frame cuts it
   * @param class2 its verdict in class 2: "acceptable", "defect", or "limit" (not counted)
   */
  public record Leg(
      int number,
      PointPx centre,
      String condition,
      double wettedDeg,
      double covered,
      double open,
      boolean cut,
      String class2) {}

  /**
   * The photos of a folder by name.
   *
   * @throws UserError if there is none with legs, or a file is not as it should be
   */
  public static List<LegsTruth> of(Path folder) {
    List<LegsTruth> photos =
        TruthFolder.truths(folder).stream()
            .map(file -> TruthReader.read(file, node -> read(file, node)))
            .flatMap(Optional::stream)
            .toList();
    if (photos.isEmpty()) {
      throw new UserError(
          folder + ": no truth file here has \"legs\"; name a folder of leg photos");
    }
    return photos;
  }

  private static Optional<LegsTruth> read(Path file, JsonNode node) {
    if (!node.has("legs")) {
      return Optional.empty();
    }
    List<Leg> legs = new ArrayList<>();
    for (JsonNode leg : node.get("legs")) {
      legs.add(
          new Leg(
              leg.path("leg").asInt(),
              new PointPx(leg.at("/centre_px/0").asDouble(), leg.at("/centre_px/1").asDouble()),
              leg.path("condition").asText(),
              leg.path("wetted_deg").asDouble(),
              leg.path("land_covered").asDouble(),
              leg.path("hole_open").asDouble(),
              leg.path("cut_by_frame").asBoolean(),
              leg.path("class2").asText()));
    }
    return Optional.of(
        new LegsTruth(
            file.resolveSibling(node.path("photo").asText()),
            BoardSide.valueOf(node.path("side").asText().toUpperCase(Locale.ROOT)),
            node.path("part").asText(),
            node.path("px_per_mm").asDouble(),
            new Size(node.at("/land_mm/0").asDouble(), node.at("/land_mm/1").asDouble()),
            new Size(node.at("/hole_mm/0").asDouble(), node.at("/hole_mm/1").asDouble()),
            legs));
  }

  /** What was found at a true leg, by its middle: the nearest within a quarter of a land. */
  public <T> Optional<T> at(Leg leg, List<T> found, Function<T, PointPx> middle) {
    double reach = NEAR * landMm.widthMm() * pxPerMm;
    return found.stream()
        .filter(each -> middle.apply(each).distanceTo(leg.centre()) < reach)
        .min(Comparator.comparingDouble(each -> middle.apply(each).distanceTo(leg.centre())));
  }
}
