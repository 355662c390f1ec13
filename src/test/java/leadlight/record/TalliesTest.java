package leadlight.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.function.Predicate;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.record.engine.RecordPlace;
import leadlight.record.file.Database;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.Overrule;
import leadlight.record.said.RecordedJoint;
import leadlight.record.scoring.NewScoring;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import leadlight.record.scoring.Tally;
import leadlight.record.scoring.Tally.Axis;
import leadlight.record.scoring.Tally.Unit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Counts for charts are what the rows come to, whatever was written, said and taken back. */
class TalliesTest {

  private static final JobRecord.Withdrawal SLIPPED =
      new JobRecord.Withdrawal("slipped", "Bo", ScoredBoard.NOON.plusHours(2));

  @TempDir private Path folder;
  private RecordPlace place;

  /** Where a record of that name lies; on a server in SharedTalliesTest. */
  RecordPlace at(Path path) {
    return new RecordPlace.Folder(path);
  }

  @BeforeEach
  void aDayOfWork() {
    place = at(folder);
    ScoredBoard boards = new ScoredBoard(folder);
    try (JobRecord record = JobRecord.open(place)) {
      record.add(of(boards.scoring("0412", "A1"), Stage.AS_RECEIVED, 1, 0, false));
      record.add(of(boards.scoring("0412", "A1"), Stage.AFTER_REWORK, 1, 1, false));
      long reworked = record.add(of(boards.scoring("0412", "A1"), Stage.AFTER_REWORK, 2, 1, false));
      long other = record.add(of(boards.scoring("0412", "A2"), Stage.FINAL, 1, 0, false));
      record.add(of(boards.scoring("0412", "A2"), Stage.FINAL, 1, 3, true));
      record.add(
          boards.scoring(
              "0413",
              "A3",
              ScoredBoard.NOON,
              ScoredBoard.method(Optional.empty()),
              new RowOutcome.NotFound(new NoteOfPhoto.Advice("hidden", 3), List.of())));
      record.overrule(reworked, 1, says(Verdict.DEFECT, Optional.of(FindingKind.BRIDGE)));
      record.bench(other, 2, result(BenchTest.PROD, "moves", 0));
      record.bench(other, 1, result(BenchTest.METER, "short", 3));
      record.overrule(other, 2, says(Verdict.ACCEPTABLE, Optional.empty()));
      record.overrule(other, 3, says(Verdict.PROCESS_INDICATOR, Optional.empty()));
      record.takeBackOverrule(other, 3, SLIPPED);
      record.takeBackBench(other, 3, SLIPPED);
    }
  }

  private static NewScoring of(
      NewScoring one, Stage stage, int attempt, int daysLater, boolean again) {
    return new NewScoring(
        new Subject(one.subject().job(), one.subject().board(), stage, attempt),
        one.photo(),
        one.scored(),
        one.method(),
        one.results(),
        daysLater == 0 ? "Ada" : "Bo",
        one.at().plusDays(daysLater),
        again);
  }

  private static Overrule says(Verdict verdict, Optional<FindingKind> kind) {
    return new Overrule(verdict, kind, "seen at 40x", "Ada", ScoredBoard.NOON);
  }

  private static BenchResult result(BenchTest test, String result, int other) {
    OptionalInt to = other == 0 ? OptionalInt.empty() : OptionalInt.of(other);
    return new BenchResult(test, result, to, "Ada", ScoredBoard.NOON);
  }

  /** What is counted, read row by row. */
  private static Map<Tally, Long> byRows(
      JobRecord record, Unit unit, String scope, Axis axis, Predicate<Scoring> counts) {
    Map<Tally, Long> counted = new HashMap<>();
    Map<List<String>, TreeSet<String>> onBoards = new HashMap<>();
    for (Scoring scoring : record.scorings(Search.all().latestOnly())) {
      for (RecordedJoint joint : record.row(scoring.id()).joints()) {
        if (counts.test(scoring)) {
          String name = name(scoring, joint, axis);
          List<String> kinds = new ArrayList<>();
          joint.standing().joint().findings().forEach(it -> kinds.add(it.kind().id()));
          Tally what =
              new Tally(unit, scope, Optional.of(axis), name, List.of(joint.verdict().id()), kinds);
          if (unit == Unit.JOINT) {
            counted.merge(what, 1L, Long::sum);
          }
          onBoards
              .computeIfAbsent(List.of(name, scoring.subject().board()), it -> new TreeSet<>())
              .add(joint.verdict().id());
        }
      }
    }
    if (unit == Unit.BOARD) {
      onBoards.forEach(
          (at, verdicts) ->
              counted.merge(
                  new Tally(
                      unit, scope, Optional.of(axis), at.get(0), List.copyOf(verdicts), List.of()),
                  1L,
                  Long::sum));
    }
    return counted;
  }

