package leadlight.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.life.BenchRules;
import leadlight.model.UserError;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Deadline;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import leadlight.text.Sentences;

/**
 * What a picture that is not taken yet is fit for, while the microscope is focused.
 *
 * @param row the row is seen
 * @param leads leads that were counted; 0 if none
 * @param near enough pixels a pitch, of a row that was found
 * @param sharp nothing is said against the sharpness of a row that was found
 * @param hints what to change, worst first
 */
record Glance(boolean row, int leads, boolean near, boolean sharp, List<String> hints) {

  static Glance of(byte[] picture, Bench bench) {
    Messages words = bench.setup().words();
    Path aside = null;
    try {
      aside = Files.createTempFile("leadlight-glance", ".jpg");
      Files.write(aside, picture);
      return of(new Deadline().reading(aside, bench.scorer()::glance), words);
    } catch (UserError e) {
      return new Glance(false, 0, false, false, List.of(e.getMessage()));
    } catch (IOException e) {
      return new Glance(false, 0, false, false, List.of(words.get("desk.no-room")));
    } finally {
      discard(aside);
    }
  }

  private static Glance of(ScoredPhoto scored, Messages words) {
    Sentences sentences = new Sentences(words, LengthUnit.MM);
    List<String> hints = new ArrayList<>();
    boolean sharp = scored.fitness().stream().noneMatch(Glance::isOfSharpness);
    if (scored.row() instanceof RowOutcome.Found found) {
      hints.addAll(sentences.of(scored.fitness()));
      return new Glance(
          true,
          found.leads().size(),
          found.pitchPx() >= BenchRules.builtIn().nearPxPerPitch().value(),
          sharp,
          hints);
    }
    Note reason = ((RowOutcome.NotFound) scored.row()).reason();
    hints.add(sentences.of(reason));
    hints.addAll(sentences.of(scored.fitness()));
    int counted = reason instanceof NoteOfRow.OtherCount other ? other.shown() : 0;
    return new Glance(false, counted, false, false, hints);
  }

  private static boolean isOfSharpness(Note note) {
    return note instanceof NoteOfPhoto.SoftForPitch
        || note instanceof NoteOfPhoto.SoftForPixels
        || note instanceof NoteOfPhoto.NoEdges;
  }

  private static void discard(Path aside) {
    try {
      if (aside != null) {
        Files.deleteIfExists(aside);
      }
    } catch (IOException e) {
      // A file of the system's temporary folder; the system clears it.
    }
  }
}
