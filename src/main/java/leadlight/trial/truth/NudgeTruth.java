package leadlight.trial.truth;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leadlight.model.UserError;

/**
 * A set of nudge photos with their truth: one at rest, the others with one lead pushed.
 *
 * @param rest the photo at rest
 * @param leads leads of the row
 * @param pitchMm their pitch
 * @param pushed the others
 */
public record NudgeTruth(Path rest, int leads, double pitchMm, List<Pushed> pushed) {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String ENDING = ".truth.json";

  /** Copies the list. */
  public NudgeTruth {
    pushed = List.copyOf(pushed);
  }

  /**
   * What is true of a photo with a pick.
   *
   * @param set the photo at rest of the same row, which tells the row
   * @param photo the file
   * @param pin the lead that is touched
   * @param shiftUm how far its toe moved, micrometres
   * @param loose whether it is loose
   */
  public record Pushed(Path set, Path photo, int pin, double shiftUm, boolean loose) {}

  /**
   * The sets of a folder, in the order of their names: a truth file with {@code rest_shot} true
   * begins one.
   *
   * @throws UserError if there is none
   */
  public static List<NudgeTruth> of(Path folder) {
    List<NudgeTruth> sets = new ArrayList<>();
    Path rest = null;
    JsonNode first = null;
    List<Pushed> pushed = new ArrayList<>();
    for (Path file : truths(folder)) {
      JsonNode node = read(file);
      if (!node.has("rest_shot")) {
        continue;
      }
      Path photo = folder.resolve(node.path("photo").asText());
      if (node.get("rest_shot").asBoolean()) {
        add(sets, rest, first, pushed);
        rest = photo;
        first = node;
        pushed = new ArrayList<>();
      } else {
        pushed.add(
            new Pushed(
                rest == null ? photo : rest,
                photo,
                node.path("touched_pin").asInt(),
                node.path("toe_shift_um").asDouble(),
                node.path("loose").asBoolean()));
      }
    }
    add(sets, rest, first, pushed);
    if (sets.isEmpty()) {
      throw new UserError(folder + ": no truth file here has \"rest_shot\": true");
    }
    return sets;
  }

  private static void add(List<NudgeTruth> sets, Path rest, JsonNode first, List<Pushed> pushed) {
    if (rest != null && first != null && !pushed.isEmpty()) {
      sets.add(
          new NudgeTruth(
              rest, first.path("leads").asInt(), first.path("pitch_mm").asDouble(), pushed));
    }
  }

  private static List<Path> truths(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(ENDING)).sorted().toList();
    } catch (IOException e) {
      throw new UserError(folder + " cannot be read; name a folder of nudge photos with truth");
    }
  }

  private static JsonNode read(Path file) {
    try {
      return JSON.readTree(Files.readAllBytes(file));
    } catch (JsonProcessingException e) {
      throw new UserError(
          "%s: line %d: %s".formatted(file, e.getLocation().getLineNr(), e.getOriginalMessage()));
    } catch (IOException e) {
      throw new UserError(file + " cannot be read; check its permissions");
    }
  }
}
