package leadlight.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.data.Hash;
import leadlight.model.BodySide;
import leadlight.model.FindingKind;
import leadlight.model.Homography;
import leadlight.model.Measure;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.Unit;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.model.picture.Region;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.remark.Reason;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.record.engine.RecordPlace;
import leadlight.record.file.Database;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.Overrule;
import leadlight.record.said.RecordedJoint;
import leadlight.record.said.RecordedRow;
import leadlight.record.scoring.Method;
import leadlight.record.scoring.NewScoring;
import leadlight.record.scoring.RunStart;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobRecordTest {

  private static final ZonedDateTime NOON =
      ZonedDateTime.of(2026, 3, 1, 12, 0, 0, 0, ZoneId.of("Europe/London"));
  private static final Subject SUBJECT = new Subject("job", "board", Stage.AFTER_REWORK, 2);
  private static final Settings SETTINGS =
      new Settings(
          RowSpec.plain(3, 0.5, OptionalDouble.empty(), OptionalDouble.of(0.3)),
          2,
          "ipc-a-610",
          Optional.empty());
  private static final Method METHOD =
      new Method(SETTINGS, "a".repeat(64), "0.1.0", Optional.of("0123456789ab"));

  @TempDir private Path folder;
  private Path photo;
  private Path results;

  @BeforeEach
  void files() throws IOException {
    photo = Files.writeString(folder.resolve("a'b\n\u00e9.jpg"), "pixels");
    results = Files.writeString(folder.resolve("r.json"), "{}");
  }

  /** Where a record of that name lies; on a server in SharedRecordTests. */
  RecordPlace at(Path path) {
    return new RecordPlace.Folder(path);
  }

  private static GradedJoint joint(int pin, Verdict verdict) {
    PointPx place = new PointPx(10.25 * pin, 20);
    Lead lead = new Lead(pin, place, place, place, place, 0.9, 0.1, 0.2);
    List<Finding> findings =
        verdict == Verdict.DEFECT
            ? List.of(
                new Finding(
                    FindingKind.BRIDGE,
                    List.of(pin, pin + 1),
                    verdict,
                    0.97,
                    OptionalDouble.of(0.75),
                    Optional.of(new NoteOfJoint.AgainstLimit(0.13, 0.01, 0.1)),
                    List.of(new Reason("gap_span", 0.5, 0.1, 2)),
                    "c",
                    "meter it"))
            : List.of();
    boolean unjudged = verdict == Verdict.UNJUDGED;
    Doubt glare = new Doubt.Glare(0.42);
    return new GradedJoint(
        new Joint(
            lead,
            Map.of(Measure.SIDE_OVERHANG, new Quantity(0.1, 0.02, Unit.MM)),
            List.of(),
            unjudged ? Optional.of(glare) : Optional.empty(),
            Optional.of(chances(0.011 * pin)),
            Optional.of(reading(pin))),
        verdict,
        findings,
        List.of(),
        unjudged ? List.of(glare, new Doubt.UnlikeKnown()) : List.of(),
        verdict == Verdict.ACCEPTABLE ? List.of(new NoteOfJoint.LeadSeen(0.001)) : List.of());
  }

  /** Another chance for each question. */
  private static Chances chances(double step) {
    return Chances.of(question -> step * (1 + question.ordinal()));
  }

  private static Reading reading(int pin) {
    return new Reading(
        chances(0.012 * pin),
        0.3 * pin,
        pin == 3,
        pin == 1 ? Optional.of(new Region(-0.5, -1, 0.25, 0.125)) : Optional.empty());
  }

  private ScoredPhoto scored() throws IOException {
    List<GradedJoint> joints =
        List.of(joint(1, Verdict.DEFECT), joint(2, Verdict.UNJUDGED), joint(3, Verdict.ACCEPTABLE));
    RowOutcome.Found row =
        new RowOutcome.Found(
            new Homography(40, 0, 5, 0, 40, 6, 0, 0, 1),
            joints.stream().map(joint -> joint.joint().lead()).toList(),
            20,
            0.01,
            40,
            BodySide.ABOVE,
            0.8,
            0.02,
            List.of());
    PhotoInfo info =
        new PhotoInfo(
            photo.getFileName().toString(),
            Hash.sha256(photo),
            640,
            480,
            "jpeg",
            8,
            1,
            Optional.of("2026-03-01T11:59:00"));
    return new ScoredPhoto(
        info,
        SETTINGS,
        row,
        Optional.empty(),
        joints,
        Verdict.DEFECT,
        List.of(new NoteOfRow.AlikeThroughout()),
        List.of(new NoteOfPhoto.BurntOut(0.2)),
        List.of(new NoteOfPhoto.Advice("hidden", 3)),
        List.of());
  }

  private NewScoring scoring(boolean again) throws IOException {
    return new NewScoring(SUBJECT, photo, scored(), METHOD, results, "Ada", NOON, again);
  }

  private long run(JobRecord record, String name) {
    return record.startRun(new RunStart(folder.resolve(name), "source", "Ada", NOON, "0.1.0"));
  }

  @Test
  void whatGoesInComesOut() throws IOException {
    long id;
    try (JobRecord record = JobRecord.open(at(folder.resolve("record")))) {
      id = record.add(run(record, "one"), scoring(false));
    }
    try (JobRecord record = JobRecord.open(at(folder.resolve("record")))) {
      Scoring scoring = record.scoring(id);
      assertThat(scoring.subject()).isEqualTo(SUBJECT);
      assertThat(scoring.photo()).isEqualTo(scored().photo());
      assertThat(scoring.photoPath()).isEqualTo(photo);
      assertThat(scoring.method()).isEqualTo(METHOD);
      assertThat(scoring.scoredAt()).isEqualTo(NOON);
      assertThat(scoring.fitness()).containsExactly(new NoteOfPhoto.BurntOut(0.2));
      assertThat(scoring.rowNotes()).containsExactly(new NoteOfRow.AlikeThroughout());
      RecordedRow row = record.row(id);
      assertThat(row.joints()).extracting(RecordedJoint::tool).isEqualTo(scored().joints());
      assertThat(((RowOutcome.Found) row.outcome()).mmToPx().rowMajor())
          .containsExactly(40, 0, 5, 0, 40, 6, 0, 0, 1);
      assertThat(record.troubles()).isEmpty();
    }
  }

  @Test
  void sentencesStandBesideTheCodesForReadersOfTheTables() throws Exception {
    try (JobRecord record = JobRecord.open(at(folder))) {
      record.add(run(record, "one"), scoring(false));
    }
    String url = "jdbc:sqlite:" + folder.resolve(Database.FILE);
    try (Connection connection = DriverManager.getConnection(url);
        Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery(
                "SELECT j.unjudged_because, s.fitness FROM joint j JOIN scoring s"
                    + " ON s.id = j.scoring_id WHERE j.verdict = 'unjudged'")) {
      assertThat(row.getString(1)).startsWith("glare burns out 42 % of the joint; ");
      assertThat(row.getString(2)).startsWith("[\"20 % of the picture is burnt out");
    }
  }

  @Test
  void anEqualScoringIsKeptOnceUnlessOneMoreIsAskedFor() throws IOException {
    try (JobRecord record = JobRecord.open(at(folder))) {
      long run = run(record, "one");
      long first = record.add(run, scoring(false));

      assertThat(record.add(run(record, "two"), scoring(false))).isEqualTo(first);
      assertThat(record.add(run, scoring(true))).isGreaterThan(first);
      assertThat(record.scorings(Search.all())).hasSize(2);
      assertThat(record.scorings(Search.all().latestOnly())).hasSize(1);
    }
  }

  @Test
  void aPersonsOpinionStandsBesideTheTools() throws IOException {
    try (JobRecord record = JobRecord.open(at(folder))) {
      long id = record.add(run(record, "one"), scoring(false));
      Overrule opinion =
          new Overrule(Verdict.ACCEPTABLE, Optional.empty(), "a reflection", "Grace", NOON);
      BenchResult bench = new BenchResult(BenchTest.METER, "ok", OptionalInt.of(2), "Grace", NOON);

      record.overrule(id, 1, opinion);
      record.bench(id, 1, bench);

      RecordedJoint joint = record.row(id).joints().get(0);
      assertThat(joint.tool().verdict()).isEqualTo(Verdict.DEFECT);
      assertThat(joint.verdict()).isEqualTo(Verdict.ACCEPTABLE);
      assertThat(joint.overrules()).containsExactly(opinion);
      assertThat(joint.bench()).containsExactly(bench);
      assertThatThrownBy(() -> record.overrule(id, 9, opinion))
          .isInstanceOf(UserError.class)
          .hasMessageContaining("no pin 9");
    }
  }

  @Test
  void aSearchFindsByJobDayConnectorAndFinding() throws IOException {
    try (JobRecord record = JobRecord.open(at(folder))) {
      record.add(run(record, "one"), scoring(false));
      Search all = Search.all();

      assertThat(record.scorings(search(all, "job", FindingKind.BRIDGE))).hasSize(1);
      assertThat(record.scorings(search(all, "job", FindingKind.VOID))).isEmpty();
      assertThat(record.scorings(search(all, "other", FindingKind.BRIDGE))).isEmpty();
    }
  }

  private static Search search(Search all, String job, FindingKind finding) {
    return new Search(
        Optional.of(job),
        all.board(),
        Optional.of(NOON.toLocalDate()),
        Optional.of(NOON.toLocalDate()),
        Optional.of("plain"),
        Optional.of(finding),
        all.run(),
        false);
  }

  @Test
  void verifyNamesAChangedPhotoAndLostResults() throws IOException {
    try (JobRecord record = JobRecord.open(at(folder))) {
      record.add(run(record, "one"), scoring(false));
      Files.writeString(photo, "other pixels");
      Files.delete(results);

      assertThat(record.troubles())
          .hasSize(3)
          .anyMatch(line -> line.contains("photo was changed"))
          .anyMatch(line -> line.contains("results are gone"));
    }
  }

  @Test
  void anotherReaderIsAnotherMethod() throws IOException {
    Method other =
        new Method(SETTINGS, METHOD.limitsSha256(), METHOD.toolVersion(), Optional.of("new"));
    try (JobRecord record = JobRecord.open(at(folder))) {
      record.add(run(record, "one"), scoring(false));
      String name = photo.getFileName().toString();

      assertThat(record.find(SUBJECT, name, Hash.sha256(photo), METHOD)).isPresent();
      assertThat(record.find(SUBJECT, name, Hash.sha256(photo), other)).isEmpty();
    }
  }

  @Test
  void aForeignFileIsRefusedInOneLine() throws IOException {
    Files.writeString(folder.resolve(Database.FILE), "no database, but long enough ".repeat(50));

    assertThatThrownBy(() -> JobRecord.open(folder))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("damaged or no record");
  }
}
