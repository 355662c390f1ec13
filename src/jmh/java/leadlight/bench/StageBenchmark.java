package leadlight.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.joint.JointMeter;
import leadlight.model.joint.Joint;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.page.PhotoPage;
import leadlight.page.words.PageContext;
import leadlight.photo.Fitness;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.photo.PictureFacts;
import leadlight.pipeline.PhotoScorer;
import leadlight.report.ReportWriter;
import leadlight.report.WrittenReport;
import leadlight.report.words.ReportContext;
import leadlight.report.words.StatedLimits;
import leadlight.row.RowFinder;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What each stage costs on a photo: one of {@code sample-images} as it is, or enlarged to a width.
 *
 * <pre>
 * mvn -q -Pjmh test-compile exec:exec -Dexec.executable=java \
 *   -Dexec.args="-cp %classpath org.openjdk.jmh.Main StageBenchmark"
 * </pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class StageBenchmark {

  /** Megapixels of the enlarged sample. */
  @Param({"2", "12"})
  private double megapixels;

  private final RowSpec row =
      RowSpec.plain(19, 0.5, OptionalDouble.empty(), OptionalDouble.empty());
  private final AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
  private final PhotoScorer scorer =
      new PhotoScorer(new Settings(row, 2, limits.id(), Optional.empty()), limits);
  private final RowFinder finder = new RowFinder();
  private final JointMeter meter = new JointMeter();
  private final ReportWriter writer =
      new ReportWriter(
          new ReportContext(
              "bench", "", new StatedLimits("", true, "", List.of()), Messages.of("en")),
          new PhotoPage(
                  new PageContext(
                      "bench",
                      new StatedLimits("", true, "", List.of()),
                      Messages.of("en"),
                      LengthUnit.MM,
                      Optional.empty()))
              ::html);
  private Path scratch;
  private Path file;
  private Photo photo;
  private RowOutcome.Found found;
  private ScoredPhoto scored;

  /** Makes the photo and what later stages start from. */
  @Setup
  public void prepare() throws IOException {
    scratch = Files.createTempDirectory("leadlight-stages-");
    file = new EnlargedSample().write(megapixels, scratch);
    photo = new PhotoReader().read(file);
    found = (RowOutcome.Found) finder.find(photo.frame(), row, Optional.empty());
    scored = scorer.score(photo);
  }

  /** Frees the photo. */
  @TearDown
  public void close() {
    photo.close();
  }

  /** File to photo. */
  @Benchmark
  public int decode() {
    try (Photo read = new PhotoReader().read(file)) {
      return read.info().widthPx();
    }
  }

  /** Photo to what it is fit for. */
  @Benchmark
  public PictureFacts fitness() {
    return new Fitness().facts(photo.frame());
  }

  /** Photo to row. */
  @Benchmark
  public RowOutcome row() {
    return finder.find(photo.frame(), row, Optional.empty());
  }

  /** Row to joints. */
  @Benchmark
  public List<Joint> joint() {
    return meter.cut(photo.frame(), row, found).measured().joints();
  }

  /** Result to files. */
  @Benchmark
  public WrittenReport report() {
    return writer.write(scored, photo.frame(), scratch);
  }

  /** File to files. */
  @Benchmark
  public WrittenReport wholePhoto() {
    try (Photo read = new PhotoReader().read(file)) {
      return writer.write(scorer.score(read), read.frame(), scratch);
    }
  }
}
