package leadlight.row;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.vision.Frame;

/**
 * Runs row finding over pictures with known leads and prints a line for each and totals. Arguments:
 * a pattern of picture names, then folders of pictures with truth files.
 */
final class RowBench {

  private final List<Double> lateral = new ArrayList<>();
  private final List<Double> axial = new ArrayList<>();
  private final List<Double> acrossZ = new ArrayList<>();
  private final List<Double> alongZ = new ArrayList<>();
  private int right;
  private int wrong;
  private int notFound;

  public static void main(String[] args) throws Exception {
    for (int i = 1; i < args.length; i++) {
      RowBench bench = new RowBench();
      for (BenchCase c : BenchCase.all(Path.of(args[i]))) {
        if (c.name().matches(args[0])) {
          bench.run(c);
        }
      }
      bench.total(args[i]);
    }
  }

  private void run(BenchCase c) throws Exception {
    try (Frame frame = c.open()) {
      long start = System.nanoTime();
      RowOutcome outcome = new RowFinder().find(frame, c.spec(), Optional.empty());
      long ms = (System.nanoTime() - start) / 1_000_000;
      if (outcome instanceof RowOutcome.Found found) {
        judge(c, found, ms);
      } else {
        notFound++;
        print("%-9s NOT FOUND %d ms %s", c.name(), ms, ((RowOutcome.NotFound) outcome).reason());
      }
    }
  }

  private void judge(BenchCase c, RowOutcome.Found found, long ms) {
    double length = Math.hypot(c.bodyDx(), c.bodyDy());
    double bx = c.bodyDx() / length;
    double by = c.bodyDy() / length;
    double pitch = found.pitchPx();
    List<Double> across = new ArrayList<>();
    List<Double> along = new ArrayList<>();
    List<Double> far = new ArrayList<>();
    for (Lead lead : found.leads()) {
      PointPx t = c.toes().get(lead.pin() - 1);
      if (t == null) {
        continue;
      }
      double dx = lead.toePx().x() - t.x();
      double dy = lead.toePx().y() - t.y();
      double a = -(dx * bx + dy * by) / pitch;
      double l = (-dx * by + dy * bx) / pitch;
      across.add(l);
      along.add(a);
      far.add(c.photograph() ? Math.abs(l) : Math.hypot(a, l));
      acrossZ.add(Math.abs(l) * pitch / lead.uAcrossPx());
      alongZ.add(Math.abs(a) * pitch / lead.uAlongPx());
    }
    double middle = at(far, 0.5);
    boolean good = middle < 0.35;
    if (good) {
      right++;
      across.forEach(l -> lateral.add(Math.abs(l)));
      along.forEach(a -> axial.add(Math.abs(a)));
    } else {
      wrong++;
    }
    print(
        "%-9s %s %s conf %.2f %d ms far %.3f lateral med %.3f p95 %.3f axial mean %.3f med %.3f p95"
            + " %.3f %s",
        c.name(),
        good ? "right" : "WRONG",
        c.lamp(),
        found.confidence(),
        ms,
        middle,
        at(abs(across), 0.5),
        at(abs(across), 0.95),
        along.stream().mapToDouble(Double::doubleValue).average().orElse(0),
        at(abs(along), 0.5),
        at(abs(along), 0.95),
        found.considered().get(0).why());
  }

  private void total(String what) {
    print(
        "%s: right %d, not found %d, wrong %d; lateral median %.4f p95 %.4f, axial median %.4f p95"
            + " %.4f pitch; within 2u across %.3f along %.3f",
        what,
        right,
        notFound,
        wrong,
        at(lateral, 0.5),
        at(lateral, 0.95),
        at(axial, 0.5),
        at(axial, 0.95),
        share(acrossZ),
        share(alongZ));
  }

  private static double share(List<Double> z) {
    return z.stream().filter(v -> v < 2).count() / (double) Math.max(1, z.size());
  }

  private static List<Double> abs(List<Double> values) {
    return values.stream().map(Math::abs).toList();
  }

  private static double at(List<Double> values, double share) {
    List<Double> sorted = values.stream().sorted().toList();
    return sorted.isEmpty() ? Double.NaN : sorted.get((int) (share * (sorted.size() - 1)));
  }

  @SuppressWarnings("SystemOut")
  private static void print(String format, Object... args) {
    System.out.println(String.format(Locale.ROOT, format, args));
  }
}
