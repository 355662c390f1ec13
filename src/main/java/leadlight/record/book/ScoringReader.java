package leadlight.record.book;

import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import leadlight.data.JsonText;
import leadlight.model.Verdict;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.Settings;
import leadlight.record.scoring.Method;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import org.jdbi.v3.core.Handle;

/** Reads scorings, by search or by what they are of. */
public final class ScoringReader {

  private static final String SELECT =
      "SELECT s.*, j.name AS job, b.name AS board, p.sha256, p.file_name, p.width_px, p.height_px,"
          + " p.format, p.bits_per_channel, p.exif_orientation, p.taken_at, m.settings,"
          + " m.limits_sha256, m.tool_version, m.reader, m.bench"
          + " FROM scoring s JOIN board b ON b.id = s.board_id JOIN job j ON j.id = b.job_id"
          + " JOIN photo p ON p.id = s.photo_id JOIN method m ON m.id = s.method_id";

  /** Of equal photo, board, stage, row and class only the last of those up to a day. */
  private static final String LATEST =
      "s.id = (SELECT max(o.id) FROM scoring o JOIN photo q ON q.id = o.photo_id"
          + " WHERE o.board_id = s.board_id AND o.stage = s.stage AND o.attempt = s.attempt"
          + " AND q.file_name = p.file_name AND o.connector = s.connector AND o.leads = s.leads"
          + " AND o.product_class = s.product_class AND o.port IS NOT DISTINCT FROM s.port"
          + " AND substr(o.scored_at, 1, 10) <= ?)";

  /** No day is later. */
  private static final String EVER = "9999-12-31";

  // Not EXISTS: for that PostgreSQL reads all findings once, which is seconds in a large record.
  private static final String TOOL_FOUND =
      "(SELECT min(f.id) FROM joint o JOIN finding f ON f.joint_id = o.id"
          + " WHERE o.scoring_id = s.id AND f.kind = ?) IS NOT NULL";

  /** Somebody said anything of the board; which of it counts, its rows tell. */
  private static final String SAID =
      "(" + saidIn("overrule") + " OR " + saidIn("bench_result") + ")";

  private static final String SELECT_SAID = SELECT.replaceFirst("s[.]", SAID + " AS said, s.");

  private final Handle handle;

  /** There are few methods, and reading the settings of one costs more than finding a scoring. */
  private final Map<Long, Method> methods = new HashMap<>();

  public ScoringReader(Handle handle) {
    this.handle = handle;
  }

  public Optional<Scoring> find(long id) {
    return handle
        .select(SELECT + " WHERE s.id = ?", id)
        .map((row, context) -> scoring(row))
        .findOne();
  }

  Optional<Scoring> find(Subject subject, PhotoInfo photo, Method method) {
    return find(subject, photo.file(), photo.sha256(), method);
  }

  public Optional<Scoring> find(Subject subject, String fileName, String sha256, Method method) {
    return handle
        .select(
            SELECT
                + " WHERE j.name = ? AND b.name = ? AND s.stage = ? AND s.attempt = ?"
                + " AND s.port IS NOT DISTINCT FROM ?"
                + " AND p.file_name = ? AND p.sha256 = ? AND m.key = ?"
                + " ORDER BY s.repeat DESC LIMIT 1",
            subject.job(),
            subject.board(),
            subject.stage().id(),
            subject.attempt(),
            subject.port().orElse(null),
            fileName,
            sha256,
            method.key())
        .map((row, context) -> scoring(row))
        .findOne();
  }

  /** Where the results of a scoring lie. */
  public Path results(long scoring) {
    return handle
        .select("SELECT results FROM scoring WHERE id = ?", scoring)
        .map((row, context) -> Path.of(row.getString("results")))
        .one();
  }

  /** Where the results of all scorings of a photo lie. */
  public List<Path> resultsOf(String sha256) {
    return handle
        .select(
            "SELECT s.results FROM scoring s JOIN photo p ON p.id = s.photo_id"
                + " WHERE p.sha256 = ? ORDER BY s.id",
            sha256)
        .map((row, context) -> Path.of(row.getString("results")))
        .list();
  }

  /** The last day on which a photo was scored, in the zone it was scored in. */
  public Optional<LocalDate> lastDay() {
    return handle
        .select("SELECT max(substr(scored_at, 1, 10)) AS day FROM scoring")
        .map((row, context) -> Optional.ofNullable(row.getString("day")).map(LocalDate::parse))
        .one();
  }

