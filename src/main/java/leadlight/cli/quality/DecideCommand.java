package leadlight.cli.quality;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.app.quality.DrawnSample;
import leadlight.app.quality.LotFile;
import leadlight.app.quality.SampleResults;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.PageShow;
import leadlight.cli.terminal.Streams;
import leadlight.data.DataFile;
import leadlight.model.UserError;
import leadlight.quality.sampling.Inspection;
import leadlight.quality.sampling.LotDecision;
import leadlight.quality.sampling.SamplePages;
import leadlight.quality.sampling.SwitchingRules.LotResult;
import leadlight.statistics.Rate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight sample decide}: accept or refuse the lot. */
@Command(
    name = "decide",
    description = "Accepts or refuses the lot by the results of its sample.",
    mixinStandardHelpOptions = true)
public final class DecideCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(
      paramLabel = "DIR",
      description =
          "What leadlight sample draw wrote, with results.csv filled in: acceptable or "
              + "defect for each unit.")
  private Path folder;

  @Option(names = "--ask", description = "Ask for each verdict that results.csv lacks.")
  private boolean ask;

  @Option(
      names = "--history",
      paramLabel = "LOTS.csv",
      description = "Add the lot to this file, for the severity of the next one.")
  private Optional<Path> history = Optional.empty();

  @Option(
      names = "--name",
      paramLabel = "LOT",
      description = "Name of the lot in that file (default: lot).")
  private Optional<String> name = Optional.empty();

  @Option(
      names = "--resumed",
      description =
          "The cause of a stop is mended: entered in that file before the lot, which must have been "
              + "inspected tightened.")
  private boolean resumed;

  @Option(
      names = "--reduced-agreed",
      description = "Those responsible agree to reduced inspection, as for the plan.")
  private boolean reducedAgreed;

  public DecideCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    Optional<LotFile.Entry> entry = entry();
    DrawnSample sample = DataFile.at(folder.resolve("plan.json")).read(DrawnSample.class);
    Map<String, String> verdicts = SampleResults.verdicts(folder, sample.items());
    List<String> inspected = inspect(sample, verdicts);
    List<String> bad =
        inspected.stream().filter(i -> verdicts.get(i).startsWith(SampleResults.BAD)).toList();
    LotDecision decision =
        LotDecision.of(sample.plan(), sample.lot(), new Rate(bad.size(), inspected.size()));
    List<String> notes = new ArrayList<>(unasked(verdicts.size() - inspected.size()));
    entry.ifPresent(it -> notes.add(it.append(decision.result())));
    List<String> refused = bad.stream().map(i -> i + ": " + verdicts.get(i)).toList();
    PageShow.write(SamplePages.decision(decision, notes, refused), folder, "decision", streams);
    return decision.result() == LotResult.REFUSED
        ? ExitStatus.DEFECT.code()
        : ExitStatus.GOOD.code();
  }

  /** Refused before anybody is asked for verdicts. */
  private Optional<LotFile.Entry> entry() {
    if (history.isEmpty() && (name.isPresent() || resumed || reducedAgreed)) {
      throw new UserError(
          "--name, --resumed and --reduced-agreed are of a file of lots; name it with --history,"
              + " or leave them out");
    }
    Optional<LotFile.Entry> entry =
        history.map(file -> new LotFile.Entry(file, name.orElse("lot"), resumed, reducedAgreed));
    entry.ifPresent(LotFile.Entry::check);
    return entry;
  }

  /** The units in the order of the draw, up to the one that decides. */
  private List<String> inspect(DrawnSample sample, Map<String, String> verdicts) {
    Inspection plan = sample.plan();
    BufferedReader in =
        new BufferedReader(new InputStreamReader(streams.in(), StandardCharsets.UTF_8));
    int units = 0;
    Optional<LotResult> result = Optional.empty();
    while (result.isEmpty()) {
      List<String> now = sample.items().subList(0, plan.nextStop(units));
      List<String> missing = now.stream().filter(i -> !verdicts.containsKey(i)).toList();
      if (!missing.isEmpty() && !ask) {
        throw lacking(missing, now.size(), units);
      }
      missing.forEach(item -> verdicts.put(item, asked(in, item)));
      units = now.size();
      int bad =
          (int) now.stream().filter(i -> verdicts.get(i).startsWith(SampleResults.BAD)).count();
      result = plan.after(units, bad);
    }
    return sample.items().subList(0, units);
  }

  private UserError lacking(List<String> missing, int of, int inspected) {
    return new UserError(
        (inspected == 0 ? "" : "the first %d units do not decide: ".formatted(inspected))
            + "%s lacks the verdict of %d of %d units, the first is \"%s\"; fill them in or use --ask"
                .formatted(folder.resolve("results.csv"), missing.size(), of, missing.get(0)));
  }

  private static List<String> unasked(int units) {
    return units == 0
        ? List.of()
        : List.of(
            units == 1
                ? "1 more result is filled in; the plan had decided before it, it does not count."
                : "%d more results are filled in; the plan had decided before them, they do not count."
                    .formatted(units));
  }

  private String asked(BufferedReader in, String item) {
    while (true) {
      streams.err().print(item + ": acceptable (a) or defect (d)? ");
      String answer = line(in, item).toLowerCase(Locale.ROOT);
      for (String word : List.of(SampleResults.GOOD, SampleResults.BAD)) {
        if (!answer.isEmpty() && word.startsWith(answer)) {
          return word;
        }
      }
    }
  }

  private static String line(BufferedReader in, String item) {
    try {
      String line = in.readLine();
      if (line == null) {
        throw new UserError("no answer for \"" + item + "\"; nothing was decided");
      }
      return line.strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
