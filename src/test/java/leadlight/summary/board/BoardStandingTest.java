package leadlight.summary.board;

import static leadlight.record.said.LifeEvent.Kind.FUNCTION_TEST;
import static leadlight.record.said.LifeEvent.Kind.HAND_BACK;
import static leadlight.record.said.LifeEvent.Kind.HEAT;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import leadlight.data.Hash;
import leadlight.model.BodySide;
import leadlight.model.FindingKind;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.record.JobRecord;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.LegsSeen;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.Overrule;
import leadlight.record.scoring.Method;
import leadlight.record.scoring.NewScoring;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import leadlight.summary.board.BoardStanding.Code;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A board is not handed back against anything that is recorded of it. */
class BoardStandingTest {

  private static final ZonedDateTime NOON =
      ZonedDateTime.of(2026, 11, 28, 12, 0, 0, 0, ZoneOffset.UTC);

  @TempDir private Path folder;
  private JobRecord record;
  private int minute;

  @BeforeEach
  void open() {
    record = JobRecord.open(folder.resolve("record"));
  }

  @AfterEach
  void close() {
    record.close();
  }

  private ZonedDateTime later() {
    return NOON.plusMinutes(minute++);
  }

  /** A photo of a row of which some pins are defects. */
  private long photo(int leads, Stage stage, int attempt, Integer... bad) throws IOException {
    return photo(Optional.empty(), leads, stage, attempt, bad);
  }

  private long photo(Optional<String> port, int leads, Stage stage, int attempt, Integer... bad)
      throws IOException {
    ZonedDateTime at = later();
    Path file = Files.writeString(folder.resolve("p" + minute + ".jpg"), "photo " + minute);
    Settings settings =
        new Settings(
            RowSpec.plain(leads, 0.5, OptionalDouble.empty(), OptionalDouble.empty()),
            2,
            "ipc-a-610",
            Optional.empty());
    List<GradedJoint> joints =
        IntStream.rangeClosed(1, leads)
            .mapToObj(pin -> joint(pin, List.of(bad).contains(pin)))
            .toList();
    PhotoInfo info =
        new PhotoInfo(
            file.getFileName().toString(),
            Hash.sha256(file),
            640,
            480,
            "jpeg",
            8,
            1,
            Optional.empty());
    ScoredPhoto scored =
        new ScoredPhoto(
            info,
            settings,
            found(joints),
            Optional.empty(),
            joints,
            bad.length > 0 ? Verdict.DEFECT : Verdict.ACCEPTABLE,
            List.of(),
            List.of(),
            List.of(),
            List.of());
    return record.add(
        new NewScoring(
            new Subject("job", "board", stage, attempt, port),
            file,
            scored,
            new Method(settings, "a".repeat(64), "0.1.0", Optional.empty()),
            Files.writeString(folder.resolve("p" + minute + ".json"), "{}"),
            "Ada",
            at,
            false));
  }

  private static RowOutcome.Found found(List<GradedJoint> joints) {
    return new RowOutcome.Found(
        new Homography(40, 0, 5, 0, 40, 6, 0, 0, 1),
        joints.stream().map(joint -> joint.joint().lead()).toList(),
        20,
        0.01,
        40,
        BodySide.ABOVE,
        0.8,
        0,
        List.of());
  }

