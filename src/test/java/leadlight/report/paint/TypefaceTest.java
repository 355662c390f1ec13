package leadlight.report.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Widths and outlines against the JDK's own font reader. */
class TypefaceTest {

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  /** Simple glyphs, composed ones, turned curves, Greek, Cyrillic, signs. */
  private static final String LETTERS = "Pin 12 bridge Q%&@gjß ÄéÅçñ Ωσμ ЖДй …•–≥";

  @Test
  void letters_are_as_wide_as_the_jdk_has_them() throws Exception {
    double width = jdk().createGlyphVector(EXACT, LETTERS).getLogicalBounds().getWidth();
    assertThat(Typeface.REGULAR.width(LETTERS) * 1000).isCloseTo(width, within(1.0));
  }

  @Test
  void outlines_lie_where_the_jdk_has_them() throws Exception {
    for (int c : LETTERS.codePoints().filter(c -> c != ' ').toArray()) {
      GlyphVector one = jdk().createGlyphVector(EXACT, Character.toString(c));
      Rectangle2D expected = one.getOutline().getBounds2D();
      Rectangle2D found = shape(Typeface.REGULAR.glyph(c)).getBounds2D();
      assertThat(found.getX()).as(Character.toString(c)).isCloseTo(expected.getX(), within(4.0));
      assertThat(found.getY()).isCloseTo(expected.getY(), within(4.0));
      assertThat(found.getWidth()).isCloseTo(expected.getWidth(), within(8.0));
      assertThat(found.getHeight()).isCloseTo(expected.getHeight(), within(8.0));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {'g', 'ß', 'É', 'Ω', 'Ж', '8'})
  void outlines_enclose_what_the_jdk_encloses(int c) throws Exception {
    Area expected = new Area(jdk().createGlyphVector(EXACT, Character.toString(c)).getOutline());
    Area differing = new Area(expected);
    differing.exclusiveOr(new Area(shape(Typeface.REGULAR.glyph(c))));
    assertThat(area(differing)).isLessThan(0.02 * area(expected));
  }

  @Test
  void a_letter_that_the_font_lacks_gets_the_empty_box() {
    assertThat(Typeface.BOLD.glyph(0x6c34).outlines()).isNotEmpty();
    assertThat(Typeface.BOLD.glyph(0x1f600).outlines()).isNotEmpty();
  }

  private static Font jdk() throws Exception {
    return Font.createFont(
            Font.TRUETYPE_FONT,
            Typeface.class.getResourceAsStream("/leadlight/report/DejaVuSansCondensed.ttf"))
        .deriveFont(1000f);
  }

  private static Shape shape(Glyph glyph) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (double[] outline : glyph.outlines()) {
      path.moveTo(1000 * outline[0], 1000 * outline[1]);
      for (int i = 2; i < outline.length; i += 2) {
        path.lineTo(1000 * outline[i], 1000 * outline[i + 1]);
      }
      path.closePath();
    }
    return path;
  }

  /** By the shoelace formula; holes of an {@link Area} run the other way round. */
  private static double area(Area area) {
    PathIterator path = area.getPathIterator(null, 0.1);
    double twice = 0;
    double[] to = new double[6];
    double[] start = new double[2];
    double[] from = new double[2];
    for (; !path.isDone(); path.next()) {
      int kind = path.currentSegment(to);
      double[] end = kind == PathIterator.SEG_CLOSE ? start : to;
      if (kind == PathIterator.SEG_MOVETO) {
        start = new double[] {to[0], to[1]};
      } else {
        twice += from[0] * end[1] - end[0] * from[1];
      }
      from = new double[] {end[0], end[1]};
    }
    return Math.abs(twice) / 2;
  }
}
