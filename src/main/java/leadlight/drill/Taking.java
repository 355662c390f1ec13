package leadlight.drill;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import leadlight.drill.Deck.Card;
import leadlight.drill.Deck.Spot;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;
import leadlight.record.DrillRecord;
import leadlight.record.Sitting;

/**
 * One person at one deck. Each answer is in the record when its method returns, so a closed tab or
 * a crash loses none; taking the deck again goes on where it was left. Safe for threads.
 */
public final class Taking {

  private static final long MOST_MS = 24L * 60 * 60 * 1000;

  private final OpenDeck deck;
  private final DrillRecord record;
  private final boolean tellAtEnd;
  private final Supplier<ZonedDateTime> clock;
  private final Sitting sitting;

  /**
   * Sits down, or goes on with an unfinished sitting.
   *
   * @param person the name that the trainee chose
   * @param tellAtEnd true if nothing is told before the last card
   * @param clock tells the time of answers
   */
  public Taking(
      OpenDeck deck,
      DrillRecord record,
      String person,
      boolean tellAtEnd,
      Supplier<ZonedDateTime> clock) {
    this.deck = deck;
    this.record = record;
    this.tellAtEnd = tellAtEnd;
    this.clock = clock;
    this.sitting = record.sit(person, deck.id(), clock.get());
  }

  OpenDeck deck() {
    return deck;
  }

  Sitting sitting() {
    return sitting;
  }

  boolean tellsAtEnd() {
    return tellAtEnd;
  }

  int cards() {
    return deck.deck().cards().size();
  }

  /** Numbers of the cards that can no longer be answered. */
  Set<Integer> closed() {
    return record.told(sitting.id());
  }

  /** Number of the first card that is not closed; empty if all are. */
  public Optional<Integer> next() {
    Set<Integer> closed = closed();
    return IntStream.rangeClosed(1, cards()).boxed().filter(n -> !closed.contains(n)).findFirst();
  }

  /** True if the truth of a card may be told. */
  boolean isTold(int card) {
    return tellAtEnd ? next().isEmpty() : closed().contains(card);
  }

  /** The answers that count. */
  public List<DrillAnswer> answers() {
    return record.answers(sitting.id());
  }

  List<DrillAnswer> answers(int card) {
    return answers().stream().filter(a -> a.card() == card).toList();
  }

  /**
   * Takes an answer; an earlier one to the same joint is replaced.
   *
   * @throws Refused if the card is closed, or there is no such joint
   */
  synchronized void answer(
      int card, int pin, Verdict said, Optional<FindingKind> finding, long tookMs) throws Refused {
    Spot spot =
        there(card).spots().stream()
            .filter(s -> s.pin() == pin)
            .findFirst()
            .orElseThrow(() -> new Refused("card " + card + " does not ask for pin " + pin));
    if (closed().contains(card)) {
      throw new Refused("card " + card + " was answered before");
    }
    record.answer(
        sitting.id(),
        new DrillAnswer(
            card,
            pin,
            spot.item(),
            said,
            finding,
            spot.known().map(k -> k.id()),
            spot.known().map(Known::findings).orElse(List.of()),
            spot.tool().map(ToolSaid::verdict),
            spot.tool().map(ToolSaid::kinds).orElse(List.of()),
            Math.max(0, Math.min(MOST_MS, tookMs)),
            clock.get()));
  }

  /**
   * Closes a card: its answers stay as they are.
   *
   * @throws Refused if a joint of it has no answer yet
   */
  synchronized void close(int card) throws Refused {
    int missing = there(card).spots().size() - answers(card).size();
    if (missing > 0) {
      throw new Refused(missing + " joints of card " + card + " have no answer yet");
    }
    record.tell(sitting.id(), card, clock.get());
  }

  private Card there(int card) throws Refused {
    if (card < 1 || card > cards()) {
      throw new Refused("there is no card " + card);
    }
    return deck.card(card);
  }

  /** How it ended, for the terminal. */
  public List<String> lastWords() {
    if (next().isPresent()) {
      return List.of(
          "left at card %d of %d; the same command goes on there".formatted(next().get(), cards()));
    }
    Views.Result result = new Views(this).result();
    List<String> lines = new ArrayList<>();
    lines.add(result.headline());
    result
        .figures()
        .forEach(
            f -> lines.add("  %-34s %-14s %s".formatted(f.name(), f.value(), f.range()).strip()));
    lines.add(result.summary());
    return lines;
  }
}
