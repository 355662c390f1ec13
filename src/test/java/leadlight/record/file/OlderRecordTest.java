package leadlight.record.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import leadlight.data.Hash;
import leadlight.model.FindingKind;
import leadlight.model.Opinions;
import leadlight.model.Question;
import leadlight.model.Verdict;
import leadlight.model.joint.Chances;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.model.picture.Region;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.row.RowOutcome;
import leadlight.record.DrillAnswer;
import leadlight.record.DrillRecord;
import leadlight.record.JobRecord;
import leadlight.record.Sitting;
import leadlight.record.said.RecordedJoint;
import leadlight.record.scoring.Scoring;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record from before there was a second reader is brought up to date and loses nothing. */
class OlderRecordTest {

  /** As Leadlight wrote it then: without opinions. */
  private static final String SETTINGS =
      "{\"row\":{\"connector_id\":\"plain\",\"lands\":["
          + "{\"pin\":1,\"name\":\"1\",\"u_mm\":0.0},{\"pin\":2,\"name\":\"2\",\"u_mm\":0.5},"
          + "{\"pin\":3,\"name\":\"3\",\"u_mm\":1.0}],"
          + "\"pitch_mm\":0.5,\"pin1_reversed\":false},\"product_class\":2,"
          + "\"acceptance_set\":\"ipc-a-610\"}";

  @TempDir private Path folder;
  private String url;

  @BeforeEach
  void olderRecord() throws IOException, SQLException {
    url = "jdbc:sqlite:" + folder.resolve(Database.FILE);
    migrateTo("2");
    Path photo = Files.writeString(folder.resolve("a.jpg"), "pixels");
    Path results = Files.writeString(folder.resolve("a.json"), "{}");
    execute(
        "INSERT INTO job VALUES (1, 'job')",
        "INSERT INTO board VALUES (1, 1, 'board')",
        "INSERT INTO method VALUES (1, '%s', '%s', '%s', '0.1.0')"
            .formatted("b".repeat(64), SETTINGS, "a".repeat(64)),
        "INSERT INTO photo VALUES (1, '%s', 'a.jpg', 640, 480, 'jpeg', 8, 1, NULL)"
            .formatted(Hash.sha256(photo)),
        ("INSERT INTO scoring VALUES (1, 1, 1, 1, NULL, 'final', 1, 1, '%s', '%s', 'plain', 3, 0.5,"
                + " 2, 'Ada', '2026-03-01T12:00:00Z', 'UTC', 'defect', NULL, 20, 0, 40, 'above',"
                + " 0.9, 0, '[40,0,5,0,40,6,0,0,1]', '[]')")
            .formatted(photo, results),
        joint(1, "defect"),
        joint(2, "acceptable"),
        joint(3, "acceptable"),
        "INSERT INTO finding VALUES (1, 1, 'open', '[1]', 'defect', 0.97, '', 'clause', '')");
  }

  private void migrateTo(String version) {
    Flyway.configure()
        .dataSource(url, null, null)
        .locations("classpath:leadlight/record")
        .target(version)
        .load()
        .migrate();
  }

  private static String joint(int pin, String verdict) {
    return "INSERT INTO joint VALUES (%d, 1, %1$d, '%1$d', '%s', NULL, 1, 2, 1, 2, 1, 2, 1, 2, 1, 0, 0)"
        .formatted(pin, verdict);
  }

