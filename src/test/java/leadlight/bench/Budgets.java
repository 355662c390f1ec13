package leadlight.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import leadlight.trial.truth.PhotoTruth;

/**
 * Time and memory of the whole program: photos of 2, 12 and 48 megapixels ({@link EnlargedSample})
 * against {@link Yardstick}, a batch, a row in doubt against a clear one, and the start of what
 * needs no picture. Writes a page in Markdown; about three minutes on a quiet machine.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.mainClass=leadlight.bench.Budgets \
 *   -Dexec.args="docs/time-and-memory.md"
 * </pre>
 */
public final class Budgets {

  private static final double[] MEGAPIXELS = {2, 12, 48};
  private static final int RUNS = 5;
  private static final int STARTS = 5;
  private static final int BATCH = 8;
  private static final double BATCH_MEGAPIXELS = 12;

  /** A sample whose row is found, but whose joints are seen too badly to judge them. */
  private static final String DOUBTED = "base-station-port-unfit";

  private static final String CLEAR = "base-station-port-good";

  private static final String HEADING =
      """
      # Time and memory

      Made by `leadlight.bench.Budgets` (its javadoc has the command); do not edit by hand. %d cores, median of %d
      runs, load %s at the start and %s at the end, nice %s: on a machine that does other things the ratios hold better than
      the seconds. Processor time is that of all threads; memory is the most that was resident.

      ## A photo

      Whole process, `./leadlight score`, from its start to its end, against OpenCV's `imread` and one
      `matchTemplate` (TM_CCOEFF_NORMED) over the whole picture in colour, by a template one pitch wide and two
      long, in a process that runs already; the two in turn. The photo is a sample of 19 leads, enlarged until the
      row is as wide as the picture, with noise of 2 grey levels: `EnlargedSample`.

      | photo | file | template | score | processor | peak memory | decode + match | ratio | wanted |
      |---|---|---|---|---|---|---|---|---|
      """;

  private final Path scratch;
  private final StringBuilder page = new StringBuilder();

  private Budgets(Path scratch) {
    this.scratch = scratch;
  }

  /** Writes the page; argument: the file to write. */
  public static void main(String[] args) throws Exception {
    Budgets budgets = new Budgets(Files.createTempDirectory("leadlight-budgets-"));
    String before = load();
    // The launcher may have to build the program or its class archive first.
    ProcessRun.of(List.of("./leadlight", "--version"));
    EnlargedSample sample = new EnlargedSample();
    double match = 0;
    for (double megapixels : MEGAPIXELS) {
      double seconds = budgets.photo(sample, megapixels);
      match = megapixels == BATCH_MEGAPIXELS ? seconds : match;
    }
    budgets.batch(sample, match);
    budgets.doubt();
    budgets.starts();
    String heading =
        HEADING.formatted(Runtime.getRuntime().availableProcessors(), RUNS, before, load(), nice());
    Files.writeString(Path.of(args[0]), heading + budgets.page);
  }

  private static String load() throws IOException {
    return Files.readString(Path.of("/proc/loadavg")).split(" ")[0];
  }

  /** Field 19 of proc(5): -20 is the highest priority, 0 the usual one. */
  private static String nice() throws IOException {
    String stat = Files.readString(Path.of("/proc/self/stat"));
    return stat.substring(stat.lastIndexOf(')') + 2).split(" ")[16];
  }

  /** A line of the first table; gives the yardstick's seconds. */
  private double photo(EnlargedSample sample, double megapixels)
      throws IOException, InterruptedException {
    Path photo = sample.write(megapixels, scratch);
    int pitchPx = (int) Math.round(sample.truth().pitchPx() * sample.scale(megapixels));
    List<ProcessRun> runs = new ArrayList<>();
    double[] matches = new double[RUNS];
    Yardstick.seconds(photo, pitchPx);
    score(photo, sample.truth());
    for (int i = 0; i < RUNS; i++) {
      runs.add(score(photo, sample.truth()));
      matches[i] = Yardstick.seconds(photo, pitchPx);
    }
    double match = ProcessRun.median(matches);
    double score = ProcessRun.median(runs, ProcessRun::seconds);
    line(
        "| %.0f MP | %.1f MB | %d x %d px | %.2f s | %.2f s | %.0f MB | %.3f s | %.2f | %s |%n",
        megapixels,
        Files.size(photo) / 1e6,
        pitchPx,
        2 * pitchPx,
        score,
        ProcessRun.median(runs, ProcessRun::processorSeconds),
        runs.stream().mapToDouble(ProcessRun::peakMb).max().orElseThrow(),
        match,
        score / match,
        megapixels == 2 ? "1.2" : megapixels == 12 ? "0.7, 250 MB" : "0.5, 600 MB");
    return match;
  }

