package leadlight.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.picture.RowPictures;
import leadlight.model.result.Settings;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.reader.SecondReader;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;
import leadlight.trial.truth.TruthRow;
import leadlight.vision.Threads;

/**
 * Time of the second reader on one core, warm: a line in Markdown for each row with truth in a
 * folder. Reading includes the covers that tell what moved it, which only called joints need; a
 * glance is one run of the network for each joint and nothing else.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.mainClass=leadlight.bench.ReaderTime \
 *   -Dexec.args="FOLDER OUT.md"
 * </pre>
 */
public final class ReaderTime {

  private static final int WARM_UP = 10;
  private static final int RUNS = 15;

  private static final String HEADING =
      """
      | row | joints | called | one run a joint, wall | processor | reading a joint, wall | processor |
      |---|---|---|---|---|---|---|
      """;

  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private ReaderTime() {}

  /** Writes the table; arguments: the folder of pictures, the file to write. */
  public static void main(String[] args) throws IOException {
    Threads.set(1);
    StringBuilder table = new StringBuilder(HEADING);
    for (TrialPhoto trial : TruthFolder.read(Path.of(args[0]))) {
      if (trial.truth().isPresent()) {
        table.append(line(trial));
      }
    }
    Files.writeString(Path.of(args[1]), table.toString());
  }

  private static String line(TrialPhoto trial) {
    SecondReader reader = SecondReader.builtIn();
    RowPictures row = pictures(trial);
    long called =
        reader.read(row).joints().stream().filter(reading -> reading.moved().isPresent()).count();
    double[] run = msEach(() -> reader.glance(row), row.joints().size());
    double[] read = msEach(() -> reader.read(row), row.joints().size());
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %.2f ms | %.2f ms | %.2f ms | %.2f ms |%n",
        trial.file().getFileName(),
        row.joints().size(),
        called,
        run[0],
        run[1],
        read[0],
        read[1]);
  }

  private static RowPictures pictures(TrialPhoto trial) {
    PhotoTruth truth = trial.truth().orElseThrow();
    RowSpec row =
        RowSpec.plain(
            truth.leads(), truth.pitchMm(), OptionalDouble.empty(), OptionalDouble.empty());
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    try (Photo photo = new PhotoReader().read(trial.file())) {
      return new PhotoScorer(new Settings(row, 2, limits.id(), Optional.empty()), limits)
          .pictures(photo, TruthRow.of(truth));
    }
  }

  /** Medians of wall and processor time, milliseconds a joint. */
  private static double[] msEach(Runnable work, int joints) {
    List<Double> wall = new ArrayList<>();
    List<Double> processor = new ArrayList<>();
    for (int i = 0; i < WARM_UP + RUNS; i++) {
      long start = System.nanoTime();
      long startProcessor = CLOCK.getCurrentThreadCpuTime();
      work.run();
      if (i >= WARM_UP) {
        processor.add((CLOCK.getCurrentThreadCpuTime() - startProcessor) / 1e6 / joints);
        wall.add((System.nanoTime() - start) / 1e6 / joints);
      }
    }
    return new double[] {median(wall), median(processor)};
  }

  private static double median(List<Double> values) {
    return values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
  }
}
