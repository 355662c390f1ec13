package leadlight.enrol;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import leadlight.data.DataFile;
import leadlight.enrol.learn.EnrolTuning;
import leadlight.enrol.learn.Enrolment.Setting;
import leadlight.enrol.learn.JointFeatures;
import leadlight.model.UserError;

/**
 * The daily photos of one known board, {@code checks.json} beside a bench's versions. The board is
 * always the same, so whatever differs from the first photos is the bench: its lamp, its focus, its
 * exposure.
 *
 * @param schema name and number of the format
 * @param checks the photos, in the order in which they came
 */
public record CheckBook(
    @JsonProperty(required = true) String schema,
    @JsonProperty(required = true) List<Check> checks) {

  /** The format. */
  public static final String SCHEMA = "leadlight/bench-checks/1";

  private static final String FILE = "checks.json";
  private static final int LIGHT = 0;
  private static final int COLOUR = 1;

  /** Copies the list; refuses another format. */
  public CheckBook {
    if (!SCHEMA.equals(schema)) {
      throw new IllegalArgumentException("schema must be " + SCHEMA + ", is " + schema);
    }
    checks = List.copyOf(checks);
    for (Check check : checks) {
      if (check.row().length != JointFeatures.COUNT) {
        throw new IllegalArgumentException(
            "row of %s must have %d numbers".formatted(check.file(), JointFeatures.COUNT));
      }
      if (check.setting().blurPitch().isEmpty()) {
        throw new IllegalArgumentException("%s must have an edge blur".formatted(check.file()));
      }
    }
  }

  /**
   * A photo.
   *
   * @param file its name
   * @param sha256 of its bytes
   * @param joints how many the row has
   * @param setting how it was taken
   * @param row mean numbers of its joints
   */
  public record Check(
      @JsonProperty(required = true) String file,
      @JsonProperty(required = true) String sha256,
      @JsonProperty(required = true) int joints,
      @JsonProperty(required = true) Setting setting,
      @JsonProperty(required = true) float[] row) {}

  /** A series without photos. */
  public static CheckBook empty() {
    return new CheckBook(SCHEMA, List.of());
  }

  /** The photos of a bench so far. */
  public static CheckBook in(Path benches, String bench) {
    Path file = benches.resolve(bench).resolve(FILE);
    return Files.exists(file) ? DataFile.at(file).read(CheckBook.class) : empty();
  }

  /**
   * Puts the series so far aside, as after a lamp was changed on purpose: the limits that it set
   * are those of another bench.
   *
   * @return where it is kept; empty if there was none
   */
  public static Optional<Path> putAside(Path benches, String bench) {
    Path folder = benches.resolve(bench);
    if (!Files.exists(folder.resolve(FILE))) {
      return Optional.empty();
    }
    Path aside = folder.resolve("checks-1.json");
    for (int n = 2; Files.exists(aside); n++) {
      aside = folder.resolve("checks-%d.json".formatted(n));
    }
    try {
      return Optional.of(Files.move(folder.resolve(FILE), aside));
    } catch (IOException e) {
      throw new UserError("cannot write to %s; check the folder".formatted(folder));
    }
  }

  /** Writes them beside the bench's versions. */
  public void write(Path benches, String bench) {
    DataFile.write(benches.resolve(bench).resolve(FILE), this);
  }

  /**
   * One photo more.
   *
   * @throws UserError if it was taken already, shows a row of another number of joints, or no edge
   *     that tells how sharp it is
   */
  public CheckBook and(String file, String sha256, RowLook look) {
    List<float[]> joints = JointFeatures.of(look.pictures());
    if (look.setting().blurPitch().isEmpty()) {
      throw new UserError(file + ": no edge tells how sharp it is; focus, and take it anew");
    }
    for (Check check : checks) {
      if (check.sha256().equals(sha256)) {
        throw new UserError(file + " is in the chart already; take the check photo anew each day");
      }
      if (check.joints() != joints.size()) {
        throw new UserError(
            "%s: a row of %d joints, the check board has %d; photograph the same board each day"
                .formatted(file, joints.size(), check.joints()));
      }
    }
    List<Check> more = new ArrayList<>(checks);
    more.add(new Check(file, sha256, joints.size(), look.setting(), JointFeatures.mean(joints)));
    return new CheckBook(SCHEMA, more);
  }

  /** From so many photos on there are limits. */
  public static int baseline() {
    return (int) EnrolTuning.builtIn().checksFrom().value();
  }

  /** The figures that are charted, by name, a value a photo. */
  public Map<String, List<Double>> figures() {
    Map<String, List<Double>> figures = new LinkedHashMap<>();
    figures.put("shade", away(LIGHT));
    figures.put("colour", away(COLOUR));
    figures.put("edge blur, pitches", each(it -> it.blurPitch().orElseThrow()));
    figures.put("bright level", each(Setting::bright));
    figures.put("dark level", each(Setting::dark));
    figures.put("pixels a pitch", each(Setting::pitchPx));
    return figures;
  }

  /** Whether small values of a figure are no trouble. */
  public static boolean isDistance(String figure) {
    return figure.equals("shade") || figure.equals("colour");
  }

  private List<Double> each(Function<Setting, Double> figure) {
    return checks.stream().map(Check::setting).map(figure).toList();
  }

  /** How far each photo's mean joint lies from those of the other first photos. */
  private List<Double> away(int block) {
    List<Double> away = new ArrayList<>();
    for (Check check : checks) {
      float[] usual = usualWithout(check);
      JointFeatures.Block it = JointFeatures.BLOCKS.get(block);
      double sum = 0;
      for (int i = it.from(); i < it.to(); i++) {
        sum += Math.pow(check.row()[i] - usual[i], 2);
      }
      away.add(Math.sqrt(sum / (it.to() - it.from())));
    }
    return away;
  }

  private float[] usualWithout(Check check) {
    List<float[]> others =
        checks.stream().limit(baseline()).filter(it -> it != check).map(Check::row).toList();
    return others.isEmpty() ? check.row() : JointFeatures.mean(others);
  }
}
