package leadlight.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.imgcodecs.Imgcodecs;

/**
 * Damages the samples as cards and cables do, and counts how many damaged files are named, of all
 * and of those that would change a verdict if they were scored: {@code mvn test
 * -Dtest=DamageBenchmark -Ddamage.flips=N [-Ddamage.seed=S] [-Ddamage.part=K/OF]}, N single flipped
 * bits, N/4 zeroed sectors and N/4 losses of 1 to 512 bytes; of these one part only, so that a long
 * count can be made in pieces. Misses are kept in target/damage. {@code -Ddamage.good=FOLDER}
 * counts whole files that are refused. Figures are kept in docs/trust.md.
 */
class DamageBenchmark {

  private static final int SAMPLES = 10;
  private static final int SECTOR = 512;
  private static final AcceptanceSet LIMITS = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);

  private final Map<String, Integer> counts = new TreeMap<>();
  private final String[] part = System.getProperty("damage.part", "0/1").split("/");
  private int made;

  @TempDir Path scratch;

  @Test
  @EnabledIfSystemProperty(named = "damage.flips", matches = "\\d+")
  void ofDamageThatChangesAVerdict() throws IOException {
    int flips = Integer.getInteger("damage.flips");
    List<TrialPhoto> samples = TruthFolder.read(Path.of("sample-images")).subList(0, SAMPLES);
    Random random = new Random(Long.getLong("damage.seed", 1));
    for (TrialPhoto sample : samples) {
      // Reading once by Leadlight has the native library loaded in Leadlight's own way.
      new PhotoReader().read(sample.file()).close();
      PhotoScorer scorer = scorer(sample.truth().orElseThrow());
      byte[] whole = Files.readAllBytes(sample.file());
      String before = verdicts(scorer, whole).orElseThrow();
      for (int i = 0; i < flips / SAMPLES; i++) {
        count("flipped bits", sample.file(), flipped(whole, random), scorer, before);
      }
      for (int i = 0; i < flips / SAMPLES / 4; i++) {
        count("zeroed sectors", sample.file(), zeroed(whole, random), scorer, before);
        count("lost bytes", sample.file(), shortened(whole, random), scorer, before);
      }
      // A long run that is broken off has said how far it came.
      System.out.println(sample.file().getFileName() + " done, all so far:");
      counts.forEach((what, count) -> System.out.println(what + ": " + count));
    }
  }

  @Test
  @EnabledIfSystemProperty(named = "damage.good", matches = ".+")
  void wholeFilesRefused() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(System.getProperty("damage.good")))) {
      for (Path file : files.filter(it -> it.toString().endsWith(".jpg")).sorted().toList()) {
        try (Photo photo = new PhotoReader().read(file)) {
          counts.merge("read", 1, Integer::sum);
        } catch (UserError e) {
          counts.merge("refused", 1, Integer::sum);
          System.out.println(e.getMessage());
        }
      }
    }
    counts.forEach((what, count) -> System.out.println(what + ": " + count));
  }

  private void count(String kind, Path sample, byte[] damaged, PhotoScorer scorer, String before)
      throws IOException {
    if (made++ % Integer.parseInt(part[1]) != Integer.parseInt(part[0])) {
      return;
    }
    String named = "not named";
    try {
      new PhotoReader().read(Files.write(scratch.resolve("damaged.jpg"), damaged)).close();
    } catch (UserError e) {
      named = "named";
    }
    String changed =
        verdicts(scorer, damaged)
            .map(after -> after.equals(before) ? "same verdicts" : "other verdicts")
            .orElse("not decoded at all");
    counts.merge(kind + ", " + changed + ", " + named, 1, Integer::sum);
    if (changed.equals("other verdicts") && named.equals("not named")) {
      keep(kind, sample, damaged);
    }
  }

  private void keep(String kind, Path sample, byte[] damaged) throws IOException {
    byte[] whole = Files.readAllBytes(sample);
    int at = Arrays.mismatch(whole, damaged);
    Path missed = Files.createDirectories(Path.of("target/damage"));
    String name = (kind + " " + at + " " + sample.getFileName()).replace(' ', '-');
    Files.write(missed.resolve(name), damaged);
    System.out.println("missed: " + name + " of " + whole.length + " bytes");
  }

  /** What would be said if nobody looked: the decoder's picture, scored. */
  private Optional<String> verdicts(PhotoScorer scorer, byte[] jpeg) throws IOException {
    Mat decoded = Imgcodecs.imdecode(new MatOfByte(jpeg), Imgcodecs.IMREAD_COLOR);
    try {
      if (decoded.empty()) {
        return Optional.empty();
      }
      Path file = scratch.resolve("decoded.bmp");
      Imgcodecs.imwrite(file.toString(), decoded);
      try (Photo photo = new PhotoReader().read(file)) {
        ScoredPhoto scored = scorer.score(photo);
        return Optional.of(
            scored.row().getClass().getSimpleName()
                + scored.joints().stream()
                    .map(joint -> joint.verdict().id())
                    .collect(Collectors.joining(",")));
      } catch (UserError e) {
        return Optional.empty();
      }
    } finally {
      decoded.release();
    }
  }

  private static byte[] flipped(byte[] whole, Random random) {
    byte[] bytes = whole.clone();
    bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
    return bytes;
  }

  private static byte[] zeroed(byte[] whole, Random random) {
    byte[] bytes = whole.clone();
    int from = random.nextInt(bytes.length) / SECTOR * SECTOR;
    Arrays.fill(bytes, from, Math.min(bytes.length, from + SECTOR), (byte) 0);
    return bytes;
  }

  private static byte[] shortened(byte[] whole, Random random) {
    int length = 1 + random.nextInt(random.nextBoolean() ? 4 : SECTOR);
    int at = random.nextInt(whole.length - length);
    byte[] bytes = Arrays.copyOf(whole, whole.length - length);
    System.arraycopy(whole, at + length, bytes, at, bytes.length - at);
    return bytes;
  }

  private static PhotoScorer scorer(PhotoTruth truth) {
    RowSpec row =
        RowSpec.plain(
            truth.leads(), truth.pitchMm(), OptionalDouble.empty(), OptionalDouble.empty());
    return new PhotoScorer(
        new Settings(row, 2, LIMITS.id(), Optional.empty(), Opinions.BOTH), LIMITS);
  }
}
