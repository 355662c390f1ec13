package leadlight.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import leadlight.app.output.Reports;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.PointPx;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowSpec;
import leadlight.page.PhotoPage;
import leadlight.page.words.PageContext;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.reader.SecondReader;
import leadlight.report.ReportWriter;
import leadlight.report.words.ReportContext;
import leadlight.report.words.StatedLimits;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import leadlight.trial.truth.PhotoTruth;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;

/**
 * Time and memory for photos of 2, 12 and 48 megapixels ({@link EnlargedSample}). Writes a table in
 * Markdown.
 *
 * <p>Whole process: {@code ./leadlight score} from start to end, the median of the runs; peak
 * memory is VmHWM of Linux' /proc. Within one process, warm: reading, scoring and reporting a photo
 * against OpenCV's decoding plus one full-size template match (normalised correlation, the template
 * one pitch by two), the median of the runs, side by side.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.mainClass=leadlight.bench.Budgets -Dexec.args="OUT.md"
 * </pre>
 */
public final class Budgets {

  private static final String HEADING =
      """
      # Time and memory

      Made by `leadlight.bench.Budgets` (its javadoc has the command, and what is measured); do not
      edit by hand, and run it on a machine that does nothing else. %d cores, median of %d runs.
      Wanted: 2 MP under 1 s, 12 MP under 2 s, 48 MP under 5 s for the whole process, start included;
      under 1 GB; and, warm, at most twice decoding plus one full-size template match by OpenCV.

      | photo | whole process | peak memory | read, score, report | decode + match | ratio |
      |---|---|---|---|---|---|
      """;

  private static final double[] MEGAPIXELS = {2, 12, 48};
  private static final int RUNS = 5;

  /** A batch runs compiled code; so many photos until it is. */
  private static final int WARM_UP = 10;

  private final EnlargedSample sample = new EnlargedSample();
  private final PhotoTruth truth = sample.truth();
  private final Path scratch;

  private Budgets(Path scratch) {
    this.scratch = scratch;
  }

  /** Writes the table; argument: the file to write. */
  public static void main(String[] args) throws Exception {
    Budgets budgets = new Budgets(Files.createTempDirectory("leadlight-budgets-"));
    StringBuilder table = new StringBuilder();
    table.append(HEADING.formatted(Runtime.getRuntime().availableProcessors(), RUNS));
    for (double megapixels : MEGAPIXELS) {
      table.append(budgets.line(megapixels));
    }
    Files.writeString(Path.of(args[0]), table.toString());
  }

  private String line(double megapixels) throws Exception {
    Path photo = sample.write(megapixels, scratch);
    process(photo);
    List<double[]> processes = new ArrayList<>();
    for (int i = 0; i < RUNS; i++) {
      processes.add(process(photo));
    }
    double work = medianSeconds(() -> work(photo));
    double yardstick = medianSeconds(() -> yardstick(photo, sample.scale(megapixels)));
    return String.format(
        Locale.ROOT,
        "| %.0f MP, %.0f px a pitch | %.2f s | %.0f MB | %.3f s | %.3f s | %.2f |%n",
        megapixels,
        truth.pitchPx() * sample.scale(megapixels),
        median(processes.stream().mapToDouble(run -> run[0]).toArray()),
        processes.stream().mapToDouble(run -> run[1]).max().orElseThrow(),
        work,
        yardstick,
        work / yardstick);
  }

  /** Seconds and megabytes of the launched program. */
  private double[] process(Path photo) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(
                "./leadlight",
                "score",
                photo.toString(),
                "--leads",
                "" + truth.leads(),
                "--pitch",
                "" + truth.pitchMm(),
                "--out",
                scratch.resolve("out").toString())
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    double peakMb = 0;
    while (process.isAlive()) {
      peakMb = Math.max(peakMb, peakMb(process.toHandle()));
      Thread.sleep(5);
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    if (process.exitValue() == 2 || process.exitValue() == 70) {
      throw new IllegalStateException("score ended with " + process.exitValue());
    }
    return new double[] {seconds, peakMb};
  }

  /** Of the launcher, which becomes the program, or of the program that it starts. */
  private static double peakMb(ProcessHandle process) {
    double mine = peakMb(process.pid());
    return Math.max(
        mine, process.descendants().mapToDouble(child -> peakMb(child.pid())).max().orElse(0));
  }

  private static double peakMb(long pid) {
    try {
      return Files.readAllLines(Path.of("/proc/" + pid + "/status"), StandardCharsets.UTF_8)
          .stream()
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToDouble(line -> Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024)
          .findFirst()
          .orElse(0);
    } catch (IOException gone) {
      return 0;
    }
  }

  private Void work(Path file) {
    RowSpec row =
        RowSpec.plain(
            truth.leads(), truth.pitchMm(), OptionalDouble.empty(), OptionalDouble.empty());
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    PhotoScorer scorer =
        new PhotoScorer(new Settings(row, 2, limits.id(), Optional.empty()), limits);
    try (Photo photo = new PhotoReader().read(file)) {
      ScoredPhoto scored = scorer.score(photo);
      new ReportWriter(
              new ReportContext(
                  "bench", SecondReader.version(), Reports.stated(limits), Messages.of("en")),
              Budgets.page(limits)::html)
          .write(scored, photo.frame(), scratch.resolve("out"));
    }
    return null;
  }

  private static PhotoPage page(AcceptanceSet limits) {
    return new PhotoPage(
        new PageContext(
            "bench",
            new StatedLimits(limits.id(), true, limits.name(), limits.notes()),
            Messages.of("en"),
            LengthUnit.MM,
            Optional.empty()));
  }

  private Void yardstick(Path file, double scale) {
    Mat picture = Imgcodecs.imread(file.toString());
    PointPx toe = truth.joints().get(truth.leads() / 2).landToePx();
    int pitchPx = (int) Math.round(truth.pitchPx() * scale);
    Mat template =
        picture.submat(
            new Rect(
                (int) (toe.x() * scale) - pitchPx / 2,
                picture.rows() / 2 - pitchPx,
                pitchPx,
                2 * pitchPx));
    Mat match = new Mat();
    Imgproc.matchTemplate(picture, template, match, Imgproc.TM_CCOEFF_NORMED);
    match.release();
    template.release();
    picture.release();
    return null;
  }

  private static double medianSeconds(Callable<Void> work) throws Exception {
    for (int i = 0; i < WARM_UP; i++) {
      work.call();
    }
    double[] seconds = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      long start = System.nanoTime();
      work.call();
      seconds[i] = (System.nanoTime() - start) / 1e9;
    }
    return median(seconds);
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
