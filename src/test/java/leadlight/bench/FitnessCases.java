package leadlight.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import leadlight.model.Opinions;
import leadlight.model.joint.Reading;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Remark;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.statistics.Rate;
import leadlight.text.Sentences;
import leadlight.trial.RowTally;
import leadlight.trial.Tally;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;

/**
 * What is done with unfit photos: alters every picture of a folder with truth in every way of
 * {@link Alteration} and writes a table in Markdown.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.mainClass=leadlight.bench.FitnessCases \
 *   -Dexec.args="FOLDER OUT.md"
 * </pre>
 */
public final class FitnessCases {

  private static final String HEADING =
      """
      # What is done with unfit photos

      Made by `leadlight.bench.FitnessCases` (its javadoc has the command); do not edit by hand. Each
      line: the same %d pictures with truth, altered. Before the semicolon: measures and second reader
      together, as usual; behind it: the measures alone (`--no-reader`). Rows: right, not found, wrong.
      Missed: of defects. False calls: of acceptable joints; an acceptable joint that was covered on
      purpose and is called a defect counts as one. Unjudged: of all counted joints of found rows;
      unlike: of all joints of found rows, those called unlike known joints, which are unjudged. A row
      of which leads were cut off is right if it is not found.

      | what was done | rows | missed | false calls | unjudged | unlike | said most often |
      |---|---|---|---|---|---|---|
      """;

  private FitnessCases() {}

  /** Writes the table; arguments: the folder of pictures, the file to write. */
  public static void main(String[] args) throws IOException {
    List<TrialPhoto> photos =
        TruthFolder.read(Path.of(args[0])).stream().filter(p -> p.truth().isPresent()).toList();
    StringBuilder table = new StringBuilder();
    table.append(HEADING.formatted(photos.size()));
    Path scratch = Files.createTempDirectory("leadlight-cases-");
    for (Alteration alteration : Alteration.all()) {
      table.append(line(alteration, photos, scratch)).append('\n');
    }
    Files.delete(scratch);
    Files.writeString(Path.of(args[1]), table.toString());
  }

  private static String line(Alteration alteration, List<TrialPhoto> photos, Path scratch)
      throws IOException {
    List<AlteredTrial.Result> both = run(alteration, photos, Opinions.BOTH, scratch);
    List<AlteredTrial.Result> alone = run(alteration, photos, Opinions.MEASURES, scratch);
    Tally tally = tally(both);
    Tally aloneTally = tally(alone);
    return String.format(
        Locale.ROOT,
        "| %s | %s; %s | %s; %s | %s; %s | %s; %s | %d | %s |",
        alteration.name(),
        rows(both),
        rows(alone),
        rate(tally.missed().plain()),
        rate(aloneTally.missed().plain()),
        rate(tally.falseCalls().plain()),
        rate(aloneTally.falseCalls().plain()),
        rate(tally.unjudged().plain()),
        rate(aloneTally.unjudged().plain()),
        both.stream().mapToLong(result -> unlike(result.scored())).sum(),
        mostSaid(both));
  }

  private static List<AlteredTrial.Result> run(
      Alteration alteration, List<TrialPhoto> photos, Opinions opinions, Path scratch)
      throws IOException {
    List<AlteredTrial.Result> results = new ArrayList<>();
    for (TrialPhoto photo : photos) {
      results.add(AlteredTrial.run(photo, alteration, opinions, scratch));
    }
    return results;
  }

  private static String rows(List<AlteredTrial.Result> results) {
    RowTally rows = RowTally.of(results.stream().map(result -> result.outcome().row()).toList());
    return "%d, %d, %d"
        .formatted(rows.right().count(), rows.notFound().count(), rows.wrong().count());
  }

  private static Tally tally(List<AlteredTrial.Result> results) {
    return Tally.of(
        results.stream().flatMap(result -> result.outcome().joints().stream()).toList());
  }

  private static long unlike(ScoredPhoto scored) {
    return scored.joints().stream()
        .filter(joint -> joint.joint().byReader().map(Reading::unlike).orElse(false))
        .count();
  }

  private static String rate(Rate rate) {
    return rate.of() == 0 ? "-" : String.format(Locale.ROOT, "%d/%d", rate.count(), rate.of());
  }

  private static String mostSaid(List<AlteredTrial.Result> results) {
    Map<String, Integer> said = new LinkedHashMap<>();
    for (AlteredTrial.Result result : results) {
      sentence(result.scored()).ifPresent(text -> said.merge(text, 1, Integer::sum));
    }
    return said.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(most -> most.getValue() + " times: " + most.getKey())
        .orElse("");
  }

  /** The first thing that a user reads on the photo, without the numbers of this one. */
  private static Optional<String> sentence(ScoredPhoto scored) {
    Stream<Remark> row =
        scored.row() instanceof RowOutcome.NotFound none
            ? Stream.of(none.reason())
            : Stream.empty();
    Stream<Remark> joints =
        scored.joints().stream()
            .flatMap(joint -> joint.doubts().stream())
            .<Remark>map(doubt -> doubt)
            .filter(doubt -> !(doubt instanceof Doubt.Possible));
    return Stream.of(row, scored.fitness().stream().<Remark>map(note -> note), joints)
        .flatMap(remarks -> remarks)
        .findFirst()
        .map(remark -> remark.topic() + ": " + Sentences.english().general(remark));
  }
}
