package leadlight.report.paint;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;

/** Reads glyph descriptions (OpenType specification 1.9, table glyf) as polygons. */
final class GlyphReader {

  private static final int STEPS_PER_CURVE = 5;

  private static final int ON_CURVE = 1;
  private static final int X_SHORT = 2;
  private static final int Y_SHORT = 4;
  private static final int REPEAT = 8;
  private static final int X_SAME_OR_PLUS = 16;
  private static final int Y_SAME_OR_PLUS = 32;

  private static final int ARGS_ARE_WORDS = 1;
  private static final int HAS_SCALE = 8;
  private static final int MORE_PARTS = 32;
  private static final int HAS_TWO_SCALES = 64;
  private static final int HAS_MATRIX = 128;

  private final ByteBuffer file;
  private final double unitsPerEm;
  private final IntUnaryOperator start;

  GlyphReader(ByteBuffer file, double unitsPerEm, IntUnaryOperator start) {
    this.file = file.duplicate();
    this.unitsPerEm = unitsPerEm;
    this.start = start;
  }

  List<double[]> outlines(int index) {
    List<double[]> outlines = new ArrayList<>();
    int at = start.applyAsInt(index);
    if (at >= 0) {
      int contours = file.getShort(at);
      file.position(at + 10);
      if (contours >= 0) {
        simple(contours, outlines);
      } else {
        composed(outlines);
      }
    }
    return outlines;
  }

  private void composed(List<double[]> outlines) {
    int flags;
    do {
      flags = file.getShort();
      int part = file.getShort() & 0xffff;
      boolean words = (flags & ARGS_ARE_WORDS) != 0;
      double dx = (words ? file.getShort() : file.get()) / unitsPerEm;
      double dy = -(words ? file.getShort() : file.get()) / unitsPerEm;
      double[] m = matrix(flags);
      int next = file.position();
      for (double[] outline : outlines(part)) {
        for (int i = 0; i < outline.length; i += 2) {
          double x = outline[i];
          double y = outline[i + 1];
          outline[i] = m[0] * x - m[2] * y + dx;
          outline[i + 1] = -m[1] * x + m[3] * y + dy;
        }
        outlines.add(outline);
      }
      file.position(next);
    } while ((flags & MORE_PARTS) != 0);
  }

  private double[] matrix(int flags) {
    double[] m = {1, 0, 0, 1};
    if ((flags & HAS_SCALE) != 0) {
      m[0] = m[3] = fraction();
    } else if ((flags & HAS_TWO_SCALES) != 0) {
      m[0] = fraction();
      m[3] = fraction();
    } else if ((flags & HAS_MATRIX) != 0) {
      for (int i = 0; i < 4; i++) {
        m[i] = fraction();
      }
    }
    return m;
  }

  private double fraction() {
    return file.getShort() / 16384.0;
  }

  private void simple(int contours, List<double[]> outlines) {
    int[] ends = new int[contours];
    for (int i = 0; i < contours; i++) {
      ends[i] = file.getShort() & 0xffff;
    }
    file.position(file.position() + 2 + (file.getShort(file.position()) & 0xffff));
    int points = contours == 0 ? 0 : ends[contours - 1] + 1;
    int[] flags = flags(points);
    double[] x = coordinates(flags, X_SHORT, X_SAME_OR_PLUS, 1 / unitsPerEm);
    double[] y = coordinates(flags, Y_SHORT, Y_SAME_OR_PLUS, -1 / unitsPerEm);
    int first = 0;
    for (int end : ends) {
      outlines.add(polygon(flags, x, y, first, end));
      first = end + 1;
    }
  }

  private int[] flags(int points) {
    int[] flags = new int[points];
    for (int i = 0; i < points; ) {
      int flag = file.get();
      int times = (flag & REPEAT) != 0 ? 1 + (file.get() & 0xff) : 1;
      while (times-- > 0) {
        flags[i++] = flag;
      }
    }
    return flags;
  }

  private double[] coordinates(int[] flags, int isShort, int sameOrPlus, double scale) {
    double[] places = new double[flags.length];
    int place = 0;
    for (int i = 0; i < flags.length; i++) {
      if ((flags[i] & isShort) != 0) {
        int step = file.get() & 0xff;
        place += (flags[i] & sameOrPlus) != 0 ? step : -step;
      } else if ((flags[i] & sameOrPlus) == 0) {
        place += file.getShort();
      }
      places[i] = place * scale;
    }
    return places;
  }

  /** Between two points off the curve the curve passes through their middle. */
  private static double[] polygon(int[] flags, double[] x, double[] y, int first, int last) {
    int n = last - first + 1;
    List<Double> out = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int at = first + i;
      if ((flags[at] & ON_CURVE) != 0) {
        out.add(x[at]);
        out.add(y[at]);
        continue;
      }
      int before = first + (i + n - 1) % n;
      int after = first + (i + 1) % n;
      boolean beforeOn = (flags[before] & ON_CURVE) != 0;
      boolean afterOn = (flags[after] & ON_CURVE) != 0;
      double x0 = beforeOn ? x[before] : (x[before] + x[at]) / 2;
      double y0 = beforeOn ? y[before] : (y[before] + y[at]) / 2;
      double x2 = afterOn ? x[after] : (x[after] + x[at]) / 2;
      double y2 = afterOn ? y[after] : (y[after] + y[at]) / 2;
      for (int k = beforeOn ? 1 : 0; k < STEPS_PER_CURVE; k++) {
        double t = k / (double) STEPS_PER_CURVE;
        out.add((1 - t) * (1 - t) * x0 + 2 * t * (1 - t) * x[at] + t * t * x2);
        out.add((1 - t) * (1 - t) * y0 + 2 * t * (1 - t) * y[at] + t * t * y2);
      }
    }
    return out.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
