package leadlight.desk;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import leadlight.data.JsonText;
import leadlight.model.Verdict;
import leadlight.record.said.BenchTest;
import leadlight.record.said.LifeEvent;
import leadlight.record.scoring.Subject;
import leadlight.serve.Reply;

/**
 * What the bench page posts in words: a board, a preset, what the bench, a meter or a person said.
 */
final class PostedWords {

  /** Which board comes onto the bench. */
  record Choice(
      @JsonProperty(required = true) String job,
      @JsonProperty(required = true) String board,
      @JsonProperty(required = true) String stage,
      @JsonProperty(required = true) int attempt,
      Optional<String> port) {}

  /** Which preset. */
  record Word(@JsonProperty(required = true) String word) {}

  /** What the bench said. */
  record Said(
      @JsonProperty(required = true) long pressedMs,
      @JsonProperty(required = true) long scoring,
      @JsonProperty(required = true) int pin,
      @JsonProperty(required = true) String test,
      @JsonProperty(required = true) String result,
      OptionalInt other) {}

  /** What a person says. */
  record Opinion(
      @JsonProperty(required = true) long pressedMs,
      @JsonProperty(required = true) long scoring,
      @JsonProperty(required = true) int pin,
      @JsonProperty(required = true) String verdict,
      @JsonProperty(required = true) String reason) {}

  /** What is taken back. */
  record Back(
      @JsonProperty(required = true) long pressedMs,
      @JsonProperty(required = true) long scoring,
      @JsonProperty(required = true) int pin,
      @JsonProperty(required = true) boolean opinion) {}

  /** What is noted of the board. */
  record Noted(
      @JsonProperty(required = true) long pressedMs,
      @JsonProperty(required = true) String kind,
      @JsonProperty(required = true) String words,
      @JsonProperty(required = true) List<Integer> pins,
      Optional<Boolean> good) {}

  private final Bench bench;

  PostedWords(Bench bench) {
    this.bench = bench;
  }

  /** Does what was posted to a path. */
  Reply take(String path, String body) throws Refused {
    switch (path) {
      case "subject" -> {
        Choice choice = JsonText.read(body, Choice.class);
        bench.choose(
            new Subject(
                choice.job().strip(),
                choice.board().strip(),
                Bench.stage(choice.stage()),
                choice.attempt(),
                choice.port()));
      }
      case "preset" -> bench.choose(JsonText.read(body, Word.class).word());
      case "bench" -> {
        Said said = JsonText.read(body, Said.class);
        bench.said(
            at(said.pressedMs()),
            said.scoring(),
            said.pin(),
            test(said.test()),
            said.result(),
            said.other());
      }
      case "opinion" -> {
        Opinion opinion = JsonText.read(body, Opinion.class);
        if (opinion.reason().isBlank()) {
          throw new Refused(bench.setup().words().get("desk.say-why"));
        }
        bench.overruled(
            at(opinion.pressedMs()),
            opinion.scoring(),
            opinion.pin(),
            verdict(opinion.verdict()),
            opinion.reason());
      }
      case "back" -> {
        Back back = JsonText.read(body, Back.class);
        bench.takeBack(at(back.pressedMs()), back.scoring(), back.pin(), back.opinion());
      }
      case "note" -> {
        Noted noted = JsonText.read(body, Noted.class);
        bench.note(
            at(noted.pressedMs()), kind(noted.kind()), noted.words(), noted.pins(), noted.good());
      }
      default -> {
        return Reply.missing();
      }
    }
    return Reply.done();
  }

  /** When the key was pressed, by the clock of this computer: the page is served to no other. */
  private static Instant at(long pressedMs) {
    return Instant.ofEpochMilli(pressedMs);
  }

  private static BenchTest test(String id) {
    return one(BenchTest.values(), test -> test.id().equals(id));
  }

  private static Verdict verdict(String id) {
    return one(Verdict.values(), verdict -> verdict != Verdict.UNJUDGED && verdict.id().equals(id));
  }

  private static LifeEvent.Kind kind(String id) {
    return one(LifeEvent.Kind.values(), kind -> kind.id().equals(id));
  }

  private static <T> T one(T[] all, Predicate<T> test) {
    return Arrays.stream(all)
        .filter(test)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("not as the page sends it"));
  }
}
