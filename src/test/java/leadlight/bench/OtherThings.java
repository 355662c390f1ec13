package leadlight.bench;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import leadlight.data.DataFile;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Reading;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.statistics.Rate;
import leadlight.trial.Tally;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.JointOutcome;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;
import org.opencv.core.Mat;
import org.opencv.imgcodecs.Imgcodecs;

/**
 * What the second reader says of things that are no joints: rows claimed at other places of
 * pictures with truth, and on pictures of other things; and what becomes of the latter when the row
 * is looked for. Writes a table in Markdown.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.mainClass=leadlight.bench.OtherThings \
 *   -Dexec.args="FOLDER OUT.md"
 * </pre>
 */
public final class OtherThings {

  /** Every so many pictures of the folder. */
  private static final int EACH = 3;

  private static final String HEADING =
      """
      | a row claimed at | rows | joints | called unlike | row refused | said good | said defect | unjudged | true defects said good |
      |---|---|---|---|---|---|---|---|---|
      """;

  private static final AcceptanceSet LIMITS = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);

  private final double refusedFrom =
      DataFile.builtIn("reader/rows.json").read(JsonNode.class).at("/doubt_from/value").asDouble();
  private final StringBuilder table = new StringBuilder(HEADING);
  private final StringBuilder looks = new StringBuilder();
  private final List<TrialPhoto> photos;
  private final Path scratch;

  private OtherThings(List<TrialPhoto> photos, Path scratch) {
    this.photos = photos;
    this.scratch = scratch;
  }

  /** Writes the table; arguments: the folder of pictures, the file to write. */
  public static void main(String[] args) throws IOException {
    List<TrialPhoto> all = TruthFolder.read(Path.of(args[0]));
    List<TrialPhoto> some =
        IntStream.range(0, all.size())
            .filter(i -> i % EACH == 0)
            .mapToObj(all::get)
            .filter(photo -> photo.truth().isPresent())
            .toList();
    OtherThings things = new OtherThings(some, Files.createTempDirectory("leadlight-other-"));
    things.places();
    things.pictures();
    Files.delete(things.scratch);
    Files.writeString(Path.of(args[1]), things.table.append(things.looks).toString());
  }

  private void places() {
    for (OtherPlace place : OtherPlace.all()) {
      List<ScoredPhoto> scored = new ArrayList<>();
      List<JointOutcome> outcomes = new ArrayList<>();
      for (TrialPhoto trial : photos) {
        PhotoTruth truth = trial.truth().orElseThrow();
        RowOutcome.Found row = place.row(truth);
        try (Photo photo = new PhotoReader().read(trial.file())) {
          if (inside(row, photo)) {
            ScoredPhoto one = scorer(truth).score(photo, row);
            scored.add(one);
            outcomes.addAll(Comparison.of(truth, one).joints());
          }
        }
      }
      if (!scored.isEmpty()) {
        Rate missed = Tally.of(outcomes).missed().plain();
        line(place.name(), scored, missed.count() + " of " + missed.of());
      }
    }
  }

  private void pictures() throws IOException {
    for (OtherPicture other : OtherPicture.all()) {
      List<ScoredPhoto> claimed = new ArrayList<>();
      List<ScoredPhoto> looked = new ArrayList<>();
      for (int seed = 0; seed < photos.size(); seed++) {
        PhotoTruth truth = photos.get(seed).truth().orElseThrow();
        Path file = drawn(other, photos.get(seed), seed);
        try (Photo photo = new PhotoReader().read(file)) {
          claimed.add(scorer(truth).score(photo, OtherPlace.TRUE.row(truth)));
          looked.add(scorer(truth).score(photo));
        }
        Files.delete(file);
      }
      line("a picture of " + other.name(), claimed, "");
      long found = looked.stream().filter(one -> one.row() instanceof RowOutcome.Found).count();
      looks.append(
          "%nA row looked for in a picture of %s: found in %d of %d.%n"
              .formatted(other.name(), found, looked.size()));
    }
  }

  private Path drawn(OtherPicture other, TrialPhoto trial, int seed) {
    new PhotoReader().read(trial.file()).close();
    Mat picture = Imgcodecs.imread(trial.file().toString());
    other.draw().accept(picture, seed);
    Path file = scratch.resolve("other.png");
    Imgcodecs.imwrite(file.toString(), picture);
    picture.release();
    return file;
  }

  private void line(String name, List<ScoredPhoto> scored, String missed) {
    List<GradedJoint> joints = scored.stream().flatMap(one -> one.joints().stream()).toList();
    table.append(
        String.format(
            Locale.ROOT,
            "| %s | %d | %d | %.1f %% | %d | %.1f %% | %.1f %% | %.1f %% | %s |%n",
            name,
            scored.size(),
            joints.size(),
            share(joints, joints.stream().filter(one -> reading(one).unlike()).count()),
            scored.stream().filter(this::refused).count(),
            share(joints, count(joints, Verdict.ACCEPTABLE, Verdict.PROCESS_INDICATOR)),
            share(joints, count(joints, Verdict.DEFECT)),
            share(joints, count(joints, Verdict.UNJUDGED)),
            missed));
  }

  private boolean refused(ScoredPhoto scored) {
    double[] sorted =
        scored.joints().stream().mapToDouble(one -> reading(one).strangeness()).sorted().toArray();
    return sorted[sorted.length / 2] >= refusedFrom;
  }

  private static Reading reading(GradedJoint joint) {
    return joint.joint().byReader().orElseThrow();
  }

  private static long count(List<GradedJoint> joints, Verdict... verdicts) {
    return joints.stream().filter(one -> List.of(verdicts).contains(one.verdict())).count();
  }

  private static double share(List<GradedJoint> joints, long count) {
    return 100.0 * count / joints.size();
  }

  private static boolean inside(RowOutcome.Found row, Photo photo) {
    return row.leads().stream()
        .map(lead -> lead.landToePx())
        .allMatch(
            at ->
                at.x() >= 0
                    && at.y() >= 0
                    && at.x() < photo.frame().widthPx()
                    && at.y() < photo.frame().heightPx());
  }

  private static PhotoScorer scorer(PhotoTruth truth) {
    RowSpec row =
        RowSpec.plain(
            truth.leads(), truth.pitchMm(), OptionalDouble.empty(), OptionalDouble.empty());
    return new PhotoScorer(new Settings(row, 2, LIMITS.id(), Optional.empty()), LIMITS);
  }
}
