package leadlight.scene.solids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Against exact surfaces of constant mean curvature (Young 1805, Laplace 1806; Finn, Equilibrium
 * Capillary Surfaces, 1986, chapter 1: without gravity a drop on a disc is a spherical cap, a
 * meniscus between parallel plates a circular cylinder) and against the fillet arithmetic of the
 * trade: r = h / (cos t1 - sin t2), w = r (cos t2 - sin t1).
 */
class CapillarySolverTest {

  private static final double CELL = 0.005;

  @Test
  void aDropPinnedToADiscIsASphericalCap() {
    double a = 0.15;
    double radius = 0.25;
    int n = 71;
    CapillarySolver grid = disc(n, a);
    Arrays.fill(grid.pressure, 2 / radius);
    grid.relax(900, 1.8);
    double base = Math.sqrt(radius * radius - a * a);
    double worst = 0;
    for (int k = 0; k < n * n; k++) {
      double r = away(k, n);
      if (r < a - CELL) {
        double exact = Math.sqrt(radius * radius - r * r) - base;
        worst = Math.max(worst, Math.abs(grid.h[k] - exact));
      }
    }
    assertThat(worst).isLessThan(0.01 * (radius - base));
  }

  @Test
  void itHoldsTheVolumeOfTheCap() {
    double a = 0.15;
    double radius = 0.2;
    int n = 71;
    CapillarySolver grid = disc(n, a);
    Arrays.fill(grid.pressure, 2 / radius);
    grid.relax(900, 1.8);
    double volume = 0;
    for (double h : grid.h) {
      volume += h * CELL * CELL;
    }
    double height = radius - Math.sqrt(radius * radius - a * a);
    double exact = Math.PI * height * (3 * a * a + height * height) / 6;
    assertThat(volume).isCloseTo(exact, within(0.02 * exact));
  }

  @Test
  void aMeniscusBetweenPlatesIsACircularCylinder() {
    double radius = 0.2;
    int half = 24;
    CapillarySolver strip = strip(2 * half, -1 / radius, 0.1, 0.1, -1);
    relaxAlike(strip, 2500);
    double a = half * CELL;
    for (int x = 1; x < 2 * half; x++) {
      double off = (x - half) * CELL;
      double exact =
          0.1 + Math.sqrt(radius * radius - a * a) - Math.sqrt(radius * radius - off * off);
      assertThat(middle(strip, x)).isCloseTo(exact, within(4e-4));
    }
  }

  @Test
  void aFilletOnAFilmHasTheFootOfItsArc() {
    double h = 0.12;
    double r = 0.20;
    double t2 = Math.asin(1 - h / r);
    double foot = r * Math.cos(t2);
    CapillarySolver strip = strip(80, -1 / r, h, 0, 0);
    relaxAlike(strip, 4000);
    for (int x = 1; x < 80; x++) {
      double u = x * CELL;
      double exact = u < foot ? r - Math.sqrt(r * r - (foot - u) * (foot - u)) : 0;
      assertThat(middle(strip, x)).isCloseTo(exact, within(2e-3));
    }
  }

  @Test
  void noPressureAndHalfRightAnglesMakeAStraightFace() {
    int steps = 24;
    CapillarySolver strip = strip(steps, 0, steps * CELL, 0, -1);
    relaxAlike(strip, 2500);
    for (int x = 1; x < steps; x++) {
      assertThat(middle(strip, x)).isCloseTo((steps - x) * CELL, within(1e-5));
    }
  }

  private static double middle(CapillarySolver strip, int x) {
    return strip.h[strip.h.length / 2 / columns(strip) * columns(strip) + x];
  }

  private static int columns(CapillarySolver strip) {
    return strip.h.length / ROWS;
  }

  private static final int ROWS = 9;

  /**
   * Columns 0 and last stand at fixed heights; rows are all alike, kept so by copying the sides.
   */
  private static CapillarySolver strip(
      int steps, double pressure, double left, double right, double floor) {
    int width = steps + 1;
    CapillarySolver grid = new CapillarySolver(width, ROWS, CELL);
    Arrays.fill(grid.pressure, pressure);
    Arrays.fill(grid.floor, floor);
    for (int y = 0; y < ROWS; y++) {
      grid.h[y * width] = left;
      grid.h[y * width + steps] = right;
      Arrays.fill(grid.wet, y * width + 1, y * width + steps, y > 0 && y < ROWS - 1);
    }
    return grid;
  }

  private static void relaxAlike(CapillarySolver grid, int sweeps) {
    int width = columns(grid);
    for (int k = 0; k < sweeps / 5; k++) {
      grid.relax(5, 1.9);
      System.arraycopy(grid.h, 4 * width, grid.h, 0, width);
      System.arraycopy(grid.h, 4 * width, grid.h, 8 * width, width);
    }
  }

  private static double away(int k, int n) {
    return Math.hypot(k % n - n / 2, k / n - n / 2) * CELL;
  }

  private static CapillarySolver disc(int n, double a) {
    CapillarySolver grid = new CapillarySolver(n, n, CELL);
    Arrays.fill(grid.floor, -1);
    int[] to = {1, -1, n, -n};
    for (int k = 0; k < n * n; k++) {
      grid.wet[k] = away(k, n) < a;
      for (int way = 0; grid.wet[k] && way < 4; way++) {
        double here = a - away(k, n);
        double there = a - away(k + to[way], n);
        if (there < 0) {
          grid.reach[way][k] = (float) Math.max(0.12, here / (here - there));
        }
      }
    }
    return grid;
  }
}
