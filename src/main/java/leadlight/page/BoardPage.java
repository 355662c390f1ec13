package leadlight.page;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import leadlight.model.Verdict;
import leadlight.page.look.Assets;
import leadlight.page.photo.PinView;
import leadlight.page.words.RecordWords;
import leadlight.page.words.SafeText;
import leadlight.record.said.LifeEvent;
import leadlight.report.strip.MarkedRow;
import leadlight.summary.board.BoardStanding;
import leadlight.text.Messages;

/**
 * The page of a board's life: what stands open, then everything in its order. One file, no script.
 */
public final class BoardPage {

  private final BoardStanding board;
  private final Messages words;
  private final BoardTimeline timeline;
  private final String toolVersion;
  private final String seal;
  private final String css = Assets.text("board.css");

  private BoardPage(
      BoardStanding board,
      Messages words,
      Function<BoardStanding.Shot, Optional<MarkedRow.Picture>> pictures,
      Function<LifeEvent, Optional<MarkedRow.Picture>> legPictures,
      String toolVersion,
      String seal) {
    this.board = board;
    this.words = words;
    this.timeline = new BoardTimeline(board, words, pictures, legPictures);
    this.toolVersion = toolVersion;
    this.seal = seal;
  }

  /**
   * The page, UTF-8.
   *
   * @param pictures the row of a photo with its pins marked, if the photo is still there
   * @param legPictures the marked legs of an event
   * @param seal of the record
   */
  public static byte[] html(
      BoardStanding board,
      Messages words,
      Function<BoardStanding.Shot, Optional<MarkedRow.Picture>> pictures,
      Function<LifeEvent, Optional<MarkedRow.Picture>> legPictures,
      String toolVersion,
      String seal) {
    StringOutput output = new StringOutput(1 << 16);
    JteboardGenerated.render(
        new OwaspHtmlTemplateOutput(output),
        null,
        new BoardPage(board, words, pictures, legPictures, toolVersion, seal));
    return output.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** The policy that the page brings along, for who serves it under one of its own. */
  public static String ownPolicy() {
    return Assets.policy(Assets.text("board.css"));
  }

  Messages words() {
    return words;
  }

  String safe(String outside) {
    return SafeText.of(outside);
  }

  String css() {
    return css;
  }

  String policy() {
    return Assets.policy(css);
  }

  String title() {
    return SafeText.of(board.job() + ", " + RecordWords.board(words, board.board()));
  }

  String verdict() {
    return board.mayBeHandedBack() ? board.verdict().id() : Verdict.DEFECT.id();
  }

  String made() {
    return words.get("board.made", toolVersion);
  }

  String sealed() {
    return words.get("sheet.seal", seal);
  }

  /** Handed back by whom, or how it stands by the last photo. */
  String headline() {
    Optional<LifeEvent> decision = board.decision();
    if (decision.isPresent() && decision.get().good().orElseThrow() && board.mayBeHandedBack()) {
      return words.get(
          "board.handed-back",
          SafeText.of(decision.get().person()),
          BoardTimeline.when(decision.get().at()));
    }
    return words.get("board.stand." + verdict());
  }

  List<String> open() {
    return OpenPoints.of(board, words);
  }

  List<BoardTimeline.Entry> entries() {
    return timeline.entries();
  }

  List<PinView.Line> facts() {
    List<PinView.Line> facts = new ArrayList<>();
    for (LifeEvent.Kind kind :
        List.of(LifeEvent.Kind.COMPLAINT, LifeEvent.Kind.SERIAL, LifeEvent.Kind.PART)) {
      board
          .lastOf(kind)
          .ifPresent(
              event ->
                  facts.add(
                      new PinView.Line(
                          words.get("life." + kind.id()), SafeText.of(event.words()))));
    }
    if (!board.heats().isEmpty()) {
      facts.add(new PinView.Line(words.get("board.heats"), heats()));
    }
    return facts;
  }

  private String heats() {
    return board.heats().entrySet().stream()
        .map(heat -> words.get("board.heat", heat.getKey(), heat.getValue()))
        .reduce((a, b) -> a + "; " + b)
        .orElse("");
  }
}