  /** The scorings that are meant, oldest first, one after the other. */
  public void each(Search search, Consumer<Scoring> take) {
    List<String> where = new ArrayList<>(List.of("TRUE"));
    List<Object> values = new ArrayList<>();
    search.job().ifPresent(job -> add(where, values, "j.name = ?", job));
    search.board().ifPresent(board -> add(where, values, "b.name = ?", board));
    search.from().ifPresent(d -> add(where, values, "substr(s.scored_at, 1, 10) >= ?", "" + d));
    search.to().ifPresent(d -> add(where, values, "substr(s.scored_at, 1, 10) <= ?", "" + d));
    search.connector().ifPresent(c -> add(where, values, "s.connector = ?", c));
    search
        .run()
        .ifPresent(
            run ->
                add(
                    where,
                    values,
                    "s.id IN (SELECT r.scoring_id FROM run_photo r WHERE r.run_id = ?)",
                    run));
    search
        .finding()
        .ifPresent(kind -> add(where, values, "(" + TOOL_FOUND + " OR " + SAID + ")", kind.id()));
    if (search.latest()) {
      add(where, values, LATEST, search.to().map(LocalDate::toString).orElse(EVER));
    }
    String columns = search.finding().isPresent() ? SELECT_SAID : SELECT;
    String sql = columns + " WHERE " + String.join(" AND ", where) + " ORDER BY s.id";
    try (Stream<Scoring> found =
        handle
            .select(sql, values.toArray())
            .map((row, context) -> hasFinding(search, row) ? scoring(row) : null)
            .stream()) {
      found.filter(Objects::nonNull).forEach(take);
    }
  }

  /** Whether a joint has it as it counts: what the tool found does, unless anything was said. */
  private boolean hasFinding(Search search, ResultSet row) throws SQLException {
    return search.finding().isEmpty()
        || !row.getBoolean("said")
        || new RowReader(handle, row.getLong("id"))
            .read().standing().stream()
                .flatMap(joint -> joint.findings().stream())
                .anyMatch(finding -> finding.kind() == search.finding().get());
  }

  private static String saidIn(String table) {
    return "(SELECT min(x.id) FROM scoring t JOIN joint o ON o.scoring_id = t.id JOIN "
        + table
        + " x ON x.joint_id = o.id WHERE t.board_id = s.board_id) IS NOT NULL";
  }

  private static void add(List<String> where, List<Object> values, String test, Object value) {
    where.add(test);
    values.add(value);
  }

  private Method method(ResultSet row) throws SQLException {
    Method known = methods.get(row.getLong("method_id"));
    if (known == null) {
      known =
          new Method(
              JsonText.read(row.getString("settings"), Settings.class),
              row.getString("limits_sha256"),
              row.getString("tool_version"),
              Optional.ofNullable(row.getString("reader")),
              Optional.ofNullable(row.getString("bench")));
      methods.put(row.getLong("method_id"), known);
    }
    return known;
  }

  private Scoring scoring(ResultSet row) throws SQLException {
    Optional<String> reason = Optional.ofNullable(row.getString("row_reason"));
    return new Scoring(
        row.getLong("id"),
        new Subject(
            row.getString("job"),
            row.getString("board"),
            Ids.of(Stage.class, Stage::id, row.getString("stage")),
            row.getInt("attempt"),
            Optional.ofNullable(row.getString("port"))),
        photo(row),
        Path.of(row.getString("photo_path")),
        Path.of(row.getString("results")),
        method(row),
        row.getString("person"),
        time(row.getString("scored_at"), row.getString("zone")),
        Ids.of(Verdict.class, Verdict::id, row.getString("verdict")),
        RemarkTexts.one(row, "row_note", Note.class).or(() -> reason.map(NoteOfJoint.Earlier::new)),
        RemarkTexts.all(row, "row_notes", Note[].class),
        RemarkTexts.notes(row, "fitness_notes", "fitness"));
  }

  private static PhotoInfo photo(ResultSet row) throws SQLException {
    return new PhotoInfo(
        row.getString("file_name"),
        row.getString("sha256"),
        row.getInt("width_px"),
        row.getInt("height_px"),
        row.getString("format"),
        row.getInt("bits_per_channel"),
        row.getInt("exif_orientation"),
        Optional.ofNullable(row.getString("taken_at")));
  }

  public static ZonedDateTime time(String at, String zone) {
    return OffsetDateTime.parse(at).atZoneSameInstant(ZoneId.of(zone));
  }
}
