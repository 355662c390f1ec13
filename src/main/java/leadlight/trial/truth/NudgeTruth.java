package leadlight.trial.truth;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
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
    for (Path file : TruthFolder.truths(folder)) {
      JsonNode node = TruthReader.read(file, Function.identity());
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
}
