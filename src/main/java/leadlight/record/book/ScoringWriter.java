package leadlight.record.book;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import leadlight.data.JsonText;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Note;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.record.file.Chain;
import leadlight.record.file.EntryKind;
import leadlight.record.scoring.Method;
import leadlight.record.scoring.NewScoring;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Subject;
import leadlight.text.Sentences;
import org.jdbi.v3.core.Handle;

/** Writes one scoring with its joints; runs within a transaction. */
public final class ScoringWriter {

  private final Handle handle;
  private final Sentences sentences = Sentences.english();

  public ScoringWriter(Handle handle) {
    this.handle = handle;
  }

  public static String time(ZonedDateTime at) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at.truncatedTo(ChronoUnit.MILLIS));
  }

  /** Its number; an equal scoring that is there already is taken unless one more is wanted. */
  public long write(NewScoring scoring, Optional<Long> run) {
    long board = board(scoring.subject().job(), scoring.subject().board());
    long photo = photo(scoring.scored().photo());
    long method = method(scoring.method());
    Subject subject = scoring.subject();
    int repeats =
        handle
            .select(
                "SELECT coalesce(max(repeat), 0) FROM scoring WHERE board_id = ? AND stage = ?"
                    + " AND attempt = ? AND photo_id = ? AND method_id = ?",
                board,
                subject.stage().id(),
                subject.attempt(),
                photo,
                method)
            .mapTo(Integer.class)
            .one();
    Optional<Scoring> before =
        new ScoringReader(handle).find(subject, scoring.scored().photo(), scoring.method());
    if (before.isPresent() && !scoring.again()) {
      return before.get().id();
    }
    long[] ids = {board, photo, method};
    return new TallyBook(handle).around(board, () -> write(scoring, run, ids, repeats + 1));
  }

  private long write(NewScoring scoring, Optional<Long> run, long[] ids, int repeat) {
    long id = row(scoring, run, ids, repeat);
    RowSpec spec = scoring.method().settings().row();
    JointWriter joints = new JointWriter(handle);
    for (GradedJoint joint : scoring.scored().joints()) {
      joints.write(id, joint, spec.lands().get(joint.pin() - 1).name());
    }
    new Chain(handle).add(EntryKind.SCORING, id);
    return id;
  }

  private long id(String sql, Object... values) {
    return id(handle, sql, values);
  }

  /** Inserts a row; its number. */
  public static long id(Handle handle, String sql, Object... values) {
    return handle.select(sql + " RETURNING id", values).mapTo(Long.class).one();
  }

  /** Number of a row that is there; no row of these is ever changed. */
  private Optional<Long> known(String sql, Object... values) {
    return handle.select(sql, values).mapTo(Long.class).findOne();
  }

  /** The board's number; job and board are made if they are not there. */
  public long board(String jobName, String boardName) {
    long job =
        known("SELECT id FROM job WHERE name = ?", jobName)
            .orElseGet(() -> id("INSERT INTO job (name) VALUES (?)", jobName));
    return known("SELECT id FROM board WHERE job_id = ? AND name = ?", job, boardName)
        .orElseGet(() -> id("INSERT INTO board (job_id, name) VALUES (?, ?)", job, boardName));
  }

  private long photo(PhotoInfo photo) {
    return known(
            "SELECT id FROM photo WHERE sha256 = ? AND file_name = ?", photo.sha256(), photo.file())
        .orElseGet(() -> newPhoto(photo));
  }

  private long newPhoto(PhotoInfo photo) {
    return id(
        "INSERT INTO photo (sha256, file_name, width_px, height_px, format, bits_per_channel,"
            + " exif_orientation, taken_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        photo.sha256(),
        photo.file(),
        photo.widthPx(),
        photo.heightPx(),
        photo.format(),
        photo.bitsPerChannel(),
        photo.exifOrientation(),
        photo.takenAt().orElse(null));
  }

  private long method(Method method) {
    return known("SELECT id FROM method WHERE key = ?", method.key())
        .orElseGet(() -> newMethod(method));
  }

  private long newMethod(Method method) {
    return id(
        "INSERT INTO method (key, settings, limits_sha256, tool_version, reader, bench)"
            + " VALUES (?, ?, ?, ?, ?, ?)",
        method.key(),
        JsonText.of(method.settings()),
        method.limitsSha256(),
        method.toolVersion(),
        method.reader().orElse(null),
        method.bench().orElse(null));
  }

  private long row(NewScoring scoring, Optional<Long> run, long[] ids, int repeat) {
    Settings settings = scoring.method().settings();
    Optional<RowOutcome.Found> found =
        scoring.scored().row() instanceof RowOutcome.Found row
            ? Optional.of(row)
            : Optional.empty();
    Optional<Note> reason =
        scoring.scored().row() instanceof RowOutcome.NotFound none
            ? Optional.of(none.reason())
            : Optional.empty();
    return id(
        "INSERT INTO scoring (board_id, photo_id, method_id, run_id, stage, attempt, repeat,"
            + " photo_path, results, connector, leads, pitch_mm, product_class, person, scored_at,"
            + " zone, verdict, row_reason, pitch_px, angle_rad, scale_px_per_mm, body_side,"
            + " confidence, tilt_rad, mm_to_px, fitness, row_note, row_notes, fitness_notes, port)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?,"
            + " ?, ?, ?, ?, ?)",
        ids[0],
        ids[1],
        ids[2],
        run.orElse(null),
        scoring.subject().stage().id(),
        scoring.subject().attempt(),
        repeat,
        scoring.photo().toAbsolutePath().toString(),
        scoring.results().toAbsolutePath().toString(),
        settings.row().connectorId(),
        settings.row().leads(),
        settings.row().pitchMm(),
        settings.productClass(),
        scoring.person(),
        time(scoring.at()),
        scoring.at().getZone().getId(),
        scoring.scored().verdict().id(),
        reason.map(sentences::of).orElse(null),
        found.map(RowOutcome.Found::pitchPx).orElse(null),
        found.map(RowOutcome.Found::angleRad).orElse(null),
        found.map(RowOutcome.Found::scalePxPerMm).orElse(null),
        found.map(row -> row.bodySide().id()).orElse(null),
        found.map(RowOutcome.Found::confidence).orElse(null),
        null,
        found.map(row -> JsonText.of(row.mmToPx().rowMajor())).orElse(null),
        JsonText.of(sentences.of(scoring.scored().fitness())),
        reason.map(JsonText::of).orElse(null),
        JsonText.of(scoring.scored().rowNotes()),
        JsonText.of(scoring.scored().fitness()),
        scoring.subject().port().orElse(null));
  }
}
