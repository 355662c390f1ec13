package leadlight.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import leadlight.quality.Estimate;
import leadlight.quality.agreement.Calls;
import leadlight.quality.agreement.Coefficient;
import leadlight.quality.gauge.variance.Cells;
import leadlight.quality.gauge.variance.Reml;
import leadlight.quality.gauge.variance.Spread;
import leadlight.quality.gauge.variance.Sureness;
import leadlight.statistics.ClusterRate;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * How often the printed 95 % intervals hold the truth where users live. Writes the tables of {@code
 * docs/quality-coverage.md}: {@code mvn -q test-compile exec:java
 * -Dexec.mainClass=leadlight.bench.Coverage -Dexec.args="OUT.md RUNS"}.
 */
public final class Coverage {

  private static final long SEED = 2026;

  private final StringBuilder text = new StringBuilder();
  private final int runs;

  private Coverage(int runs) {
    this.runs = runs;
  }

  /** Arguments: the file to write, simulated studies a line. */
  public static void main(String[] args) throws IOException {
    Coverage coverage = new Coverage(Integer.parseInt(args[1]));
    coverage.rates();
    coverage.otherClusters();
    coverage.twoKinds();
    coverage.agreement();
    coverage.gauge();
    Files.writeString(Path.of(args[0]), coverage.text.toString());
  }

