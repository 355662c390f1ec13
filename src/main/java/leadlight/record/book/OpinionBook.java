package leadlight.record.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import leadlight.data.JsonText;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.model.picture.Region;
import org.jdbi.v3.core.Handle;

/** Reads and writes the two opinions on a joint's solder; runs within a transaction. */
final class OpinionBook {

  private static final String MEASURES = "measures";
  private static final String READER = "reader";

  private final Handle handle;

  OpinionBook(Handle handle) {
    this.handle = handle;
  }

  void write(long joint, Joint measured) {
    measured.byMeasures().ifPresent(chances -> insert(joint, MEASURES, chances, Optional.empty()));
    measured
        .byReader()
        .ifPresent(reading -> insert(joint, READER, reading.chances(), Optional.of(reading)));
  }

  private void insert(long joint, String whose, Chances chances, Optional<Reading> reading) {
    handle.execute(
        "INSERT INTO opinion (joint_id, whose, chances, strangeness, is_unlike, moved_pitches)"
            + " VALUES (?, ?, ?, ?, ?, ?)",
        joint,
        whose,
        JsonText.of(chances),
        reading.map(Reading::strangeness).orElse(null),
        reading.map(it -> it.unlike() ? 1 : 0).orElse(null),
        reading.flatMap(Reading::moved).map(OpinionBook::corners).orElse(null));
  }

  private static String corners(Region region) {
    return JsonText.of(new double[] {region.x0(), region.y0(), region.x1(), region.y1()});
  }

  /** Both opinions on one joint; either is empty if it was not kept. */
  record Two(Optional<Chances> measures, Optional<Reading> reader) {

    static final Two NONE = new Two(Optional.empty(), Optional.empty());
  }

  /** The opinions on a scoring's joints, by the joint's key. */
  Map<Long, Two> read(long scoring) {
    Map<Long, Two> found = new HashMap<>();
    handle
        .select(
            "SELECT o.* FROM opinion o JOIN joint j ON j.id = o.joint_id"
                + " WHERE j.scoring_id = ?",
            scoring)
        .map((row, context) -> found.merge(row.getLong("joint_id"), two(row), OpinionBook::joined))
        .list();
    return found;
  }

  private static Two joined(Two a, Two b) {
    return new Two(a.measures().or(b::measures), a.reader().or(b::reader));
  }

  private static Two two(ResultSet row) throws SQLException {
    Chances chances = JsonText.read(row.getString("chances"), Chances.class);
    if (row.getString("whose").equals(MEASURES)) {
      return new Two(Optional.of(chances), Optional.empty());
    }
    Optional<Region> moved =
        Optional.ofNullable(row.getString("moved_pitches"))
            .map(text -> JsonText.read(text, double[].class))
            .map(corner -> new Region(corner[0], corner[1], corner[2], corner[3]));
    return new Two(
        Optional.empty(),
        Optional.of(
            new Reading(
                chances, row.getDouble("strangeness"), row.getBoolean("is_unlike"), moved)));
  }
}
