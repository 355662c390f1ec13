package leadlight.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import leadlight.data.Hash;
import leadlight.model.BodySide;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.record.scoring.Method;
import leadlight.record.scoring.NewScoring;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;

/**
 * Boards for the record, by name; each has a photo of its own.
 *
 * @param folder of the photos
 */
record ScoredBoard(Path folder) {

  static final ZonedDateTime NOON =
      ZonedDateTime.of(2026, 3, 1, 12, 0, 0, 0, ZoneId.of("Europe/London"));
  static final int LEADS = 3;

  private static final Settings SETTINGS =
      new Settings(
          RowSpec.plain(LEADS, 0.5, OptionalDouble.empty(), OptionalDouble.of(0.3)),
          2,
          "ipc-a-610",
          Optional.empty());

  static Method method(Optional<String> reader) {
    return new Method(SETTINGS, "a".repeat(64), "0.1.0", reader);
  }

  NewScoring scoring(String job, String board, ZonedDateTime at, Method method, RowOutcome row) {
    Path photo = file(board + ".jpg", "pixels of " + board);
    List<GradedJoint> joints =
        row instanceof RowOutcome.Found found
            ? found.leads().stream().map(ScoredBoard::joint).toList()
            : List.of();
    PhotoInfo info =
        new PhotoInfo(
            photo.getFileName().toString(), hash(photo), 640, 480, "jpeg", 8, 1, Optional.empty());
    ScoredPhoto scored =
        new ScoredPhoto(
            info,
            SETTINGS,
            row,
            Optional.empty(),
            joints,
            Verdict.ACCEPTABLE,
            List.of(),
            List.of(),
            List.of(new NoteOfPhoto.Advice("hidden", LEADS)),
            List.of());
    return new NewScoring(
        new Subject(job, board, Stage.FINAL, 1),
        photo,
        scored,
        method,
        file(board + ".json", "{}"),
        "Ada",
        at,
        false);
  }

  NewScoring scoring(String job, String board) {
    return scoring(job, board, NOON, method(Optional.empty()), found());
  }

  static RowOutcome.Found found() {
    return new RowOutcome.Found(
        new Homography(40, 0, 5, 0, 40, 6, 0, 0, 1),
        IntStream.rangeClosed(1, LEADS).mapToObj(ScoredBoard::lead).toList(),
        20,
        0.01,
        40,
        BodySide.ABOVE,
        0.8,
        0,
        List.of());
  }

  private static Lead lead(int pin) {
    return new Lead(
        pin,
        new PointPx(20 * pin, 100),
        new PointPx(20 * pin, 70),
        new PointPx(20 * pin, 110),
        new PointPx(20 * pin, 60),
        0.9,
        0.1,
        0.2);
  }

  private static GradedJoint joint(Lead lead) {
    return new GradedJoint(
        new Joint(lead, Map.of(), List.of(), Optional.empty()),
        Verdict.ACCEPTABLE,
        List.of(),
        List.of(),
        List.of(),
        List.of(new NoteOfJoint.LeadSeen(0.001)));
  }

  private Path file(String name, String content) {
    try {
      return Files.writeString(folder.resolve(name), content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String hash(Path file) {
    try {
      return Hash.sha256(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
