package leadlight.quality;

import java.util.Locale;
import org.apache.commons.text.StringEscapeUtils;

/** A plot as SVG for inside an HTML page: shapes and escaped text only. */
final class SvgSurface implements Surface {

  private final StringBuilder svg = new StringBuilder();

  SvgSurface(int width, int height, String description) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<svg viewBox=\"0 0 %d %d\" width=\"%d\""
                + " height=\"%d\" role=\"img\" aria-label=\"%s\" font-family=\"sans-serif\""
                + " font-size=\"14\">",
            width,
            height,
            width,
            height,
            StringEscapeUtils.escapeXml11(description)));
  }

  @Override
  public void line(double x0, double y0, double x1, double y1, int colour, double width) {
    add(
        "<path d=\"M%.1f %.1fL%.1f %.1f\" stroke=\"#%06x\" stroke-width=\"%.1f\"/>",
        x0, y0, x1, y1, colour, width);
  }

  @Override
  public void box(double x, double y, double width, double height, int colour) {
    add(
        "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"#%06x\"/>",
        x, y, width, height, colour);
  }

  @Override
  public void text(double x, double y, Anchor anchor, String text, boolean strong) {
    add(
        "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\"%s>%s</text>",
        x,
        y,
        anchor.name().toLowerCase(Locale.ROOT),
        strong ? " font-weight=\"bold\"" : "",
        StringEscapeUtils.escapeXml11(text));
  }

  private void add(String format, Object... values) {
    svg.append(String.format(Locale.ROOT, format, values));
  }

  String text() {
    return svg + "</svg>";
  }
}
