package leadlight.page;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import leadlight.model.Verdict;
import leadlight.page.look.Assets;
import leadlight.page.photo.ReworkView;
import leadlight.page.words.RecordWords;
import leadlight.page.words.SafeText;
import leadlight.record.said.BenchResult;
import leadlight.record.said.LegsSeen;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.Overrule;
import leadlight.record.said.RecordedJoint;
import leadlight.record.said.Standing;
import leadlight.record.said.TakenBack;
import leadlight.report.strip.MarkedRow;
import leadlight.summary.board.BoardStanding;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;

/**
 * A board's life in words, entry by entry: its photos, what was said of their joints, its events.
 */
final class BoardTimeline {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private final BoardStanding board;
  private final Messages words;
  private final Sentences sentences;
  private final Function<BoardStanding.Shot, Optional<MarkedRow.Picture>> pictures;
  private final Function<LifeEvent, Optional<MarkedRow.Picture>> legPictures;

  BoardTimeline(
      BoardStanding board,
      Messages words,
      Function<BoardStanding.Shot, Optional<MarkedRow.Picture>> pictures,
      Function<LifeEvent, Optional<MarkedRow.Picture>> legPictures) {
    this.board = board;
    this.words = words;
    this.sentences = new Sentences(words, LengthUnit.MM);
    this.pictures = pictures;
    this.legPictures = legPictures;
  }

  /**
   * An entry of the timeline.
   *
   * @param at when
   * @param sign id of a verdict whose sign it bears; empty if none
   * @param title what
   * @param lines more of it
   * @param person who
   * @param picture the row with its pins marked, if it is of a photo that is still there
   */
  record Entry(
      ZonedDateTime at,
      String sign,
      String title,
      List<String> lines,
      String person,
      Optional<MarkedRow.Picture> picture) {

    String uri() {
      return Assets.dataUri("image/jpeg", picture.orElseThrow().jpeg());
    }

    String when() {
      return BoardTimeline.when(at);
    }
  }

  static String when(ZonedDateTime at) {
    return TIME.format(at);
  }

  /** Everything in the order of its time. */
  List<Entry> entries() {
    List<Entry> entries = new ArrayList<>();
    board.shots().forEach(shot -> ofShot(shot, entries));
    board.events().forEach(event -> entries.add(of(event)));
    entries.sort(Comparator.comparing(entry -> entry.at().toInstant()));
    return entries;
  }

  private void ofShot(BoardStanding.Shot shot, List<Entry> entries) {
    List<String> lines = new ArrayList<>();
    lines.add(counts(shot));
    shot.scoring().rowReason().ifPresent(why -> lines.add(sentences.of(why)));
    entries.add(
        new Entry(
            shot.scoring().scoredAt(),
            shot.row().joints().isEmpty() ? Verdict.UNJUDGED.id() : shot.verdict().id(),
            words.get(
                "board.photo",
                RecordWords.stage(words, shot.scoring().subject()),
                SafeText.of(shot.scoring().photo().file()),
                "" + shot.scoring().id()),
            lines,
            shot.scoring().person(),
            pictures.apply(shot)));
    shot.row().joints().forEach(joint -> ofJoint(shot, joint, entries));
  }

  private String counts(BoardStanding.Shot shot) {
    return Verdict.WORST_FIRST.stream()
        .map(verdict -> count(shot, verdict))
        .filter(text -> !text.isEmpty())
        .reduce((a, b) -> a + ", " + b)
        .orElse("");
  }

  private String count(BoardStanding.Shot shot, Verdict verdict) {
    List<Integer> pins =
        shot.row().joints().stream()
            .filter(joint -> joint.verdict() == verdict)
            .map(RecordedJoint::pin)
            .toList();
    return pins.isEmpty() ? "" : VerdictWords.of(verdict, words) + ": " + ReworkView.runs(pins);
  }

  private void ofJoint(BoardStanding.Shot shot, RecordedJoint joint, List<Entry> entries) {
    joint.bench().stream()
        .filter(result -> result.otherPin().orElse(Integer.MAX_VALUE) > joint.pin())
        .forEach(result -> entries.add(of(shot, joint, result, Optional.empty())));
    joint.overrules().forEach(opinion -> entries.add(of(shot, joint, opinion, Optional.empty())));
    for (TakenBack back : joint.takenBack()) {
      back.bench().ifPresent(result -> entries.add(of(shot, joint, result, Optional.of(back))));
      back.opinion().ifPresent(said -> entries.add(of(shot, joint, said, Optional.of(back))));
    }
  }

  private Entry of(
      BoardStanding.Shot shot, RecordedJoint joint, BenchResult result, Optional<TakenBack> back) {
    return said(shot, joint, RecordWords.said(words, result), result.person(), result.at(), back);
  }

  private Entry of(
      BoardStanding.Shot shot, RecordedJoint joint, Overrule opinion, Optional<TakenBack> back) {
    String said =
        words.get(
            "board.opinion",
            VerdictWords.of(opinion.verdict(), words),
            SafeText.of(opinion.reason()));
    return said(shot, joint, said, opinion.person(), opinion.at(), back);
  }

  private Entry said(
      BoardStanding.Shot shot,
      RecordedJoint joint,
      String said,
      String person,
      ZonedDateTime at,
      Optional<TakenBack> back) {
    List<String> lines = new ArrayList<>();
    back.ifPresent(
        taken ->
            lines.add(
                words.get(
                    "board.taken-back",
                    SafeText.of(taken.person()),
                    TIME.format(taken.at()),
                    SafeText.of(taken.reason()))));
    if (back.isEmpty() && joint.standing().source() != Standing.Source.TOOL) {
      lines.add(
          words.get(
              "board.counts",
              VerdictWords.of(joint.verdict(), words),
              VerdictWords.of(joint.tool().verdict(), words)));
    }
    return new Entry(
        at,
        "",
        words.get(
            "board.joint", joint.pin(), said, RecordWords.stage(words, shot.scoring().subject())),
        lines,
        person,
        Optional.empty());
  }

  private Entry of(LifeEvent event) {
    String key = "life." + event.kind().id();
    String title =
        event
            .good()
            .map(good -> words.get(key + (good ? ".yes" : ".no")))
            .orElseGet(() -> words.get(key));
    List<String> lines = new ArrayList<>();
    if (!event.pins().isEmpty()) {
      lines.add(
          words.get(
              event.pins().size() == 1 ? "pins.one" : "pins.many", ReworkView.runs(event.pins())));
    }
    boolean legs = event.kind() == LifeEvent.Kind.LEGS;
    if (legs) {
      lines.addAll(RecordWords.legs(words, LegsSeen.of(event)));
    } else if (!event.words().isEmpty()) {
      lines.add(SafeText.of(event.words()));
    }
    return new Entry(
        event.at(),
        "",
        title,
        lines,
        event.person(),
        legs ? legPictures.apply(event) : Optional.empty());
  }
}