  private static String name(Scoring scoring, RecordedJoint joint, Axis axis) {
    return switch (axis) {
      case DAY -> scoring.scoredAt().toLocalDate().toString();
      case CONNECTOR -> scoring.method().settings().row().connectorId();
      case OPERATOR -> scoring.person();
      case PIN -> "" + joint.pin();
      case STAGE -> scoring.subject().stage().id() + " " + scoring.subject().attempt();
      case FINDING -> "";
    };
  }

  /** In this work each board's last stage is its second rework or its end. */
  private static boolean isLast(Scoring scoring) {
    return scoring.subject().attempt() == 2 || scoring.subject().stage() == Stage.FINAL;
  }

  @Test
  void areThoseOfTheRows() {
    try (JobRecord record = JobRecord.open(place)) {
      Tallies tallies = new Tallies(record);
      for (Unit unit : List.of(Unit.JOINT, Unit.BOARD)) {
        for (Axis axis : Axis.values()) {
          if (axis == Axis.STAGE) {
            assertThat(tallies.read(unit, Tally.ALL, axis))
                .isNotEmpty()
                .isEqualTo(byRows(record, unit, Tally.ALL, axis, it -> true));
          } else {
            assertThat(tallies.read(unit, Tally.LAST, axis))
                .as("%s by %s", unit, axis)
                .isNotEmpty()
                .isEqualTo(byRows(record, unit, Tally.LAST, axis, TalliesTest::isLast));
            String rework = Stage.AFTER_REWORK.id();
            assertThat(tallies.read(unit, rework, axis))
                .isNotEmpty()
                .isEqualTo(
                    byRows(
                        record,
                        unit,
                        rework,
                        axis,
                        it -> it.subject().stage() == Stage.AFTER_REWORK));
          }
        }
      }
      assertThat(tallies.photos(Tally.ALL))
          .extractingFromEntries(it -> it.getKey().verdicts() + " " + it.getValue())
          .containsExactlyInAnyOrder("[found] 4", "[lost] 1");
    }
  }

  @Test
  void aDefectThatAPersonSawIsOne() {
    try (JobRecord record = JobRecord.open(place)) {
      assertThat(new Tallies(record).read(Unit.JOINT, Tally.LAST, Axis.PIN))
          .containsEntry(
              new Tally(
                  Unit.JOINT,
                  Tally.LAST,
                  Optional.of(Axis.PIN),
                  "1",
                  List.of(Verdict.DEFECT.id()),
                  List.of(FindingKind.BRIDGE.id())),
              1L);
    }
  }

  @Test
  void whoAltersThemIsFoundAndARecordThatHasNoneIsCounted() {
    change("UPDATE tally SET n = n + 1 WHERE axis = 'pin' AND name = '2'");
    try (JobRecord record = JobRecord.open(place)) {
      assertThat(record.troubles())
          .containsExactly("the counts that charts are drawn from are not those of the joints");
    }
    change("DELETE FROM counted");
    change("DELETE FROM tally");
    try (JobRecord record = JobRecord.open(place)) {
      assertThat(record.troubles()).isEmpty();
    }
    areThoseOfTheRows();
  }

  private void change(String sql) {
    try (Database database = Database.open(place)) {
      database.change(handle -> handle.execute(sql));
    }
  }

  @Test
  void theyMoveWithTheRecord() {
    RecordPlace other = at(folder.resolve("other"));
    Map<Tally, Long> counted;
    try (JobRecord record = JobRecord.open(place)) {
      counted = new Tallies(record).read(Unit.JOINT, Tally.LAST, Axis.DAY);
      record.moveTo(other);
    }
    try (JobRecord record = JobRecord.open(other)) {
      assertThat(new Tallies(record).read(Unit.JOINT, Tally.LAST, Axis.DAY)).isEqualTo(counted);
      assertThat(record.troubles()).isEmpty();
    }
  }
}
