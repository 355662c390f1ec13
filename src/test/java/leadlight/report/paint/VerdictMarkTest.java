package leadlight.report.paint;

import static org.assertj.core.api.Assertions.assertThat;

import leadlight.model.Verdict;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;
import leadlight.vision.decode.Codec;
import org.junit.jupiter.api.Test;

class VerdictMarkTest {

  /** A step of 10 in CIE L* is plain to the eye (1976 scale; 1 is about just noticeable). */
  private static final double LEAST_STEP = 10;

  @Test
  void fillings_differ_in_lightness() {
    for (Verdict one : Verdict.values()) {
      for (Verdict other : Verdict.values()) {
        if (one != other) {
          double step =
              Math.abs(lightness(VerdictMark.filling(one)) - lightness(VerdictMark.filling(other)));
          assertThat(step).as(one + " and " + other).isGreaterThan(LEAST_STEP);
        }
      }
    }
  }

  @Test
  void lightness_is_that_of_the_cie() {
    // Mid grey 0x777777 has L* 50.0 (CIE 1976, sRGB of IEC 61966-2-1).
    assertThat(lightness(0x777777)).isBetween(49.5, 50.5);
    assertThat(lightness(0xffffff)).isBetween(99.9, 100.1);
  }

  @Test
  void shapes_differ_even_when_all_ink_is_black() {
    for (Verdict one : Verdict.values()) {
      for (Verdict other : Verdict.values()) {
        if (one.compareTo(other) < 0) {
          assertThat(differingShare(silhouette(one), silhouette(other)))
              .as(one + " and " + other)
              .isGreaterThan(0.15);
        }
      }
    }
  }

  @Test
  void marks_stay_within_their_size() {
    for (Verdict verdict : Verdict.values()) {
      try (Canvas canvas = new Canvas(60, 60, 0x00ff00)) {
        VerdictMark.draw(new Pen(canvas), verdict, 30, 30, 40);
        try (Frame drawn = Codec.decode(canvas.png()).orElseThrow()) {
          byte[] rgb = drawn.rgb();
          for (int i = 0; i < 60; i++) {
            assertThat(rgb[3 * (i + 60 * 5)]).as("row 5 of " + verdict).isZero();
            assertThat(rgb[3 * (5 + 60 * i)]).as("column 5 of " + verdict).isZero();
          }
        }
      }
    }
  }

  private static boolean[] silhouette(Verdict verdict) {
    try (Canvas canvas = new Canvas(40, 40, 0x00ff00)) {
      VerdictMark.draw(new Pen(canvas), verdict, 20, 20, 32);
      try (Frame drawn = Codec.decode(canvas.png()).orElseThrow()) {
        byte[] rgb = drawn.rgb();
        boolean[] inked = new boolean[1600];
        for (int i = 0; i < inked.length; i++) {
          inked[i] = (rgb[3 * i] & 0xff) > 128 || (rgb[3 * i + 1] & 0xff) < 128;
        }
        return inked;
      }
    }
  }

  /** Pixels inked in one alone, over pixels inked in either. */
  private static double differingShare(boolean[] one, boolean[] other) {
    int either = 0;
    int single = 0;
    for (int i = 0; i < one.length; i++) {
      either += one[i] || other[i] ? 1 : 0;
      single += one[i] != other[i] ? 1 : 0;
    }
    return single / (double) either;
  }

  private static double lightness(int colour) {
    double y =
        0.2126 * linear(colour >> 16) + 0.7152 * linear(colour >> 8) + 0.0722 * linear(colour);
    return y > 216.0 / 24389 ? 116 * Math.cbrt(y) - 16 : y * 24389 / 27;
  }

  private static double linear(int channel) {
    double c = (channel & 0xff) / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
