package leadlight.trial.truth;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import leadlight.model.PointPx;
import leadlight.model.UserError;

/** Reads truth and row files. */
final class TruthReader {

  private static final ObjectMapper JSON = new ObjectMapper();

  private TruthReader() {}

  static PhotoTruth truth(Path file) {
    return read(file, TruthReader::toTruth);
  }

  static RowNote note(Path file) {
    return read(file, TruthReader::toNote);
  }

  static <T> T read(Path file, Function<JsonNode, T> make) {
    try {
      return make.apply(JSON.readTree(Files.readAllBytes(file)));
    } catch (JsonProcessingException e) {
      throw new UserError(
          "%s: line %d: %s".formatted(file, e.getLocation().getLineNr(), e.getOriginalMessage()));
    } catch (IOException e) {
      throw new UserError(file + ": cannot be read; check that it exists and that you may read it");
    } catch (IllegalArgumentException e) {
      throw new UserError(file + ": not as a truth file should be: " + e.getMessage());
    }
  }

  private static PhotoTruth toTruth(JsonNode node) {
    JsonNode tilt = need(node, "tilt_rad");
    List<JointTruth> joints = new ArrayList<>();
    need(node, "joints").forEach(joint -> joints.add(toJoint(joint)));
    return new PhotoTruth(
        need(node, "photo").asText(),
        Optional.ofNullable(node.get("connector")).map(JsonNode::asText),
        need(node, "leads").asInt(),
        number(node, "pitch_mm"),
        lands(node),
        number(node, "lead_width_mm"),
        number(node, "land_length_mm"),
        number(node, "land_ahead_of_toe_mm"),
        need(node, "lamp").asText(),
        need(node, "mask").asText(),
        number(node, "edge_blur_px"),
        Math.hypot(tilt.path(0).asDouble(), tilt.path(1).asDouble()),
        point(need(node, "towards_body_px")),
        joints);
  }

  /** Even rows need not state the places of their lands. */
  private static List<Double> lands(JsonNode node) {
    if (!node.has("lands_at_mm")) {
      double pitch = number(node, "pitch_mm");
      return IntStream.range(0, need(node, "leads").asInt()).mapToObj(i -> i * pitch).toList();
    }
    List<Double> places = new ArrayList<>();
    node.get("lands_at_mm").forEach(place -> places.add(place.asDouble()));
    return places;
  }

  private static JointTruth toJoint(JsonNode node) {
    List<String> findings = new ArrayList<>();
    node.path("findings").forEach(finding -> findings.add(finding.asText()));
    return new JointTruth(
        need(node, "pin").asInt(),
        Optional.ofNullable(node.get("toe_px")).map(TruthReader::point),
        Optional.ofNullable(node.get("heel_px")).map(TruthReader::point),
        point(need(node, "land_toe_px")),
        point(need(node, "land_heel_px")),
        need(node, "condition").asText(),
        TrueClass.valueOf(need(node, "class2").asText().toUpperCase(Locale.ROOT)),
        findings,
        optional(node, "side_overhang_of_lead_width"),
        Optional.ofNullable(node.get("wetted_from_toe")).map(TruthReader::stretch),
        optional(node, "lifted_mm"),
        node.hasNonNull("bridge_to")
            ? OptionalInt.of(node.get("bridge_to").asInt())
            : OptionalInt.empty());
  }

  private static RowNote toNote(JsonNode node) {
    List<PointPx> centres = new ArrayList<>();
    need(node, "lead_centre_px").forEach(centre -> centres.add(point(centre)));
    return new RowNote(
        need(node, "photo").asText(),
        need(node, "kind").asText(),
        need(node, "leads").asInt(),
        number(node, "pitch_px"),
        number(node, "pitch_mm_assumed"),
        need(node, "uneven").asBoolean(),
        point(need(node, "towards_body")),
        centres,
        number(node, "half_length_px"),
        need(node, "factory").asBoolean(),
        need(node, "assembly").asText(),
        grades(node.path("grades")));
  }

  private static Map<Integer, RowNote.Grade> grades(JsonNode node) {
    Map<Integer, RowNote.Grade> grades = new TreeMap<>();
    node.properties()
        .forEach(
            entry ->
                grades.put(
                    Integer.valueOf(entry.getKey()),
                    RowNote.Grade.valueOf(
                        need(entry.getValue(), "grade").asText().toUpperCase(Locale.ROOT))));
    return grades;
  }

  private static JsonNode need(JsonNode node, String name) {
    if (!node.hasNonNull(name)) {
      throw new IllegalArgumentException("\"" + name + "\" is missing");
    }
    return node.get(name);
  }

  private static double number(JsonNode node, String name) {
    JsonNode value = need(node, name);
    if (!value.isNumber()) {
      throw new IllegalArgumentException("\"" + name + "\" must be a number, is " + value);
    }
    return value.asDouble();
  }

  private static OptionalDouble optional(JsonNode node, String name) {
    return node.hasNonNull(name) ? OptionalDouble.of(number(node, name)) : OptionalDouble.empty();
  }

  private static JointTruth.Stretch stretch(JsonNode node) {
    PointPx ends = point(node);
    return new JointTruth.Stretch(ends.x(), ends.y());
  }

  private static PointPx point(JsonNode node) {
    if (!node.path(0).isNumber() || !node.path(1).isNumber()) {
      throw new IllegalArgumentException("a place must be [x, y], is " + node);
    }
    return new PointPx(node.get(0).asDouble(), node.get(1).asDouble());
  }
}
