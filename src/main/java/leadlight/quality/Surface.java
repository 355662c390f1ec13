package leadlight.quality;

/** What a plot is drawn on; places in pixels, (0, 0) the upper left corner, colours 0xRRGGBB. */
public interface Surface {

  /** Which point of a text its place is. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** A straight line. */
  void line(double x0, double y0, double x1, double y1, int colour, double width);

  /** A filled rectangle. */
  void box(double x, double y, double width, double height, int colour);

  /** One line of text on the base line through the place. */
  void text(double x, double y, Anchor anchor, String text, boolean strong);
}
