package leadlight.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import leadlight.model.UserError;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.Nudge;
import leadlight.model.row.RowOutcome;
import leadlight.motion.NudgeJudge;
import leadlight.photo.Deadline;
import leadlight.photo.Photo;
import leadlight.record.said.BenchTest;
import leadlight.record.said.RecordedRow;
import leadlight.record.scoring.Scoring;
import leadlight.text.LengthUnit;
import leadlight.text.Sentences;

/**
 * A picture of a pushed lead, read against the recorded photo at rest: what the lead did goes into
 * the record as a prod.
 */
final class NudgeShot {

  private final Bench bench;

  NudgeShot(Bench bench) {
    this.bench = bench;
  }

  /** One line for each lead that was pushed, or why none can be told. */
  List<String> read(byte[] picture, long scoring) throws Refused {
    Scoring at = bench.setup().record().scoring(scoring);
    RecordedRow row = bench.setup().record().row(scoring);
    if (!(row.outcome() instanceof RowOutcome.Found found)) {
      throw new Refused(bench.setup().words().get("desk.no-row"));
    }
    Photo rest =
        bench
            .shelf()
            .open(at)
            .orElseThrow(() -> new Refused(bench.setup().words().get("desk.photo-gone")));
    try (rest) {
      NudgeJudge reader = new NudgeJudge(rest.frame(), found, at.method().settings().row());
      return told(reader.together(List.of(pushed(picture, reader))), scoring);
    } catch (UserError e) {
      throw new Refused(e.getMessage());
    }
  }

  private NudgeJudge.Read pushed(byte[] picture, NudgeJudge reader) throws Refused {
    try {
      Path aside = Files.createTempFile("leadlight-nudge", ".jpg");
      try {
        Files.write(aside, picture);
        try (Photo photo = new Deadline().read(aside)) {
          return reader.read(photo.frame(), photo.info().file(), photo.info().sha256());
        }
      } finally {
        Files.deleteIfExists(aside);
      }
    } catch (IOException e) {
      throw new Refused(bench.setup().words().get("desk.no-room"));
    }
  }

  private List<String> told(Nudge nudge, long scoring) {
    List<String> lines = new ArrayList<>();
    for (Nudge.Moved lead : nudge.leads()) {
      switch (lead.motion()) {
        case MOVES -> lines.add(prod(scoring, lead.pin(), "moves"));
        case FIRM -> lines.add(prod(scoring, lead.pin(), "firm"));
        case CANNOT_TELL -> lines.add(bench.setup().words().get("desk.nudge.unclear", lead.pin()));
        case NOT_TOUCHED -> {
          // Not pushed: nothing to say.
        }
      }
    }
    if (lines.isEmpty()) {
      Note why =
          nudge.photos().stream()
              .flatMap(photo -> photo.reason().stream())
              .findFirst()
              .orElse(new NoteOfPhoto.NoPick());
      lines.add(new Sentences(bench.setup().words(), LengthUnit.MM).of(why));
    }
    return lines;
  }

  private String prod(long scoring, int pin, String result) {
    String said = bench.setup().words().get("desk.nudge." + result, pin);
    try {
      bench.said(
          bench.now().toInstant(), scoring, pin, BenchTest.PROD, result, OptionalInt.empty());
    } catch (Refused e) {
      return said + " (" + e.getMessage() + ")";
    }
    return said;
  }
}