  private static GradedJoint joint(int pin, boolean bad) {
    PointPx at = new PointPx(20 * pin, 100);
    Finding open =
        new Finding(
            FindingKind.OPEN,
            List.of(pin),
            Verdict.DEFECT,
            0.99,
            OptionalDouble.empty(),
            Optional.empty(),
            List.of(),
            "clause",
            "");
    return new GradedJoint(
        new Joint(
            new Lead(pin, at, at, at, at, 0.9, 0.1, 0.2), Map.of(), List.of(), Optional.empty()),
        bad ? Verdict.DEFECT : Verdict.ACCEPTABLE,
        bad ? List.of(open) : List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private void bench(long scoring, int pin, BenchTest test, String result, int other) {
    OptionalInt to = other > 0 ? OptionalInt.of(other) : OptionalInt.empty();
    record.bench(scoring, pin, new BenchResult(test, result, to, "Ada", later()));
  }

  private void event(LifeEvent.Kind kind, Boolean good, Integer... pins) {
    record.add(
        "job",
        "board",
        new LifeEvent(kind, "words", List.of(pins), Optional.ofNullable(good), "Ada", later()));
  }

  private BoardStanding board() {
    return BoardStanding.of(record, "job", "board", 3);
  }

  private List<Code> codes() {
    return board().open().stream().map(BoardStanding.Point::code).toList();
  }

  /** Legs are a photo of their own: the last one of a side counts. */
  @Test
  void aDefectOfALegForbidsTheHandBackUntilThatSideIsSeenAgain() throws IOException {
    photo(5, Stage.FINAL, 1);
    legs("solder", Verdict.DEFECT, Verdict.UNJUDGED);
    legs("component", Verdict.UNJUDGED);
    BoardStanding bad = BoardStanding.of(record, "job", "board", 3);
    assertThat(bad.mayBeHandedBack()).isFalse();
    assertThat(bad.open())
        .contains(
            new BoardStanding.Point(Code.LEG_DEFECT, List.of(), "1"),
            new BoardStanding.Point(Code.LEGS_UNJUDGED, List.of(), "2"));

    legs("solder", Verdict.ACCEPTABLE, Verdict.ACCEPTABLE);
    BoardStanding good = BoardStanding.of(record, "job", "board", 3);
    assertThat(good.mayBeHandedBack()).isTrue();
    assertThat(good.open())
        .as("the solder side vouches for what the component side cannot")
        .extracting(BoardStanding.Point::code)
        .doesNotContain(Code.LEGS_UNJUDGED);
    assertThat(record.troubles()).isEmpty();
  }

  private static LegsSeen.Leg leg(int number, Verdict verdict) {
    return new LegsSeen.Leg(number == 0 ? OptionalInt.empty() : OptionalInt.of(number), verdict);
  }

  @Test
  void aFaultyLegIsNotForgottenForAnotherLegAnotherConnectorOrAnEmptyPhoto() throws IOException {
    photo(5, Stage.FINAL, 1);
    legs("solder", Optional.empty(), leg(1, Verdict.DEFECT));
    legs("solder", Optional.empty(), leg(3, Verdict.ACCEPTABLE));
    legs("solder", Optional.empty());
    legs("solder", Optional.of("B"), leg(1, Verdict.ACCEPTABLE));
    BoardStanding board = BoardStanding.of(record, "job", "board", 3);
    assertThat(board.mayBeHandedBack()).isFalse();
    assertThat(board.verdict()).isEqualTo(Verdict.DEFECT);

    legs("solder", Optional.empty(), leg(1, Verdict.ACCEPTABLE));
    assertThat(BoardStanding.of(record, "job", "board", 3).mayBeHandedBack()).isTrue();
  }

  @Test
  void legsWithoutNumbersAreMendedOnlyByAPhotoOfAsMany() throws IOException {
    photo(5, Stage.FINAL, 1);
    legs("solder", Optional.empty(), leg(0, Verdict.DEFECT), leg(0, Verdict.ACCEPTABLE));
    legs("solder", Optional.empty(), leg(0, Verdict.ACCEPTABLE));
    assertThat(BoardStanding.of(record, "job", "board", 3).mayBeHandedBack()).isFalse();

    LegsSeen.Leg sound = leg(0, Verdict.ACCEPTABLE);
    legs("solder", Optional.empty(), sound, sound, sound);
    assertThat(BoardStanding.of(record, "job", "board", 3).mayBeHandedBack()).isTrue();
  }

  @Test
  void aHeatIsNotMadeGoodByThePhotoOfAnotherPort() throws IOException {
    photo(Optional.of("A"), 5, Stage.AFTER_REWORK, 1);
    photo(Optional.of("B"), 5, Stage.AFTER_REWORK, 1);
    record.add(
        "job", "board", new LifeEvent(HEAT, "iron", List.of(3), Optional.empty(), "Ada", later()));
    photo(Optional.of("B"), 5, Stage.FINAL, 1);
    assertThat(BoardStanding.of(record, "job", "board", 3).open())
        .contains(new BoardStanding.Point(Code.HEATED_SINCE, List.of(3), ""));
  }

  private void legsOf(int attempt, Verdict... verdicts) {
    LegsSeen seen =
        new LegsSeen(
            "legs.jpg",
            photoHash(),
            "solder",
            IntStream.rangeClosed(1, verdicts.length)
                .mapToObj(leg -> leg(leg, verdicts[leg - 1]))
                .toList(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(new LegsSeen.Work("final", attempt, "as usual")));
    record.add("job", "board", LifeEvent.said(LifeEvent.Kind.LEGS, seen.words(), "Ada", later()));
  }

  @Test
  void ofPhotosOfTheSameWorkNoneMakesAFaultOfTheOtherGood() throws IOException {
    photo(5, Stage.FINAL, 1);
    legsOf(1, Verdict.ACCEPTABLE, Verdict.DEFECT);
    legsOf(1, Verdict.ACCEPTABLE, Verdict.ACCEPTABLE);
    assertThat(board().mayBeHandedBack()).isFalse();
    assertThat(board().verdict()).isEqualTo(Verdict.DEFECT);
    legsOf(2, Verdict.ACCEPTABLE, Verdict.ACCEPTABLE);
    assertThat(board().mayBeHandedBack()).isTrue();
  }

  /** Each time another photo's. */
  private String photoHash() {
    return "%064x".formatted(++minute);
  }

  private void legs(String side, Verdict... verdicts) {
    legs(
        side,
        Optional.empty(),
        IntStream.rangeClosed(1, verdicts.length)
            .mapToObj(leg -> leg(leg, verdicts[leg - 1]))
            .toArray(LegsSeen.Leg[]::new));
  }

  private void legs(String side, Optional<String> port, LegsSeen.Leg... legs) {
    LegsSeen seen =
        new LegsSeen(
            "legs.jpg", photoHash(), side, List.of(legs), port, Optional.empty(), Optional.empty());
    record.add("job", "board", LifeEvent.said(LifeEvent.Kind.LEGS, seen.words(), "Ada", later()));
  }

  /** Two equal connectors: the later photo of port B is no photo of port A. */
  @Test
  void twoPortsOfOneBoardAreTwoRows() throws IOException {
    photo(Optional.of("A"), 5, Stage.AS_RECEIVED, 1, 3);
    long b = photo(Optional.of("B"), 5, Stage.AFTER_REWORK, 1);
    BoardStanding board = BoardStanding.of(record, "job", "board", 3);
    assertThat(board.rows()).isEqualTo(2);
    assertThat(board.last()).hasSize(2);
    assertThat(board.mayBeHandedBack()).isFalse();
    assertThat(board.open()).contains(new BoardStanding.Point(Code.DEFECT, List.of(3), "A"));

    record.bench(
        b, 3, new BenchResult(BenchTest.PROD, "moves", OptionalInt.empty(), "Ada", later()));
    photo(Optional.of("A"), 5, Stage.AFTER_REWORK, 1);
    assertThat(BoardStanding.of(record, "job", "board", 3).last())
        .as("what was said of B is not said of A")
        .extracting(BoardStanding.Shot::verdict)
        .containsExactly(Verdict.ACCEPTABLE, Verdict.DEFECT);
  }

  @Test
  void aSoundRowMayBeHandedBack() throws IOException {
    photo(4, Stage.FINAL, 1);
    assertThat(board().mayBeHandedBack()).isTrue();
  }

  @Test
  void aRowThatWasNotPhotographedAgainKeepsItsDefect() throws IOException {
    photo(4, Stage.AS_RECEIVED, 1, 2);
    photo(5, Stage.FINAL, 1);
    assertThat(board().mayBeHandedBack()).isFalse();
    assertThat(board().verdict()).isEqualTo(Verdict.DEFECT);
  }

  @Test
  void aDefectSeenAfterTheFinalPhotoCountsWhateverItsStageIsCalled() throws IOException {
    photo(4, Stage.FINAL, 1);
    photo(4, Stage.AFTER_REWORK, 2, 3);
    assertThat(board().mayBeHandedBack()).isFalse();
  }

  @Test
  void aLeadThatMovedIsNotSettledByAnAnswerToAnotherQuestion() throws IOException {
    long first = photo(4, Stage.AS_RECEIVED, 1);
    bench(first, 2, BenchTest.PROD, "moves", 0);
    long last = photo(4, Stage.FINAL, 1);
    bench(last, 2, BenchTest.METER, "ok", 3);
    assertThat(codes()).contains(Code.BENCH_FAULT);
    bench(last, 2, BenchTest.PROD, "firm", 0);
    assertThat(codes()).doesNotContain(Code.BENCH_FAULT);
  }

  @Test
  void norByAnAnswerThatWasGivenBefore() throws IOException {
    long first = photo(4, Stage.AS_RECEIVED, 1);
    long last = photo(4, Stage.FINAL, 1);
    bench(last, 2, BenchTest.PROD, "firm", 0);
    bench(first, 2, BenchTest.PROD, "moves", 0);
    assertThat(board().mayBeHandedBack()).isFalse();
  }

  @Test
  void aPersonWhoLookedAfterItSettlesIt() throws IOException {
    long first = photo(4, Stage.AS_RECEIVED, 1);
    bench(first, 2, BenchTest.METER, "short", 3);
    long last = photo(4, Stage.FINAL, 1);
    assertThat(board().mayBeHandedBack()).isFalse();
    for (int pin : List.of(2, 3)) {
      record.overrule(
          last, pin, new Overrule(Verdict.ACCEPTABLE, Optional.empty(), "seen", "Ada", later()));
    }
    assertThat(board().mayBeHandedBack()).isTrue();
  }

  @Test
  void whatWasHeatedAfterTheLastPhotoIsPhotographedAgain() throws IOException {
    photo(4, Stage.FINAL, 1);
    event(HEAT, null, 2);
    assertThat(codes()).contains(Code.HEATED_SINCE);
    assertThat(board().mayBeHandedBack()).isFalse();
    photo(4, Stage.FINAL, 2);
    assertThat(board().mayBeHandedBack()).isTrue();
  }

  @Test
  void aTestAndADecisionHoldUntilTheBoardIsChanged() throws IOException {
    photo(4, Stage.FINAL, 1);
    event(FUNCTION_TEST, true);
    event(HAND_BACK, true);
    assertThat(codes()).isEmpty();
    assertThat(board().decision()).isPresent();
    event(HEAT, null, 2);
    photo(4, Stage.FINAL, 2);
    assertThat(codes()).containsExactly(Code.NO_TEST, Code.NO_DECISION);
    assertThat(board().decision()).isEmpty();
  }

  @Test
  void aFailedTestForbids() throws IOException {
    photo(4, Stage.FINAL, 1);
    event(FUNCTION_TEST, false);
    assertThat(board().mayBeHandedBack()).isFalse();
  }
}