  private void line(String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values)).append('\n');
  }

  private void rates() {
    line(
        "| bad | likeness | photos of 19 | by photo | Wilson, each alone |%n|---|---|---|---|---|");
    for (double share : new double[] {0.02, 0.03, 0.04}) {
      for (double likeness : new double[] {0, 0.05, 0.1}) {
        for (int photos : new int[] {10, 20, 40, 100}) {
          double[] held = rate(share, likeness, photos, runs, new Random(SEED));
          line(
              "| %.0f %% | %.2f | %d | %.1f %% | %.1f %% |",
              100 * share, likeness, photos, 100 * held[0], 100 * held[1]);
        }
      }
    }
  }

  /** Clusters of other sizes: drilled joints of a photo, pushes of a row, joined rows, a photo. */
  private void otherClusters() {
    line(
        "%n| share | likeness | a cluster | clusters | by cluster | Wilson, each alone |%n|---|---|---|---|---|---|");
    for (double share : new double[] {0.04, 0.2}) {
      for (double likeness : new double[] {0, 0.1, 0.3}) {
        for (int[] size : new int[][] {{2, 20}, {5, 16}, {57, 16}, {200, 16}}) {
          double[] held = rate(share, likeness, size[1], size[0], runs, new Random(SEED));
          line(
              "| %.0f %% | %.2f | %d | %d | %.1f %% | %.1f %% |",
              100 * share, likeness, size[0], size[1], 100 * held[0], 100 * held[1]);
        }
      }
    }
  }

  /** Photos of two kinds, clean ones and bad ones: not the law that the interval supposes. */
  private void twoKinds() {
    line(
        "%n| share | likeness | a cluster | clusters | by cluster | Wilson, each alone |%n|---|---|---|---|---|---|");
    for (double share : new double[] {0.02, 0.04}) {
      for (double likeness : new double[] {0.05, 0.1, 0.3}) {
        for (int[] size : new int[][] {{19, 20}, {19, 40}, {19, 100}, {57, 16}}) {
          double[] shares = kinds(share, likeness);
          double[] held = rate(share, shares, size[1], size[0], runs, new Random(SEED));
          line(
              "| %.0f %% | %.2f | %d | %d | %.1f %% | %.1f %% |",
              100 * share, likeness, size[0], size[1], 100 * held[0], 100 * held[1]);
        }
      }
    }
  }

  /** Two shares, of which the smaller is none, with this mean and likeness. */
  private static double[] kinds(double share, double likeness) {
    double bad = share + likeness * (1 - share);
    double[] shares = new double[4000];
    Arrays.fill(shares, 0, (int) Math.round(shares.length * share / bad), bad);
    return shares;
  }

  static double[] rate(double share, double likeness, int photos, int runs, Random random) {
    return rate(share, likeness, photos, 19, runs, random);
  }

  private static double[] rate(
      double share, double likeness, int photos, int joints, int runs, Random random) {
    return rate(share, shares(share, likeness), photos, joints, runs, random);
  }

  /** Shares of studies whose interval holds the truth: by photo, and each joint alone. */
  private static double[] rate(
      double share, double[] shares, int photos, int joints, int runs, Random random) {
    int byPhoto = 0;
    int alone = 0;
    for (int run = 0; run < runs; run++) {
      List<ClusterRate.Part> parts = new ArrayList<>();
      for (int photo = 0; photo < photos; photo++) {
        double mine = shares[random.nextInt(shares.length)];
        int bad = 0;
        for (int joint = 0; joint < joints; joint++) {
          bad += random.nextDouble() < mine ? 1 : 0;
        }
        parts.add(new ClusterRate.Part(bad, joints));
      }
      ClusterRate rate = new ClusterRate(parts);
      byPhoto += rate.lower() <= share && share <= rate.upper() ? 1 : 0;
      alone += rate.plain().lower() <= share && share <= rate.plain().upper() ? 1 : 0;
    }
    return new double[] {(double) byPhoto / runs, (double) alone / runs};
  }

  /** A photo's own share: beta distributed, by its quantiles. */
  private static double[] shares(double share, double likeness) {
    if (likeness == 0) {
      return new double[] {share};
    }
    double size = (1 - likeness) / likeness;
    BetaDistribution law = BetaDistribution.of(share * size, (1 - share) * size);
    double[] shares = new double[4000];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = law.inverseCumulativeProbability((i + 0.5) / shares.length);
    }
    return shares;
  }

  private void agreement() {
    line(
        "%n| graders | items | bad | missed, false alarm | kappa | printed | holds | wrong of all | AC1 |"
            + " printed | holds | wrong of all | divided: holds |%n|---|---|---|---|---|---|---|---|---|---|---|---|---|");
    for (int graders : new int[] {2, 3}) {
      for (int items : new int[] {100, 300, 500}) {
        for (double bad : new double[] {0.03, 0.3}) {
          for (double[] errors : new double[][] {{0, 0}, {.02, .005}, {.1, .02}, {.25, .05}}) {
            agreement(graders, items, bad, errors);
          }
        }
      }
    }
  }

  private void agreement(int graders, int items, double bad, double[] errors) {
    double[] truth = Grading.truth(graders, bad, errors);
    Random random = new Random(SEED);
    int[] printed = new int[2];
    int[] held = new int[2];
    int divided = 0;
    for (int run = 0; run < runs; run++) {
      Calls calls = Grading.draw(graders, items, bad, errors, random);
      List<Coefficient> both = List.of(calls.kappa(), calls.ac1());
      for (int k = 0; k < 2; k++) {
        if (both.get(k).interval().isPresent()) {
          printed[k]++;
          held[k] += holds(both.get(k).interval().get(), truth[k]) ? 1 : 0;
        }
      }
      ClusterRate rate = both.get(0).divided();
      divided += rate.lower() <= truth[2] && truth[2] <= rate.upper() ? 1 : 0;
    }
    line(
        "| %d | %d | %.0f %% | %.0f, %.1f %% | %.2f | %s | %.2f | %s | %.1f %% |",
        graders,
        items,
        100 * bad,
        100 * errors[0],
        100 * errors[1],
        truth[0],
        share(printed[0], held[0]),
        truth[1],
        share(printed[1], held[1]),
        100.0 * divided / runs);
  }

  private String share(int printed, int held) {
    return printed == 0
        ? "never | words stand | 0"
        : String.format(
            Locale.ROOT,
            "%.0f %% | %.1f %% | %.1f %%",
            100.0 * printed / runs,
            100.0 * held / printed,
            100.0 * (printed - held) / runs);
  }

  private static boolean holds(Estimate interval, double truth) {
    return interval.lower() <= truth && truth <= interval.upper();
  }

  /** Graders who err alike and apart. */
  private static final class Grading {

    /** Kappa, AC1 and the share of items divided, in the long run. */
    static double[] truth(int graders, double bad, double[] errors) {
      double called = bad * (1 - errors[0]) + (1 - bad) * errors[1];
      double same = bad * agree(1 - errors[0]) + (1 - bad) * agree(errors[1]);
      double kappaChance = agree(called);
      double acChance = 2 * called * (1 - called);
      double whole = bad * all(1 - errors[0], graders) + (1 - bad) * all(errors[1], graders);
      return new double[] {
        (same - kappaChance) / (1 - kappaChance), (same - acChance) / (1 - acChance), 1 - whole
      };
    }

    private static double agree(double p) {
      return p * p + (1 - p) * (1 - p);
    }

    private static double all(double p, int graders) {
      return Math.pow(p, graders) + Math.pow(1 - p, graders);
    }

    static Calls draw(int graders, int items, double bad, double[] errors, Random random) {
      List<Calls.Item> drawn = new ArrayList<>();
      for (int item = 0; item < items; item++) {
        double says = random.nextDouble() < bad ? 1 - errors[0] : errors[1];
        int called = 0;
        for (int grader = 0; grader < graders; grader++) {
          called += random.nextDouble() < says ? 1 : 0;
        }
        drawn.add(new Calls.Item("item " + item, List.of(called, graders - called)));
      }
      return new Calls(drawn);
    }
  }

  private void gauge() {
    line(
        "%n| operators | readings | repeat | reproduce | gauge | parts | 3 sigma of the limit |%n"
            + "|---|---|---|---|---|---|---|");
    for (int operators : new int[] {2, 3, 6}) {
      for (boolean whole : new boolean[] {true, false}) {
        double[] held = gauge(operators, whole, Math.min(runs, 1000), new Random(SEED));
        line(
            "| %d | %s | %.1f %% | %.1f %% | %.1f %% | %.1f %% | %.1f %% |",
            operators,
            whole ? "all of 10 parts, 3 times" : "one in ten missing",
            100 * held[0],
            100 * held[1],
            100 * held[2],
            100 * held[3],
            100 * held[4]);
      }
    }
  }

  /** Ten parts of sd 3, repeats 1, operators 1, interaction 0.5. */
  static double[] gauge(int operators, boolean whole, int runs, Random random) {
    Spread truth = new Spread(1, Math.hypot(1, 0.5), 3);
    double[] held = new double[5];
    for (int run = 0; run < runs; run++) {
      Cells cells = readings(operators, whole, random);
      Spread found = Reml.of(cells);
      Sureness sure = Sureness.of(cells).orElseThrow();
      held[0] += holds(sure.of(found.equipment(), Spread::equipment), 1) ? 1.0 / runs : 0;
      held[1] +=
          holds(sure.of(found.operators(), Spread::operators), truth.operators()) ? 1.0 / runs : 0;
      held[2] += holds(sure.of(found.gauge(), Spread::gauge), truth.gauge()) ? 1.0 / runs : 0;
      held[3] += holds(sure.of(found.parts(), Spread::parts), 3) ? 1.0 / runs : 0;
      held[4] +=
          sure.of(3 * found.gauge() / 20, s -> 3 * s.gauge() / 20).upper() >= 3 * truth.gauge() / 20
              ? 1.0 / runs
              : 0;
    }
    return held;
  }

  private static Cells readings(int operators, boolean whole, Random random) {
    double[] operator = random.doubles(operators).map(x -> random.nextGaussian()).toArray();
    List<Cells.Reading> readings = new ArrayList<>();
    for (int part = 0; part < 10; part++) {
      double size = 3 * random.nextGaussian();
      for (int by = 0; by < operators; by++) {
        double both = 0.5 * random.nextGaussian();
        for (int trial = 0; trial < 3; trial++) {
          if (whole || trial < 2 || random.nextDouble() > 0.3) {
            readings.add(
                new Cells.Reading(
                    "p" + part, "o" + by, size + operator[by] + both + random.nextGaussian()));
          }
        }
      }
    }
    return Cells.of(readings);
  }
}
