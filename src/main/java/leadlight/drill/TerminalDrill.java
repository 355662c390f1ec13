package leadlight.drill;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import leadlight.drill.Deck.Card;
import leadlight.drill.Deck.Spot;
import leadlight.model.FindingKind;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;

/** A deck taken in a plain terminal, a line of keys a joint. */
public final class TerminalDrill {

  private static final String LEAVE = "q";
  private static final double NS_PER_MS = 1e6;

  private final Taking taking;
  private final BufferedReader in;
  private final PrintStream out;

  /** Takes what is asked and where. */
  public TerminalDrill(Taking taking, InputStream in, PrintStream out) {
    this.taking = taking;
    this.in = new BufferedReader(new InputStreamReader(in, Charset.defaultCharset()));
    this.out = out;
  }

  /**
   * Asks card by card, until all are answered, the person leaves, or the input ends.
   *
   * @param show puts a card's picture, by its file name, before the person
   */
  public void run(Consumer<String> show) {
    out.println(taking.deck().deck().name() + ", " + taking.deck().deck().about());
    out.println(keys());
    try {
      for (Optional<Integer> next = taking.next(); next.isPresent(); next = taking.next()) {
        if (!card(next.get(), show)) {
          return;
        }
      }
      if (taking.tellsAtEnd()) {
        for (int card = 1; card <= taking.cards(); card++) {
          tell(card);
        }
      }
    } catch (IOException e) {
      throw new UserError("the terminal cannot be read; answers given so far are kept");
    } catch (Refused e) {
      throw new UserError(e.getMessage());
    }
  }

  private static String keys() {
    StringBuilder keys = new StringBuilder("keys: s sound, u cannot tell from this photo,");
    for (Views.Choice choice : Views.choices()) {
      keys.append("\n  ").append(choice.key()).append(' ').append(choice.words());
    }
    return keys.append("\n  ").append(LEAVE).append(" leave; the same command goes on").toString();
  }

  /** False if the person leaves. */
  private boolean card(int number, Consumer<String> show) throws IOException, Refused {
    Card card = taking.deck().card(number);
    out.println();
    out.println("card " + number + " of " + taking.cards());
    show.accept(card.picture());
    out.println(
        card.spots().size() == 1
            ? "Judge the joint in the middle; the body is above."
            : "The body is above; pins from the left: " + pins(card.spots()));
    Set<Integer> done = new HashSet<>();
    taking.answers(number).forEach(a -> done.add(a.pin()));
    for (Spot spot : card.spots()) {
      if (!done.contains(spot.pin()) && !joint(number, spot)) {
        return false;
      }
    }
    taking.close(number);
    if (!taking.tellsAtEnd()) {
      tell(number);
    }
    return true;
  }

  private static String pins(List<Spot> spots) {
    return spots.get(0).pin() + " to " + spots.get(spots.size() - 1).pin();
  }

  private boolean joint(int card, Spot spot) throws IOException, Refused {
    long from = System.nanoTime();
    while (true) {
      out.print("pin " + spot.pin() + " > ");
      out.flush();
      String line = in.readLine();
      if (line == null || line.strip().equalsIgnoreCase(LEAVE)) {
        return false;
      }
      if (take(card, spot, line.strip(), (long) ((System.nanoTime() - from) / NS_PER_MS))) {
        return true;
      }
      out.println("no such key; s, u, 1 to " + Views.choices().size() + ", " + LEAVE);
    }
  }

  private boolean take(int card, Spot spot, String key, long tookMs) throws Refused {
    switch (key.toLowerCase(Locale.ROOT)) {
      case "s" -> taking.answer(card, spot.pin(), Verdict.ACCEPTABLE, Optional.empty(), tookMs);
      case "u" -> taking.answer(card, spot.pin(), Verdict.UNJUDGED, Optional.empty(), tookMs);
      default -> {
        Optional<Views.Choice> choice =
            Views.choices().stream().filter(c -> c.key().equals(key)).findFirst();
        if (choice.isEmpty()) {
          return false;
        }
        Optional<FindingKind> finding =
            Offered.KINDS.stream().filter(k -> k.id().equals(choice.get().id())).findFirst();
        taking.answer(card, spot.pin(), Verdict.DEFECT, finding, tookMs);
      }
    }
    return true;
  }

  private void tell(int number) {
    Card card = taking.deck().card(number);
    List<DrillAnswer> answers = taking.answers(number);
    for (Spot spot : card.spots()) {
      DrillAnswer answer =
          answers.stream().filter(a -> a.pin() == spot.pin()).findFirst().orElseThrow();
      Telling.Told told = Telling.of(spot, answer);
      boolean inFull = card.spots().size() == 1 || !told.good();
      out.println("card %d pin %d  %s".formatted(number, spot.pin(), told.headline()));
      if (inFull) {
        told.lines().forEach(line -> out.println("  %-14s %s".formatted(line.name(), line.text())));
      }
    }
  }
}
