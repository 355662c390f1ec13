package leadlight.record.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.data.JsonText;
import leadlight.model.BodySide;
import leadlight.model.FindingKind;
import leadlight.model.Homography;
import leadlight.model.Measure;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.Reason;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.record.said.RecordedJoint;
import leadlight.record.said.RecordedRow;
import org.jdbi.v3.core.Handle;

/** Reads the row of one scoring with its joints and all that was said of them. */
public final class RowReader {

  private static final String OF_SCORING =
      " JOIN joint j ON j.id = x.joint_id WHERE j.scoring_id = ? ORDER BY x.joint_id, ";

  private final Handle handle;
  private final long scoring;
  private final Map<Long, Map<Measure, Quantity>> measures = new HashMap<>();
  private final Map<Long, List<Finding>> findings = new HashMap<>();
  private final Map<Long, OpinionBook.Two> opinions;
  private final SaidBook said;

  public RowReader(Handle handle, long scoring) {
    this.handle = handle;
    this.scoring = scoring;
    this.opinions = new OpinionBook(handle).read(scoring);
    this.said = SaidBook.read(handle, scoring);
  }

  public RecordedRow read() {
    each("SELECT x.* FROM measure x" + OF_SCORING + "x.name", this::measure);
    each("SELECT x.* FROM finding x" + OF_SCORING + "x.id", this::finding);
    List<RecordedJoint> joints =
        handle
            .select("SELECT * FROM joint WHERE scoring_id = ? ORDER BY pin", scoring)
            .map((row, context) -> joint(row))
            .list();
    List<Lead> leads = joints.stream().map(joint -> joint.tool().joint().lead()).toList();
    RowOutcome outcome =
        handle
            .select("SELECT * FROM scoring WHERE id = ?", scoring)
            .map((row, context) -> outcome(row, leads))
            .one();
    return new RecordedRow(outcome, joints);
  }

  private interface RowTaker {
    void take(ResultSet row) throws SQLException;
  }

  private void each(String sql, RowTaker taker) {
    handle
        .select(sql, scoring)
        .map(
            (row, context) -> {
              taker.take(row);
              return true;
            })
        .list();
  }

  private void measure(ResultSet row) throws SQLException {
    Measure measure = Ids.of(Measure.class, Measure::id, row.getString("name"));
    measures
        .computeIfAbsent(row.getLong("joint_id"), joint -> new EnumMap<>(Measure.class))
        .put(measure, new Quantity(row.getDouble("value"), row.getDouble("u"), measure.unit()));
  }

  private void finding(ResultSet row) throws SQLException {
    list(findings, row)
        .add(
            new Finding(
                Ids.of(FindingKind.class, FindingKind::id, row.getString("kind")),
                Arrays.asList(JsonText.read(row.getString("pins"), Integer[].class)),
                verdict(row),
                row.getDouble("probability"),
                share(row),
                measured(row),
                row.getString("reasons") == null
                    ? List.of()
                    : List.of(JsonText.read(row.getString("reasons"), Reason[].class)),
                row.getString("clause"),
                row.getString("settle_by")));
  }

  private static OptionalDouble share(ResultSet row) throws SQLException {
    double share = row.getDouble("share");
    return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(share);
  }

  /** Older findings have their evidence in words alone. */
  private static Optional<Note> measured(ResultSet row) throws SQLException {
    boolean older = row.getString("reasons") == null && !row.getString("evidence").isEmpty();
    return older
        ? Optional.of(new NoteOfJoint.Earlier(row.getString("evidence")))
        : RemarkTexts.one(row, "measured", Note.class);
  }

  private static <T> List<T> list(Map<Long, List<T>> lists, ResultSet row) throws SQLException {
    return lists.computeIfAbsent(row.getLong("joint_id"), joint -> new ArrayList<>());
  }

  private static Verdict verdict(ResultSet row) throws SQLException {
    return Ids.of(Verdict.class, Verdict::id, row.getString("verdict"));
  }

  private RecordedJoint joint(ResultSet row) throws SQLException {
    long id = row.getLong("id");
    Lead lead =
        new Lead(
            row.getInt("pin"),
            point(row, "toe"),
            point(row, "heel"),
            point(row, "land_toe"),
            point(row, "land_heel"),
            row.getDouble("match"),
            row.getDouble("u_across_px"),
            row.getDouble("u_along_px"));
    OpinionBook.Two two = opinions.getOrDefault(id, OpinionBook.Two.NONE);
    return new RecordedJoint(
        new GradedJoint(
            new Joint(
                lead,
                measures.getOrDefault(id, Map.of()),
                List.of(),
                RemarkTexts.one(row, "unfit", Doubt.class),
                two.measures(),
                two.reader()),
            verdict(row),
            findings.getOrDefault(id, List.of()),
            List.of(),
            doubts(row),
            RemarkTexts.all(row, "grounds", Note[].class)),
        said.overrules(lead.pin()),
        said.bench(lead.pin()),
        said.takenBack(lead.pin()));
  }

  /** Older joints have theirs in words alone. */
  private static List<Doubt> doubts(ResultSet row) throws SQLException {
    String words = row.getString("unjudged_because");
    return words != null && row.getString("doubts") == null
        ? List.of(new Doubt.Earlier(words))
        : RemarkTexts.all(row, "doubts", Doubt[].class);
  }

  private static PointPx point(ResultSet row, String name) throws SQLException {
    return new PointPx(row.getDouble(name + "_x_px"), row.getDouble(name + "_y_px"));
  }

  private static RowOutcome outcome(ResultSet row, List<Lead> leads) throws SQLException {
    String reason = row.getString("row_reason");
    if (reason != null) {
      return new RowOutcome.NotFound(
          RemarkTexts.one(row, "row_note", Note.class).orElse(new NoteOfJoint.Earlier(reason)),
          List.of());
    }
    return new RowOutcome.Found(
        new Homography(JsonText.read(row.getString("mm_to_px"), double[].class)),
        leads,
        row.getDouble("pitch_px"),
        row.getDouble("angle_rad"),
        row.getDouble("scale_px_per_mm"),
        Ids.of(BodySide.class, BodySide::id, row.getString("body_side")),
        row.getDouble("confidence"),
        row.getDouble("tilt_rad"),
        List.of());
  }
}
