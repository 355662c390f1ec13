package leadlight.drill.sitting;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import leadlight.drill.pool.Known;
import leadlight.drill.pool.ToolSaid;
import leadlight.drill.set.OpenSet;
import leadlight.drill.set.PracticeSet.Specimen;
import leadlight.drill.set.PracticeSet.Spot;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;
import leadlight.record.DrillRecord;
import leadlight.record.Sitting;
import leadlight.text.Messages;

/**
 * One person at one set. Each answer is in the record when its method returns, so a closed tab or a
 * crash loses none; judging the set again goes on where it was left. Safe for threads.
 */
public final class Judging {

  private static final long MOST_MS = 24L * 60 * 60 * 1000;

  private final OpenSet set;
  private final DrillRecord record;
  private final boolean tellAtEnd;
  private final Supplier<ZonedDateTime> clock;
  private final Messages words;
  private final Sitting sitting;

  /**
   * Sits down, or goes on with an unfinished sitting.
   *
   * @param person the name that the trainee chose
   * @param tellAtEnd true if nothing is told before the last specimen
   * @param clock tells the time of answers
   * @param words the language that is spoken
   */
  public Judging(
      OpenSet set,
      DrillRecord record,
      String person,
      boolean tellAtEnd,
      Supplier<ZonedDateTime> clock,
      Messages words) {
    this.set = set;
    this.record = record;
    this.tellAtEnd = tellAtEnd;
    this.clock = clock;
    this.words = words;
    this.sitting = record.sit(person, set.id(), clock.get());
  }

  Messages words() {
    return words;
  }

  OpenSet set() {
    return set;
  }

  Sitting sitting() {
    return sitting;
  }

  boolean tellsAtEnd() {
    return tellAtEnd;
  }

  int specimens() {
    return set.set().specimens().size();
  }

  /** Numbers of the specimens that can no longer be answered. */
  Set<Integer> closed() {
    return record.told(sitting.id());
  }

  /** Number of the first specimen that is not closed; empty if all are. */
  Optional<Integer> next() {
    Set<Integer> closed = closed();
    return IntStream.rangeClosed(1, specimens())
        .boxed()
        .filter(n -> !closed.contains(n))
        .findFirst();
  }

  /** True if the truth of a specimen may be told. */
  boolean isTold(int specimen) {
    return tellAtEnd ? next().isEmpty() : closed().contains(specimen);
  }

  /** The answers that count. */
  public List<DrillAnswer> answers() {
    return record.answers(sitting.id());
  }

  List<DrillAnswer> answers(int specimen) {
    return answers().stream().filter(a -> a.specimen() == specimen).toList();
  }

  /**
   * Takes an answer; an earlier one to the same joint is replaced.
   *
   * @throws Refused if the specimen is closed, or there is no such joint
   */
  public synchronized void answer(
      int specimen, int pin, Verdict said, Optional<FindingKind> finding, long tookMs)
      throws Refused {
    Spot spot =
        there(specimen).spots().stream()
            .filter(s -> s.pin() == pin)
            .findFirst()
            .orElseThrow(() -> new Refused(words.get("drill.refused.pin", name(specimen), pin)));
    if (closed().contains(specimen)) {
      throw new Refused(words.get("drill.refused.answered", name(specimen)));
    }
    record.answer(
        sitting.id(),
        new DrillAnswer(
            specimen,
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
   * Closes a specimen: its answers stay as they are.
   *
   * @throws Refused if a joint of it has no answer yet
   */
  public synchronized void close(int specimen) throws Refused {
    int missing = there(specimen).spots().size() - answers(specimen).size();
    if (missing > 0) {
      throw new Refused(words.get("drill.refused.open", missing, name(specimen)));
    }
    record.tell(sitting.id(), specimen, clock.get());
  }

  /** "joint 3", "row 3". */
  String name(int specimen) {
    return words.get("drill." + set.set().word()) + " " + specimen;
  }

  private Specimen there(int specimen) throws Refused {
    if (specimen < 1 || specimen > specimens()) {
      throw new Refused(words.get("drill.refused.none", name(specimen)));
    }
    return set.specimen(specimen);
  }

  /** How it ended, for the terminal. */
  public List<String> lastWords() {
    if (next().isPresent()) {
      return List.of(words.get("drill.left", name(next().get()), specimens()));
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
