package leadlight.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.report.CloseUps;
import leadlight.trial.CloseUpView;
import leadlight.trial.JointOutcome;
import leadlight.trial.JointResult;
import leadlight.trial.PhotoOutcome;
import leadlight.trial.Slip;
import leadlight.vision.Frame;

/** A sheet of close-ups for each kind of slip, so that causes can be seen. */
final class SlipSheets {

  /** More than this many on a sheet nobody looks through. */
  private static final int MOST = 60;

  private static final Map<JointResult, String> FILES =
      Map.of(
          JointResult.MISSED, "misses.png",
          JointResult.FALSE_CALL, "false-calls.png",
          JointResult.UNJUDGED, "unjudged.png");

  private final Map<JointResult, List<byte[]>> tiles = new TreeMap<>();
  private final Map<JointResult, Integer> counts = new TreeMap<>();

  /** A slip and its close-up. */
  record Tile(JointResult result, byte[] png) {}

  /** The close-ups of a photo's slips. */
  static List<Tile> tiles(PhotoOutcome outcome, Frame photo) {
    List<Tile> tiles = new ArrayList<>();
    for (Slip slip : Slip.of(outcome)) {
      JointOutcome joint = outcome.joints().get(slip.pin() - 1);
      byte[] png =
          CloseUps.tile(
              photo,
              CloseUpView.of(outcome.truth(), joint.truth(), CloseUps.PICTURE_PX),
              joint.opinion().joint().lead().toePx(),
              List.of(
                  slip.photo() + " pin " + slip.pin() + ", " + outcome.truth().lamp(),
                  "is " + slip.truth(),
                  "said " + slip.opinion()));
      tiles.add(new Tile(slip.result(), png));
    }
    return tiles;
  }

  void addAll(List<Tile> more) {
    for (Tile tile : more) {
      counts.merge(tile.result(), 1, Integer::sum);
      List<byte[]> kept = tiles.computeIfAbsent(tile.result(), result -> new ArrayList<>());
      if (kept.size() < MOST) {
        kept.add(tile.png());
      }
    }
  }

  /** Writes a sheet for each kind that occurs; a sheet of an earlier run that does not goes. */
  void write(Path folder) {
    for (JointResult result : Slip.KINDS) {
      Path file = folder.resolve(FILES.get(result));
      List<byte[]> mine = tiles.getOrDefault(result, List.of());
      if (mine.isEmpty()) {
        remove(file);
      } else {
        WholeFile.write(file, CloseUps.sheet(title(result, mine.size()), mine));
      }
    }
  }

  private String title(JointResult result, int shown) {
    String name = FILES.get(result).replace(".png", "").replace('-', ' ');
    return "%d %s%s; ticks at the edges mark the toe as reported"
        .formatted(counts.get(result), name, shown < counts.get(result) ? ", first " + shown : "");
  }

  private static void remove(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw new UserError(file + " cannot be replaced; choose another folder");
    }
  }
}
