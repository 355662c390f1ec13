package leadlight.drill.sitting;

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
import leadlight.drill.set.PracticeSet.Specimen;
import leadlight.drill.set.PracticeSet.Spot;
import leadlight.drill.skill.Offered;
import leadlight.model.FindingKind;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;
import leadlight.text.Messages;

/** A set taken in a plain terminal, a line of keys a joint. */
public final class TerminalDrill {

  private static final String LEAVE = "q";
  private static final double NS_PER_MS = 1e6;

  private final Judging judging;
  private final Messages words;
  private final List<Views.Choice> choices;
  private final BufferedReader in;
  private final PrintStream out;

  /** Takes what is asked and where. */
  public TerminalDrill(Judging judging, InputStream in, PrintStream out) {
    this.judging = judging;
    this.words = judging.words();
    this.choices = new Views(judging).choices();
    this.in = new BufferedReader(new InputStreamReader(in, Charset.defaultCharset()));
    this.out = out;
  }

  /**
   * Asks specimen by specimen, until all are answered, the person leaves, or the input ends.
   *
   * @param show puts a specimen's picture, by its file name, before the person
   */
  public void run(Consumer<String> show) {
    out.println(judging.set().set().name() + ", " + judging.set().set().about());
    out.println(keys());
    try {
      for (Optional<Integer> next = judging.next(); next.isPresent(); next = judging.next()) {
        if (!specimen(next.get(), show)) {
          return;
        }
      }
      if (judging.tellsAtEnd()) {
        for (int specimen = 1; specimen <= judging.specimens(); specimen++) {
          tell(specimen);
        }
      }
    } catch (IOException e) {
      throw new UserError("the terminal cannot be read; answers given so far are kept");
    } catch (Refused e) {
      throw new UserError(e.getMessage());
    }
  }

  private String keys() {
    StringBuilder keys = new StringBuilder(words.get("drill.terminal.keys"));
    for (Views.Choice choice : choices) {
      keys.append("\n  ").append(choice.key()).append(' ').append(choice.words());
    }
    return keys.append("\n  ")
        .append(LEAVE)
        .append(' ')
        .append(words.get("drill.terminal.leave"))
        .toString();
  }

  /** False if the person leaves. */
  private boolean specimen(int number, Consumer<String> show) throws IOException, Refused {
    Specimen specimen = judging.set().specimen(number);
    out.println();
    out.println(words.get("drill.of", judging.name(number), judging.specimens()));
    show.accept(specimen.picture());
    out.println(
        specimen.spots().size() == 1
            ? words.get("drill.terminal.joint")
            : words.get(
                "drill.terminal.row",
                specimen.spots().get(0).pin(),
                specimen.spots().get(specimen.spots().size() - 1).pin()));
    Set<Integer> done = new HashSet<>();
    judging.answers(number).forEach(a -> done.add(a.pin()));
    for (Spot spot : specimen.spots()) {
      if (!done.contains(spot.pin()) && !joint(number, spot)) {
        return false;
      }
    }
    judging.close(number);
    if (!judging.tellsAtEnd()) {
      tell(number);
    }
    return true;
  }

  private boolean joint(int specimen, Spot spot) throws IOException, Refused {
    long from = System.nanoTime();
    while (true) {
      out.print(words.get("drill.terminal.pin", spot.pin()) + " > ");
      out.flush();
      String line = in.readLine();
      if (line == null || line.strip().equalsIgnoreCase(LEAVE)) {
        return false;
      }
      if (take(specimen, spot, line.strip(), (long) ((System.nanoTime() - from) / NS_PER_MS))) {
        return true;
      }
      out.println(words.get("drill.terminal.no-key", choices.size(), LEAVE));
    }
  }

  private boolean take(int specimen, Spot spot, String key, long tookMs) throws Refused {
    switch (key.toLowerCase(Locale.ROOT)) {
      case "s" ->
          judging.answer(specimen, spot.pin(), Verdict.ACCEPTABLE, Optional.empty(), tookMs);
      case "u" -> judging.answer(specimen, spot.pin(), Verdict.UNJUDGED, Optional.empty(), tookMs);
      default -> {
        Optional<Views.Choice> choice =
            choices.stream().filter(c -> c.key().equals(key)).findFirst();
        if (choice.isEmpty()) {
          return false;
        }
        Optional<FindingKind> finding =
            Offered.KINDS.stream().filter(k -> k.id().equals(choice.get().id())).findFirst();
        judging.answer(specimen, spot.pin(), Verdict.DEFECT, finding, tookMs);
      }
    }
    return true;
  }

  private void tell(int number) {
    Specimen specimen = judging.set().specimen(number);
    List<DrillAnswer> answers = judging.answers(number);
    for (Spot spot : specimen.spots()) {
      DrillAnswer answer =
          answers.stream().filter(a -> a.pin() == spot.pin()).findFirst().orElseThrow();
      Telling.Told told = new Telling(words).of(spot, answer);
      boolean inFull = specimen.spots().size() == 1 || !told.good();
      out.println(
          "%s %s  %s"
              .formatted(
                  judging.name(number),
                  words.get("drill.terminal.pin", spot.pin()),
                  told.headline()));
      if (inFull) {
        told.lines().forEach(line -> out.println("  %-14s %s".formatted(line.name(), line.text())));
      }
    }
  }
}
