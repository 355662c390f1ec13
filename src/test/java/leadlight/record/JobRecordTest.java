package leadlight.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.data.Hash;
import leadlight.model.BodySide;
import leadlight.model.FaultChances;
import leadlight.model.Finding;
import leadlight.model.FindingKind;
import leadlight.model.GradedJoint;
import leadlight.model.Homography;
import leadlight.model.Joint;
import leadlight.model.Lead;
import leadlight.model.Measure;
import leadlight.model.PhotoInfo;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.Reading;
import leadlight.model.Region;
import leadlight.model.RowOutcome;
import leadlight.model.RowSpec;
import leadlight.model.ScoredPhoto;
import leadlight.model.Settings;
import leadlight.model.Unit;
import leadlight.model.UserError;
import leadlight.model.Verdict;
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

  private static GradedJoint joint(int pin, Verdict verdict) {
    PointPx place = new PointPx(10.25 * pin, 20);
    Lead lead = new Lead(pin, place, place, place, place, 0.9, 0.1, 0.2);
    List<Finding> findings =
        verdict == Verdict.DEFECT
            ? List.of(
                new Finding(
                    FindingKind.BRIDGE, List.of(pin, pin + 1), verdict, 0.97, "e", "c", "meter it"))
            : List.of();
    Optional<String> why = verdict == Verdict.UNJUDGED ? Optional.of("glare") : Optional.empty();
    return new GradedJoint(
        new Joint(
            lead,
            Map.of(Measure.SIDE_OVERHANG, new Quantity(0.1, 0.02, Unit.MM)),
            List.of(),
            why,
            Optional.of(
                new FaultChances(0.01, 0.02, 0.5, 0.03, 0.04, 0.11 * pin, 0.013, 0.014, 0.015)),
            Optional.of(reading(pin))),
        verdict,
        findings,
        why);
  }

  private static Reading reading(int pin) {
    return new Reading(
        new FaultChances(0.06, 0.07, 0.6, 0.08, 0.09, 0.12 * pin, 0.023, 0.024, 0.025),
        0.3 * pin,
        pin == 3,
        OptionalDouble.empty(),
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
        info, SETTINGS, row, joints, Verdict.DEFECT, List.of("Closer."), List.of("x"), List.of());
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
    try (JobRecord record = JobRecord.open(folder.resolve("record"))) {
      id = record.add(run(record, "one"), scoring(false));
    }
    try (JobRecord record = JobRecord.open(folder.resolve("record"))) {
      Scoring scoring = record.scoring(id);
      assertThat(scoring.subject()).isEqualTo(SUBJECT);
      assertThat(scoring.photo()).isEqualTo(scored().photo());
      assertThat(scoring.photoPath()).isEqualTo(photo);
      assertThat(scoring.method()).isEqualTo(METHOD);
      assertThat(scoring.scoredAt()).isEqualTo(NOON);
      assertThat(scoring.fitness()).containsExactly("Closer.");
      RecordedRow row = record.row(id);
      assertThat(row.joints()).extracting(RecordedJoint::tool).isEqualTo(scored().joints());
      assertThat(((RowOutcome.Found) row.outcome()).mmToPx().rowMajor())
          .containsExactly(40, 0, 5, 0, 40, 6, 0, 0, 1);
      assertThat(record.troubles()).isEmpty();
    }
  }

  @Test
  void anEqualScoringIsKeptOnceUnlessOneMoreIsAskedFor() throws IOException {
    try (JobRecord record = JobRecord.open(folder)) {
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
    try (JobRecord record = JobRecord.open(folder)) {
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
    try (JobRecord record = JobRecord.open(folder)) {
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
    try (JobRecord record = JobRecord.open(folder)) {
      record.add(run(record, "one"), scoring(false));
      Files.writeString(photo, "other pixels");
      Files.delete(results);

      assertThat(record.troubles())
          .hasSize(2)
          .anyMatch(line -> line.contains("photo was changed"))
          .anyMatch(line -> line.contains("results are gone"));
    }
  }

  @Test
  void anotherReaderIsAnotherMethod() throws IOException {
    Method other =
        new Method(SETTINGS, METHOD.limitsSha256(), METHOD.toolVersion(), Optional.of("new"));
    try (JobRecord record = JobRecord.open(folder)) {
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
