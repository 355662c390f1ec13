package leadlight.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlight.life.BenchRules;
import leadlight.life.Presets;
import leadlight.page.OpenPoints;
import leadlight.page.words.RecordWords;
import leadlight.record.JobRecord;
import leadlight.record.said.BenchResult;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.Overrule;
import leadlight.record.said.RecordedJoint;
import leadlight.record.said.TakenBack;
import leadlight.record.scoring.Subject;
import leadlight.summary.board.BoardStanding;
import leadlight.text.Messages;

/** What the page shows of the bench as a whole. */
final class Views {

  private static final int LAST_SHOTS = 5;

  private final Bench bench;
  private final Messages words;

  Views(Bench bench) {
    this.bench = bench;
    this.words = bench.setup().words();
  }

  /** A photo in the row of the last ones. */
  record Thumb(long scoring, String stage, String verdict, String word) {}

  /** A board that can be chosen. */
  record Board(String job, String board) {}

  /** The board on the bench. */
  record Chosen(
      String job,
      String board,
      String boardWords,
      String stage,
      int attempt,
      String port,
      String words) {}

  /**
   * The bench.
   *
   * @param changes grows with everything there is to show anew
   * @param open what of the board stands open
   * @param mayBeHandedBack whether nothing recorded forbids it
   * @param facts complaint, serial number, part
   * @param heats heats of each pin
   */
  record State(
      long changes,
      String person,
      boolean camera,
      Optional<Chosen> subject,
      List<Board> boards,
      List<String> presets,
      String preset,
      String lamp,
      boolean hasRow,
      List<Thumb> last,
      List<String> open,
      boolean mayBeHandedBack,
      List<String> facts,
      Map<Integer, Integer> heats,
      int mostHeats,
      int glanceMs) {}

  State state() {
    Optional<BoardStanding> standing = bench.standing();
    return new State(
        bench.changes(),
        bench.setup().person(),
        bench.setup().watched().isEmpty(),
        bench.subject().map(this::chosen),
        boards(),
        bench.setup().presets().presets().stream().map(Presets.Preset::word).toList(),
        bench.preset().map(Presets.Preset::word).orElse(""),
        bench.preset().flatMap(Presets.Preset::lamp).orElse(""),
        bench.hasRow(),
        bench.last(LAST_SHOTS).stream().map(this::thumb).toList(),
        standing.map(board -> OpenPoints.of(board, words)).orElse(List.of()),
        standing.map(BoardStanding::mayBeHandedBack).orElse(false),
        standing.map(this::facts).orElse(List.of()),
        standing.map(BoardStanding::heats).orElse(new TreeMap<>()),
        BenchRules.builtIn().mostHeats().value(),
        BenchRules.builtIn().glanceMs().value());
  }

  private Chosen chosen(Subject of) {
    return new Chosen(
        of.job(),
        of.board(),
        RecordWords.board(words, of.board()),
        of.stage().id(),
        of.attempt(),
        of.port().orElse(""),
        RecordWords.stage(words, of));
  }

  private List<Board> boards() {
    List<Board> boards = new ArrayList<>();
    for (JobRecord.BoardName name : bench.setup().record().boards()) {
      boards.add(0, new Board(name.job(), name.board()));
    }
    return boards;
  }

  private Thumb thumb(BoardStanding.Shot shot) {
    boolean none = shot.row().joints().isEmpty();
    return new Thumb(
        shot.scoring().id(),
        RecordWords.stage(words, shot.scoring().subject()),
        shot.verdict().id(),
        words.get(none ? "desk.no-row" : "desk.verdict." + shot.verdict().id()));
  }

  private List<String> facts(BoardStanding board) {
    List<String> facts = new ArrayList<>();
    for (LifeEvent.Kind kind :
        List.of(LifeEvent.Kind.COMPLAINT, LifeEvent.Kind.SERIAL, LifeEvent.Kind.PART)) {
      board
          .lastOf(kind)
          .ifPresent(
              event ->
                  facts.add(words.get("life." + kind.id()) + ": " + RecordWords.of(event.words())));
    }
    return facts;
  }

  /** What people and the bench said of a joint, in lines. */
  static List<String> said(RecordedJoint joint, Messages words) {
    List<String> said = new ArrayList<>();
    joint.bench().forEach(result -> said.add(line(result, words)));
    joint.overrules().forEach(opinion -> said.add(line(opinion, words)));
    for (TakenBack back : joint.takenBack()) {
      String what =
          back.bench()
              .map(result -> line(result, words))
              .or(() -> back.opinion().map(opinion -> line(opinion, words)))
              .orElseThrow();
      said.add(words.get("desk.taken-back", what));
    }
    return said;
  }

  private static String line(BenchResult result, Messages words) {
    return RecordWords.said(words, result) + " (" + RecordWords.of(result.person()) + ")";
  }

  private static String line(Overrule opinion, Messages words) {
    return RecordWords.of(opinion.person())
        + ": "
        + words.get("desk.pin." + opinion.verdict().id())
        + ", "
        + RecordWords.of(opinion.reason());
  }
}
