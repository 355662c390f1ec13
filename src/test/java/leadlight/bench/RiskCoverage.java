package leadlight.bench;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import leadlight.grade.TwoOpinions;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.statistics.Rate;

/**
 * What a border between sound and doubtful costs and buys, and how honest the chances are, by set
 * and lamp. A joint's chance of being bad is the highest of no lead, no fillet and a bridge, by
 * both opinions together. Risk and coverage as of a classifier that may decline (El-Yaniv and
 * Wiener 2010); reliability by bins of the chance. Limits of overhang are measured, not learned,
 * and left out; so are joints at a limit and rows not found right.
 *
 * <pre>
 * ./leadlight trial FOLDER --measures NAME.csv
 * mvn -q test-compile exec:java -Dexec.mainClass=leadlight.bench.RiskCoverage \
 *   -Dexec.args="OUT.md NAME.csv [...]"
 * </pre>
 */
public final class RiskCoverage {

  private static final String HEAD =
      """
      # Risk and coverage

      Written by `leadlight.bench.RiskCoverage` from `leadlight trial FOLDER --measures NAME.csv`, one table a set. A joint's chance of
      being bad is the highest of no lead, no fillet and a bridge, by both opinions together. Joints at a limit, overhangs and rows that
      were not found right are left out. What a trial counts is less favourable by what is left to the bench for other reasons (opinions
      that differ, blur, glare, a limit undecided).

      Nothing learned from rendered, nor from the scenes of range (mix-range, seed 9229); from the even-numbered halves of rough and
      whole-bad and from lamps the reader or the measures did.

      ## What a border buys and costs

      If joints below a border are called sound: share of the sound ones that are, and how many of the bad ones are with them.

      """;

  private static final String RELIABILITY =
      """

      ## How honest the chances are

      By the chance that was stated: bad joints of all, and the 95 % interval of their share in per cent (Wilson, joints taken as
      independent).

      """;

  private static final double[] BORDERS = {0.005, 0.01, 0.02, 0.05, 0.15, 0.3, 0.5};
  private static final double[] BINS = {0, 0.01, 0.02, 0.05, 0.15, 0.5, 0.85, 0.98, 0.99, 1};
  private static final TwoOpinions BOTH = TwoOpinions.builtIn();

  /** A joint with truth. */
  private record Joint(String lamp, boolean bad, double chance) {}

  private RiskCoverage() {}

  /** Writes the tables; arguments: the file to write, tables of measures. */
  public static void main(String[] args) throws IOException {
    StringBuilder page = new StringBuilder(HEAD + heading());
    StringBuilder reliability = new StringBuilder(RELIABILITY + binHeading());
    for (int i = 1; i < args.length; i++) {
      Path file = Path.of(args[i]);
      String name = file.getFileName().toString().replace(".csv", "");
      List<Joint> joints = read(file);
      page.append(line(name, joints));
      reliability.append(binLine(name, joints));
      Map<String, List<Joint>> byLamp = new TreeMap<>();
      joints.forEach(it -> byLamp.computeIfAbsent(it.lamp(), lamp -> new ArrayList<>()).add(it));
      if (byLamp.size() > 1) {
        byLamp.forEach((lamp, some) -> page.append(line(name + ", " + lamp, some)));
        byLamp.forEach((lamp, some) -> reliability.append(binLine(name + ", " + lamp, some)));
      }
    }
    Files.writeString(Path.of(args[0]), page.append(reliability));
  }

  private static List<Joint> read(Path file) throws IOException {
    List<Joint> joints = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> lines = CsvReader.builder().ofNamedCsvRecord(file)) {
      lines.stream().filter(RiskCoverage::counts).map(RiskCoverage::joint).forEach(joints::add);
    }
    return joints;
  }

  private static boolean counts(NamedCsvRecord line) {
    return line.getField("row").equalsIgnoreCase("right")
        && !line.getField("class2").equals("limit")
        && !line.getField("true_findings").contains("side-overhang")
        && !line.getField("r_missing").isEmpty();
  }

  private static Joint joint(NamedCsvRecord line) {
    Chances both = BOTH.both(chances(line, "m_"), chances(line, "r_"));
    double worst =
        DoubleStream.of(
                both.of(Question.MISSING),
                both.of(Question.UNWETTED),
                both.of(Question.BRIDGE_BEFORE),
                both.of(Question.BRIDGE_AFTER))
            .max()
            .orElseThrow();
    return new Joint(line.getField("lamp"), line.getField("class2").equals("defect"), worst);
  }

  private static Chances chances(NamedCsvRecord line, String by) {
    return Chances.of(question -> Double.parseDouble(line.getField(by + question.id())));
  }

  private static String heading() {
    StringBuilder text = new StringBuilder("| set | sound | bad |");
    for (double border : BORDERS) {
      text.append(" to ").append(border).append(" |");
    }
    return text + "\n|" + "---|".repeat(BORDERS.length + 3) + "\n";
  }

  /** At each border: share of the sound joints below it, and how many bad ones lie there too. */
  private static String line(String name, List<Joint> joints) {
    long bad = count(joints, Joint::bad);
    long sound = joints.size() - bad;
    StringBuilder text = new StringBuilder("| %s | %d | %d |".formatted(name, sound, bad));
    for (double border : BORDERS) {
      long passed = count(joints, it -> it.bad() && it.chance() < border);
      long vouched = count(joints, it -> !it.bad() && it.chance() < border);
      text.append(
          sound == 0
              ? " %d |".formatted(passed)
              : String.format(Locale.ROOT, " %.1f %%, %d |", 100.0 * vouched / sound, passed));
    }
    return text + "\n";
  }

  private static String binHeading() {
    StringBuilder text = new StringBuilder("| set |");
    for (int i = 1; i < BINS.length; i++) {
      text.append(" %s-%s |".formatted(BINS[i - 1], BINS[i]));
    }
    return text + "\n|" + "---|".repeat(BINS.length) + "\n";
  }

  /** In each bin: bad joints of all, and Wilson's interval of their share in per cent. */
  private static String binLine(String name, List<Joint> joints) {
    StringBuilder text = new StringBuilder("| " + name + " |");
    for (int i = 1; i < BINS.length; i++) {
      double from = BINS[i - 1];
      double to = BINS[i];
      List<Joint> in =
          joints.stream()
              .filter(it -> it.chance() >= from && (it.chance() < to || to == 1))
              .toList();
      text.append(' ').append(in.isEmpty() ? "" : share(in)).append(" |");
    }
    return text + "\n";
  }

  private static String share(List<Joint> joints) {
    Rate rate = new Rate((int) count(joints, Joint::bad), joints.size());
    return String.format(
        Locale.ROOT,
        "%d/%d (%.1f-%.1f)",
        rate.count(),
        rate.of(),
        100 * rate.lower(),
        100 * rate.upper());
  }

  private static long count(List<Joint> joints, Predicate<Joint> so) {
    return joints.stream().filter(so).count();
  }
}
