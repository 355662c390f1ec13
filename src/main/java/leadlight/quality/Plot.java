package leadlight.quality;

import java.util.ArrayList;
import java.util.List;
import leadlight.quality.Surface.Anchor;

/**
 * A plot of lines, points and bars over one pair of axes. Series differ by dash and mark as well as
 * by colour, so that grey prints and colour-blind eyes tell them apart.
 *
 * @param title what it shows
 * @param xLabel name and unit of the horizontal axis
 * @param yLabel name and unit of the vertical axis
 * @param ticks names along the horizontal axis at 0, 1, 2, ...; empty for a numeric axis
 * @param series what is drawn, first below
 */
public record Plot(
    String title, String xLabel, String yLabel, List<String> ticks, List<Series> series) {

  /** How a series is drawn. */
  public enum Style {
    LINE,
    DASHED,
    POINTS,
    /** Two points each: the ends of an interval. */
    SPANS,
    /** Larger marks, for what needs attention. */
    ALARM,
    BARS
  }

  /**
   * A series.
   *
   * @param name for the legend
   * @param points pairs x, y, finite
   */
  public record Series(String name, Style style, List<double[]> points) {

    /** Copies; refuses what is not finite, so that no plot shows a gap for a fault. */
    public Series {
      points = List.copyOf(points);
      for (double[] p : points) {
        if (p.length != 2 || !Double.isFinite(p[0]) || !Double.isFinite(p[1])) {
          throw new IllegalArgumentException(name + ": a point must be finite");
        }
      }
    }
  }

  /** Width of the picture. */
  public static final int WIDTH = 860;

  /** Height of the picture. */
  public static final int HEIGHT = 420;

  private static final int LEFT = 80;
  private static final int RIGHT = 20;
  private static final int TOP = 66;
  private static final int BOTTOM = 62;
  private static final int INK = 0x1a1a1a;
  private static final int RULE = 0xd0d0d0;
  private static final int BLUE = 0x1f4e8c;
  private static final int ORANGE = 0xc25700;
  private static final int GREY = 0x6a6a6a;
  private static final double LETTER_PX = 7.5;

  /** The plot as SVG. */
  public String svg() {
    SvgSurface surface = new SvgSurface(WIDTH, HEIGHT, title);
    draw(surface);
    return surface.text();
  }

  /** Draws on a surface of {@link #WIDTH} by {@link #HEIGHT}. */
  public void draw(Surface on) {
    Axis x = xAxis();
    Axis y = yAxis();
    on.text(LEFT, 22, Anchor.START, title, true);
    on.text(LEFT, 42, Anchor.START, yLabel, false);
    on.text(WIDTH - RIGHT, HEIGHT - 12, Anchor.END, xLabel, false);
    legend(on);
    boolean counts = ofCounts();
    for (double tick : y.ticks()) {
      if (counts && tick != Math.rint(tick)) {
        continue;
      }
      double at = y.at(tick);
      on.line(LEFT, at, WIDTH - RIGHT, at, RULE, 1);
      on.text(LEFT - 8, at + 5, Anchor.END, y.label(tick), false);
    }
    xTicks(on, x);
    for (Series s : series) {
      draw(on, s, x, y);
    }
    on.line(LEFT, TOP, LEFT, HEIGHT - BOTTOM, INK, 1.2);
    on.line(LEFT, HEIGHT - BOTTOM, WIDTH - RIGHT, HEIGHT - BOTTOM, INK, 1.2);
  }

  private Axis xAxis() {
    if (!ticks.isEmpty()) {
      return new Axis(-0.5, ticks.size() - 0.5, LEFT, WIDTH - RIGHT);
    }
    double most =
        series.stream().flatMap(s -> s.points.stream()).mapToDouble(p -> p[0]).max().orElse(1);
    return Axis.upTo(most, LEFT, WIDTH - RIGHT);
  }

  private Axis yAxis() {
    double most =
        series.stream().flatMap(s -> s.points.stream()).mapToDouble(p -> p[1]).max().orElse(1);
    double least =
        series.stream().flatMap(s -> s.points.stream()).mapToDouble(p -> p[1]).min().orElse(0);
    return Axis.over(least, most, HEIGHT - BOTTOM, TOP);
  }

  /** Bars of whole numbers: no half of anything was counted. */
  private boolean ofCounts() {
    return series.stream()
        .allMatch(
            s -> s.style == Style.BARS && s.points.stream().allMatch(p -> p[1] == Math.rint(p[1])));
  }

  private void xTicks(Surface on, Axis x) {
    double y = HEIGHT - BOTTOM + 18;
    if (ticks.isEmpty()) {
      for (double tick : x.ticks()) {
        on.line(x.at(tick), HEIGHT - BOTTOM, x.at(tick), HEIGHT - BOTTOM + 4, INK, 1);
        on.text(x.at(tick), y, Anchor.MIDDLE, x.label(tick), false);
      }
      return;
    }
    double room = (WIDTH - LEFT - RIGHT) / (double) ticks.size();
    int longest = ticks.stream().mapToInt(String::length).max().orElse(1);
    // Names that would run into each other are shown every so often, or in two heights.
    int every = (int) Math.max(1, Math.ceil((longest + 1) * LETTER_PX / room / 2));
    boolean fits = (longest + 1) * LETTER_PX <= room;
    for (int i = 0; i < ticks.size(); i += every) {
      on.text(x.at(i), y + (fits ? 0 : i / every % 2 * 16), Anchor.MIDDLE, ticks.get(i), false);
    }
  }

  private void legend(Surface on) {
    double x = WIDTH - RIGHT;
    List<Series> named = new ArrayList<>(series.stream().filter(s -> !s.name.isEmpty()).toList());
    for (int i = named.size() - 1; i >= 0; i--) {
      Series s = named.get(i);
      on.text(x, 42, Anchor.END, s.name, false);
      x -= s.name.length() * LETTER_PX + 8;
      sample(on, s.style, x - 26, 37);
      x -= 44;
    }
  }

  private static void sample(Surface on, Style style, double x, double y) {
    if (style == Style.SPANS) {
      span(on, x + 13, y - 7, y + 7);
    } else if (style == Style.LINE || style == Style.DASHED) {
      segment(on, style, x, y, x + 26, y);
    } else {
      mark(on, style, x + 13, y);
    }
  }

  private static void draw(Surface on, Series s, Axis x, Axis y) {
    for (int i = 0; i < s.points.size(); i++) {
      double px = x.at(s.points.get(i)[0]);
      double py = y.at(s.points.get(i)[1]);
      if (s.style == Style.BARS) {
        double half = Math.abs(x.at(0.35) - x.at(0));
        on.box(px - half, py, 2 * half, y.at(0) - py, BLUE);
      } else if (s.style == Style.POINTS || s.style == Style.ALARM) {
        mark(on, s.style, px, py);
      }
      if (i % 2 == 1 && s.style == Style.SPANS) {
        span(on, px, y.at(s.points.get(i - 1)[1]), py);
      }
      if (i > 0 && (s.style == Style.LINE || s.style == Style.DASHED)) {
        double[] before = s.points.get(i - 1);
        segment(on, s.style, x.at(before[0]), y.at(before[1]), px, py);
      }
    }
  }

  private static void span(Surface on, double x, double y0, double y1) {
    on.line(x, y0, x, y1, GREY, 1.8);
    on.line(x - 6, y0, x + 6, y0, GREY, 1.8);
    on.line(x - 6, y1, x + 6, y1, GREY, 1.8);
  }

  private static void mark(Surface on, Style style, double x, double y) {
    if (style == Style.ALARM) {
      on.line(x - 7, y - 7, x + 7, y + 7, ORANGE, 3);
      on.line(x - 7, y + 7, x + 7, y - 7, ORANGE, 3);
    } else {
      on.box(x - 3.5, y - 3.5, 7, 7, BLUE);
    }
  }

  private static void segment(Surface on, Style style, double x0, double y0, double x1, double y1) {
    double length = Math.hypot(x1 - x0, y1 - y0);
    if (length == 0) {
      return;
    }
    if (style == Style.LINE) {
      on.line(x0, y0, x1, y1, BLUE, 1.8);
      return;
    }
    double step = 10 / length;
    for (double t = 0; t < 1; t += step) {
      double end = Math.min(1, t + 0.6 * step);
      on.line(
          x0 + t * (x1 - x0),
          y0 + t * (y1 - y0),
          x0 + end * (x1 - x0),
          y0 + end * (y1 - y0),
          GREY,
          1.6);
    }
  }
}
