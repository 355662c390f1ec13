package leadlight.app.trial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.report.strip.CloseUps;
import leadlight.trial.list.CloseUpView;
import leadlight.trial.outcome.JointOutcome;
import leadlight.trial.outcome.NoteOutcome;
import leadlight.trial.outcome.Opinion;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.outcome.Slip;
import leadlight.trial.truth.RowNote;
import leadlight.vision.Frame;

/** A sheet of close-ups for each kind of slip, so that causes can be seen. */
public final class SlipSheets {

  /** More than this many on a sheet nobody looks through. */
  private static final int MOST = 60;

  /** What a sheet shows. */
  enum Sheet {
    MISSED("misses.png", "misses"),
    FALSE_CALL("false-calls.png", "false calls"),
    UNJUDGED("unjudged.png", "unjudged"),
    FACTORY_CALL("factory-calls.png", "factory joints called defect");

    private final String file;
    private final String title;

    Sheet(String file, String title) {
      this.file = file;
      this.title = title;
    }
  }

  private final Map<Sheet, List<byte[]>> tiles = new EnumMap<>(Sheet.class);
  private final Map<Sheet, Integer> counts = new EnumMap<>(Sheet.class);

  /** A slip and its close-up. */
  record Tile(Sheet sheet, byte[] png) {}

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
      tiles.add(new Tile(Sheet.valueOf(slip.result().name()), png));
    }
    return tiles;
  }

  /** The close-ups of a factory's joints that were called a defect. */
  static List<Tile> tiles(NoteOutcome outcome, Frame photo) {
    List<Tile> tiles = new ArrayList<>();
    RowNote note = outcome.note();
    for (int i = 0; note.factory() && i < outcome.joints().size(); i++) {
      GradedJoint joint = outcome.joints().get(i);
      if (joint.verdict() == Verdict.DEFECT) {
        byte[] png =
            CloseUps.tile(
                photo,
                CloseUpView.of(note, i, CloseUps.PICTURE_PX),
                joint.joint().lead().toePx(),
                List.of(
                    note.photo() + " lead " + (i + 1) + ", " + note.kind(),
                    "said " + Opinion.words(joint)));
        tiles.add(new Tile(Sheet.FACTORY_CALL, png));
      }
    }
    return tiles;
  }

  void addAll(List<Tile> more) {
    for (Tile tile : more) {
      counts.merge(tile.sheet(), 1, Integer::sum);
      List<byte[]> kept = tiles.computeIfAbsent(tile.sheet(), sheet -> new ArrayList<>());
      if (kept.size() < MOST) {
        kept.add(tile.png());
      }
    }
  }

  /** Writes a sheet for each kind that occurs; a sheet of an earlier run that does not goes. */
  public void write(Path folder) {
    for (Sheet sheet : Sheet.values()) {
      Path file = folder.resolve(sheet.file);
      List<byte[]> mine = tiles.getOrDefault(sheet, List.of());
      if (mine.isEmpty()) {
        remove(file);
      } else {
        WholeFile.write(file, CloseUps.sheet(title(sheet, mine.size()), mine));
      }
    }
  }

  private String title(Sheet sheet, int shown) {
    int count = counts.get(sheet);
    return "%d %s%s; ticks at the edges mark the toe as reported"
        .formatted(count, sheet.title, shown < count ? ", first " + shown : "");
  }

  private static void remove(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw new UserError(file + " cannot be replaced; choose another folder");
    }
  }
}