  private void execute(String... lines) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url);
        Statement statement = connection.createStatement()) {
      for (String line : lines) {
        statement.execute(line);
      }
    }
  }

  @Test
  void itIsReadWithoutOpinionsAndIsSound() {
    try (JobRecord record = JobRecord.open(folder)) {
      Scoring scoring = record.scoring(1);
      assertThat(scoring.method().reader()).isEmpty();
      assertThat(scoring.subject().port()).as("a board had one row of a kind then").isEmpty();
      assertThat(scoring.method().settings().opinions()).isEqualTo(Opinions.MEASURES);
      RecordedJoint joint = record.row(1).joints().get(0);
      assertThat(joint.tool().verdict()).isEqualTo(Verdict.DEFECT);
      assertThat(joint.tool().findings()).extracting("kind").isEqualTo(List.of(FindingKind.OPEN));
      assertThat(joint.tool().joint().byMeasures()).isEmpty();
      assertThat(joint.tool().joint().byReader()).isEmpty();
      assertThat(record.troubles()).isEmpty();
    }
  }

  @Test
  void opinionsOfTheFourthVersionGoByTheQuestionsIds() throws SQLException {
    migrateTo("4");
    execute(
        "INSERT INTO opinion (joint_id, whose, missing, unwetted, open, excess, bridge_before,"
            + " bridge_after) VALUES (1, 'measures', 0.1, 0.2, 0.5, 0.3, 0, 0.4)",
        "INSERT INTO opinion (joint_id, whose, missing, unwetted, open, excess, bridge_before,"
            + " bridge_after, ball, over_quarter, over_half, strangeness, is_unlike,"
            + " moved_pitches) VALUES (1, 'reader', 0.1, 0.2, 0.5, 0.3, 0, 0.4, 0.5, 0.6, 0.7,"
            + " 0.25, 0, '[-1,0,1,2]')");
    try (JobRecord record = JobRecord.open(folder)) {
      Joint joint = record.row(1).joints().get(0).tool().joint();
      Chances measures = joint.byMeasures().orElseThrow();
      assertThat(measures.of(Question.BRIDGE_BEFORE)).isZero();
      assertThat(measures.of(Question.BRIDGE_AFTER)).isEqualTo(0.4);
      assertThat(measures.answers())
          .as("what was not asked then has no answer")
          .doesNotContainKeys(Question.BALL, Question.OVER_QUARTER, Question.OVER_HALF);
      Reading reading = joint.byReader().orElseThrow();
      assertThat(reading.chances().answers()).hasSize(Question.values().length);
      assertThat(reading.chances().of(Question.OVER_HALF)).isEqualTo(0.7);
      assertThat(reading.strangeness()).isEqualTo(0.25);
      assertThat(reading.moved()).contains(new Region(-1, 0, 1, 2));
    }
  }

  @Test
  void sentencesOfThenAreReadAsWordsOfEarlier() throws SQLException {
    execute(
        "UPDATE joint SET verdict = 'unjudged', unjudged_because = 'glare; dim it' WHERE id = 2",
        "UPDATE finding SET evidence = 'step 0.42'",
        "UPDATE scoring SET fitness = '[\"Soft.\"]'");
    try (JobRecord record = JobRecord.open(folder)) {
      GradedJoint joint = record.row(1).joints().get(1).tool();
      assertThat(joint.doubts()).containsExactly(new Doubt.Earlier("glare; dim it"));
      assertThat(record.scoring(1).fitness()).containsExactly(new NoteOfJoint.Earlier("Soft."));
      assertThat(record.row(1).joints().get(0).tool().findings().get(0).measured())
          .contains(new NoteOfJoint.Earlier("step 0.42"));
    }
  }

  @Test
  void aReasonOfThenWhyNoRowWasFoundIsKept() throws SQLException {
    execute("UPDATE scoring SET row_reason = 'too dark', mm_to_px = NULL");
    try (JobRecord record = JobRecord.open(folder)) {
      assertThat(record.scoring(1).rowReason()).contains(new NoteOfJoint.Earlier("too dark"));
      assertThat(((RowOutcome.NotFound) record.row(1).outcome()).reason())
          .isEqualTo(new NoteOfJoint.Earlier("too dark"));
    }
  }

  @Test
  void verifyMissesAnOpinionThatWasAskedFor() throws SQLException {
    JobRecord.open(folder).close();
    execute("UPDATE method SET reader = '0123456789ab'");
    try (JobRecord record = JobRecord.open(folder)) {
      assertThat(record.troubles())
          .contains("scoring 1 lacks the second reader's opinion on 3 joints");
    }
  }

  /** The seventh version called a practice set a deck, and what is asked in it a card. */
  @Test
  void sittingsOfTheSeventhVersionGoOnUnderTheirNewNames() throws SQLException {
    migrateTo("7");
    execute(
        "INSERT INTO trainee VALUES (1, 'Ada')",
        "INSERT INTO sitting VALUES (1, 1, 0, '%s', 'first week', 2, '2026-03-01T12:00:00Z',"
                .formatted("d".repeat(64))
            + " 'UTC', NULL)",
        "INSERT INTO drill_answer VALUES (1, 1, 1, 5, 'a.jpg pin 5', 'defect', 'open', 'defect',"
            + " '[\"open\"]', NULL, '[]', 900, '2026-03-01T12:01:00Z')",
        "INSERT INTO drill_told VALUES (1, 1, '2026-03-01T12:01:00Z')");
    try (DrillRecord record = DrillRecord.open(folder)) {
      Sitting sitting = record.sittings("Ada").get(0);
      assertThat(sitting.set())
          .isEqualTo(new Sitting.SetId("d".repeat(64), "first week", 2, false));
      assertThat(record.answers(1)).extracting(DrillAnswer::specimen).containsExactly(1);
      assertThat(record.told(1)).containsExactly(1);
    }
  }
}
