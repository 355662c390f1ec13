package leadlight.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.grade.AcceptanceSet;
import leadlight.model.RowOutcome;
import leadlight.model.ScoredPhoto;
import leadlight.model.Settings;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight score}: photos to results. */
@Command(
    name = "score",
    description = "Scores the joints of a row in each photo.",
    mixinStandardHelpOptions = true)
final class ScoreCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "PHOTO", arity = "1..*", description = "Photos to score.")
  private List<Path> photos;

  @Option(
      names = "--class",
      paramLabel = "1|2|3",
      defaultValue = "2",
      description = "Product class (default: ${DEFAULT-VALUE}).")
  private int productClass;

  @Mixin private RowOptions row;

  @Mixin private Limits limits;

  ScoreCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    AcceptanceSet set = limits.load();
    Settings settings = new Settings(row.spec(), productClass, set.id(), Optional.empty());
    PhotoScorer scorer = new PhotoScorer(settings, set);
    ExitStatus worst = ExitStatus.GOOD;
    for (Path file : photos) {
      worst = worst.worse(one(file, scorer));
    }
    return worst.code();
  }

  private ExitStatus one(Path file, PhotoScorer scorer) {
    try (Photo photo = new PhotoReader().read(file)) {
      ScoredPhoto scored = scorer.score(photo);
      String line =
          scored.row() instanceof RowOutcome.NotFound none
              ? "row not found: " + none.reason()
              : scored.verdict().id();
      streams.out().println(file + ": " + line);
      return status(scored.verdict());
    } catch (UserError e) {
      streams.err().println("leadlight: " + e.getMessage());
      return ExitStatus.UNUSABLE;
    }
  }

  private static ExitStatus status(Verdict verdict) {
    return switch (verdict) {
      case DEFECT -> ExitStatus.DEFECT;
      case UNJUDGED -> ExitStatus.UNJUDGED;
      case ACCEPTABLE, PROCESS_INDICATOR -> ExitStatus.GOOD;
    };
  }
}
