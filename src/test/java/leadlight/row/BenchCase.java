package leadlight.row;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import leadlight.model.PointPx;
import leadlight.model.row.LandSpec;
import leadlight.model.row.RowSpec;
import leadlight.vision.Frame;
import leadlight.vision.decode.Codec;

/**
 * A picture with known leads.
 *
 * @param toes toe of each lead, pin 1 first; null where a lead is missing. For photographs the
 *     middle of the lead, of which only the place along the row counts
 */
record BenchCase(
    String name,
    Path picture,
    RowSpec spec,
    List<PointPx> toes,
    List<PointPx> heels,
    List<PointPx> landToes,
    List<PointPx> landHeels,
    double bodyDx,
    double bodyDy,
    boolean photograph,
    String lamp) {

  /** The pictures of a folder that have known leads, by name. */
  static List<BenchCase> all(Path folder) throws IOException {
    List<BenchCase> cases = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path f : files.filter(p -> p.toString().endsWith(".json")).sorted().toList()) {
        JsonNode tree = new ObjectMapper().readTree(f.toFile());
        if (tree.has("towards_body_px")) {
          cases.add(rendered(f, tree));
        } else if (tree.has("lead_centre_px")) {
          cases.add(photograph(f, tree));
        }
      }
    }
    return cases;
  }

  Frame open() throws IOException {
    return Codec.decode(Files.readAllBytes(picture)).orElseThrow();
  }

  private static BenchCase rendered(Path f, JsonNode tree) {
    List<List<PointPx>> lists = new ArrayList<>();
    for (String key : List.of("toe_px", "heel_px", "land_toe_px", "land_heel_px")) {
      List<PointPx> points = new ArrayList<>();
      tree.get("joints").forEach(j -> points.add(point(j.get(key))));
      lists.add(points);
    }
    return new BenchCase(
        f.getFileName().toString().replace(".truth.json", ""),
        f.resolveSibling(tree.get("photo").asText()),
        RowSpec.plain(
            tree.get("leads").asInt(),
            tree.get("pitch_mm").asDouble(),
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        lists.get(0),
        lists.get(1),
        lists.get(2),
        lists.get(3),
        tree.get("towards_body_px").get(0).asDouble(),
        tree.get("towards_body_px").get(1).asDouble(),
        false,
        tree.get("lamp").asText());
  }

  private static BenchCase photograph(Path f, JsonNode tree) {
    List<PointPx> points = new ArrayList<>();
    tree.get("lead_centre_px").forEach(p -> points.add(point(p)));
    boolean uneven = tree.get("uneven").asBoolean(false);
    return new BenchCase(
        f.getFileName().toString().replace(".row.json", ""),
        f.resolveSibling(tree.get("photo").asText()),
        uneven
            ? typeC()
            : RowSpec.plain(
                tree.get("leads").asInt(),
                tree.get("pitch_mm_assumed").asDouble(),
                OptionalDouble.empty(),
                OptionalDouble.empty()),
        points,
        points,
        points,
        points,
        tree.get("towards_body").get(0).asDouble(),
        tree.get("towards_body").get(1).asDouble(),
        true,
        "photo");
  }

  private static RowSpec typeC() {
    double[] u = {-3.2, -2.4, -1.75, -1.25, -0.75, -0.25, 0.25, 0.75, 1.25, 1.75, 2.4, 3.2};
    List<LandSpec> lands = new ArrayList<>();
    for (int i = 0; i < u.length; i++) {
      boolean wide = i < 2 || i > 9;
      lands.add(
          new LandSpec(
              i + 1,
              Integer.toString(i + 1),
              u[i] + 3.2,
              OptionalDouble.of(wide ? 0.6 : 0.3),
              OptionalDouble.of(1.15)));
    }
    return new RowSpec("type-c-16", lands, 0.5, OptionalDouble.empty(), false);
  }

  private static PointPx point(JsonNode xy) {
    return xy == null ? null : new PointPx(xy.get(0).asDouble(), xy.get(1).asDouble());
  }
}
