package leadlight.drill.sitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.drill.pool.ToolSaid;
import leadlight.drill.set.MadeSet;
import leadlight.drill.set.OpenSet;
import leadlight.drill.set.PracticeSet;
import leadlight.drill.set.PracticeSet.Spot;
import leadlight.drill.set.SetMaker;
import leadlight.drill.set.Spots;
import leadlight.drill.set.Window;
import leadlight.model.UserError;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.text.Messages;
import leadlight.text.Sentences;

/** A row that the trainee soldered: a set of one specimen, of which nobody knows the truth. */
public final class OwnWork {

  private OwnWork() {}

  /**
   * The row of a photo, all pins to be graded before the tool's score is told.
   *
   * @param scored the photo's score
   * @param photo the same photo, open
   * @param limits id of the built-in limits; empty for a user's own
   * @param words the language that is spoken
   * @throws UserError if no row was found
   */
  public static OpenSet of(ScoredPhoto scored, Photo photo, String limits, Messages words) {
    if (!(scored.row() instanceof RowOutcome.Found place)) {
      String reason = Sentences.english().of(((RowOutcome.NotFound) scored.row()).reason());
      throw new UserError(scored.photo().file() + ": no row was found: " + reason);
    }
    double pitchMm = scored.settings().row().pitchMm();
    Window window = Window.row(place, pitchMm);
    Spots maker = new Spots(scored.photo().file(), pitchMm, place, window);
    List<Spot> spots = new ArrayList<>();
    scored
        .joints()
        .forEach(
            joint ->
                spots.add(
                    maker.of(
                        joint.pin(),
                        Optional.empty(),
                        Optional.of(ToolSaid.of(joint, limits, words)))));
    String name = MadeSet.pictureName(1);
    byte[] jpeg = window.jpeg(photo.frame());
    PracticeSet set =
        new PracticeSet(
            PracticeSet.FORMAT,
            scored.photo().file(),
            words.get("drill.set.own", spots.size()),
            0,
            scored.settings().productClass(),
            List.of(SetMaker.specimen(name, jpeg, window, spots)));
    return OpenSet.ofOwnWork(new MadeSet(set, Map.of(name, jpeg)));
  }
}