  private ProcessRun score(Path photo, PhotoTruth truth) throws IOException, InterruptedException {
    ProcessRun run =
        ProcessRun.of(command("score", photo, truth, "--out", scratch.resolve("out").toString()));
    if (run.status() == 2 || run.status() == 70) {
      throw new IllegalStateException("score ended with " + run.status());
    }
    return run;
  }

  private static List<String> command(String name, Path what, PhotoTruth truth, String... more) {
    return Stream.concat(
            Stream.of(
                "./leadlight",
                name,
                what.toString(),
                "--leads",
                "" + truth.leads(),
                "--pitch",
                "" + truth.pitchMm()),
            Stream.of(more))
        .toList();
  }

  private void batch(EnlargedSample sample, double match) throws IOException, InterruptedException {
    Path day = scratch.resolve("day");
    for (int i = 0; i < BATCH; i++) {
      Path board = Files.createDirectories(day.resolve("job").resolve("board " + i));
      sample.write(BATCH_MEGAPIXELS, i + 1, board);
    }
    Path out = scratch.resolve("batch");
    ProcessRun run =
        ProcessRun.of(
            command(
                "batch",
                day,
                sample.truth(),
                "--out",
                out.toString(),
                "--record",
                out.resolve("record").toString()));
    int cores = Runtime.getRuntime().availableProcessors();
    line(
        """

        ## A batch

        %d new photos of %.0f MP, one run from start to end: %.2f s and %.2f s of processor time a photo, %.2f of
        decode + match (wanted 0.4); %.0f %% of %d cores busy (wanted 95 %%); at most %.0f MB.
        """,
        BATCH,
        BATCH_MEGAPIXELS,
        run.seconds() / BATCH,
        run.processorSeconds() / BATCH,
        run.seconds() / BATCH / match,
        100 * run.processorSeconds() / run.seconds() / cores,
        cores,
        run.peakMb());
  }

  private void doubt() throws IOException, InterruptedException {
    List<List<ProcessRun>> runs = List.of(new ArrayList<>(), new ArrayList<>());
    List<EnlargedSample> samples = List.of(new EnlargedSample(CLEAR), new EnlargedSample(DOUBTED));
    Path clear = samples.get(0).write(2, 1, scratch);
    Path doubted = samples.get(1).write(2, 2, scratch);
    for (int i = 0; i < RUNS; i++) {
      runs.get(0).add(score(clear, samples.get(0).truth()));
      runs.get(1).add(score(doubted, samples.get(1).truth()));
    }
    double[] processor =
        runs.stream()
            .mapToDouble(it -> ProcessRun.median(it, ProcessRun::processorSeconds))
            .toArray();
    double[] clock =
        runs.stream().mapToDouble(it -> ProcessRun.median(it, ProcessRun::seconds)).toArray();
    line(
        """

        ## A row in doubt

        At 2 MP a clear row (`%s`) takes %.2f s and %.2f s of processor time, one in doubt
        (`%s`) %.2f s and %.2f s: %.2f and %.2f times as much (wanted at most 2).
        """,
        CLEAR,
        clock[0],
        processor[0],
        DOUBTED,
        clock[1],
        processor[1],
        clock[1] / clock[0],
        processor[1] / processor[0]);
  }

  private void starts() throws IOException, InterruptedException {
    page.append(
        """

        ## Start

        Whole process by the launcher of the sources, median of %d; wanted below 0.25 s.

        | call | seconds | processor |
        |---|---|---|
        """
            .formatted(STARTS));
    for (String call :
        List.of(
            "java -version",
            "./leadlight --version",
            "./leadlight --help",
            "./leadlight score --help",
            "./leadlight connector list",
            "./leadlight score --leads x",
            "./leadlight score no.jpg --leads 19 --pitch 0.5")) {
      List<ProcessRun> runs = new ArrayList<>();
      for (int i = 0; i < STARTS; i++) {
        runs.add(ProcessRun.of(List.of(call.split(" "))));
      }
      line(
          "| `%s` | %.2f s | %.2f s |%n",
          call,
          ProcessRun.median(runs, ProcessRun::seconds),
          ProcessRun.median(runs, ProcessRun::processorSeconds));
    }
  }

  private void line(String format, Object... values) {
    page.append(String.format(Locale.ROOT, format, values));
  }
}
