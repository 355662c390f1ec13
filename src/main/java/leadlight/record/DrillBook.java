package leadlight.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import leadlight.data.JsonText;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.book.Ids;
import leadlight.record.book.ScoringReader;
import leadlight.record.book.ScoringWriter;
import leadlight.record.engine.Engine;
import org.jdbi.v3.core.Handle;

/** Reads and writes sittings and answers; runs within a transaction. */
final class DrillBook {

  private static final String SITTINGS =
      "SELECT s.*, t.name AS person FROM sitting s JOIN trainee t ON t.id = s.trainee_id ";

  /** The last line of each pin, of specimens in their order. */
  private static final String ANSWERS =
      "SELECT a.*, s.zone FROM drill_answer a JOIN sitting s ON s.id = a.sitting_id"
          + " WHERE a.sitting_id = ? AND a.id = (SELECT max(l.id) FROM drill_answer l"
          + " WHERE l.sitting_id = a.sitting_id AND l.specimen = a.specimen AND l.pin = a.pin)"
          + " ORDER BY a.specimen, a.pin";

  private final Handle handle;

  DrillBook(Handle handle) {
    this.handle = handle;
  }

  Sitting sit(String person, Sitting.SetId set, ZonedDateTime at) {
    Optional<Sitting> open =
        handle
            .select(
                SITTINGS
                    + "WHERE t.name = ? AND s.set_key = ? AND s.own_work = ?"
                    + " AND s.ended_at IS NULL ORDER BY s.id DESC LIMIT 1",
                person,
                set.key(),
                own(set))
            .map((row, context) -> sitting(row))
            .findOne();
    return open.orElseGet(() -> begin(person, set, at));
  }

  private Sitting begin(String person, Sitting.SetId set, ZonedDateTime at) {
    handle.execute("INSERT INTO trainee (name) VALUES (?) ON CONFLICT DO NOTHING", person);
    long id =
        ScoringWriter.id(
            handle,
            "INSERT INTO sitting"
                + " (trainee_id, own_work, set_key, set_name, specimens, started_at, zone)"
                + " SELECT id, ?, ?, ?, ?, ?, ? FROM trainee WHERE name = ?",
            own(set),
            set.key(),
            set.name(),
            set.specimens(),
            ScoringWriter.time(at),
            at.getZone().getId(),
            person);
    return handle.select(SITTINGS + "WHERE s.id = ?", id).map((row, context) -> sitting(row)).one();
  }

  private static int own(Sitting.SetId set) {
    return set.ownWork() ? 1 : 0;
  }

  List<Sitting> sittings(String person) {
    return handle
        .select(SITTINGS + "WHERE t.name = ? ORDER BY s.id", person)
        .map((row, context) -> sitting(row))
        .list();
  }

  void add(long sitting, DrillAnswer answer) {
    handle.execute(
        "INSERT INTO drill_answer (sitting_id, specimen, pin, item, verdict, finding, truth,"
            + " truth_findings, tool, tool_findings, took_ms, given_at)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        sitting,
        answer.specimen(),
        answer.pin(),
        answer.item(),
        answer.said().id(),
        answer.finding().map(FindingKind::id).orElse(null),
        answer.truth().orElse(null),
        ids(answer.truthFindings()),
        answer.tool().map(Verdict::id).orElse(null),
        ids(answer.toolFindings()),
        answer.tookMs(),
        ScoringWriter.time(answer.at()));
  }

  void tell(long sitting, int specimen, ZonedDateTime at) {
    String time = ScoringWriter.time(at);
    handle.execute(
        "INSERT INTO drill_told VALUES (?, ?, ?) ON CONFLICT DO NOTHING", sitting, specimen, time);
    handle.execute(
        "UPDATE sitting SET ended_at = ? WHERE id = ? AND ended_at IS NULL"
            + " AND specimens = (SELECT count(*) FROM drill_told WHERE sitting_id = sitting.id)",
        time,
        sitting);
  }

  List<DrillAnswer> answers(long sitting) {
    return handle.select(ANSWERS, sitting).map((row, context) -> answer(row)).list();
  }

  Set<Integer> told(long sitting) {
    return new TreeSet<>(
        handle
            .select("SELECT specimen FROM drill_told WHERE sitting_id = ?", sitting)
            .mapTo(Integer.class)
            .list());
  }

  int erase(String person) {
    Engine.of(handle).beginErasing(handle);
    int sittings = sittings(person).size();
    handle.execute("DELETE FROM trainee WHERE name = ?", person);
    return sittings;
  }

  private static String ids(List<FindingKind> kinds) {
    return JsonText.of(kinds.stream().map(FindingKind::id).toList());
  }

  private static List<FindingKind> kinds(String ids) {
    return Arrays.stream(JsonText.read(ids, String[].class)).map(DrillBook::kind).toList();
  }

  private static FindingKind kind(String id) {
    return Ids.of(FindingKind.class, FindingKind::id, id);
  }

  private static Verdict verdict(String id) {
    return Ids.of(Verdict.class, Verdict::id, id);
  }

  private static Sitting sitting(ResultSet row) throws SQLException {
    String zone = row.getString("zone");
    return new Sitting(
        row.getLong("id"),
        row.getString("person"),
        new Sitting.SetId(
            row.getString("set_key"),
            row.getString("set_name"),
            row.getInt("specimens"),
            row.getBoolean("own_work")),
        ScoringReader.time(row.getString("started_at"), zone),
        Optional.ofNullable(row.getString("ended_at")).map(at -> ScoringReader.time(at, zone)));
  }

  private static DrillAnswer answer(ResultSet row) throws SQLException {
    return new DrillAnswer(
        row.getInt("specimen"),
        row.getInt("pin"),
        row.getString("item"),
        verdict(row.getString("verdict")),
        Optional.ofNullable(row.getString("finding")).map(DrillBook::kind),
        Optional.ofNullable(row.getString("truth")),
        kinds(row.getString("truth_findings")),
        Optional.ofNullable(row.getString("tool")).map(DrillBook::verdict),
        kinds(row.getString("tool_findings")),
        row.getLong("took_ms"),
        ScoringReader.time(row.getString("given_at"), row.getString("zone")));
  }
}
