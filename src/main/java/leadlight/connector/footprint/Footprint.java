package leadlight.connector.footprint;

import java.util.List;
import java.util.Optional;

/**
 * A part's copper as its maker's drawing has it: millimetres from above, x right, y down.
 *
 * @param name its own name
 * @param pads what is copper on the front, stacked pads merged
 * @param body outline of the body on the drawing, if any
 * @param leftOut pads that are no lands of the front, by reason
 */
public record Footprint(String name, List<Pad> pads, Optional<Box> body, LeftOut leftOut) {

  /** Copies the list. */
  public Footprint {
    pads = List.copyOf(pads);
  }

  /** How a pad is held. */
  enum Kind {
    SURFACE,
    PLATED_HOLE
  }

  /**
   * A pad with copper on the front.
   *
   * @param names its names, several if pads were stacked; empty ones left out
   * @param kind surface or plated hole
   * @param xMm middle of the copper
   * @param yMm middle of the copper
   * @param widthMm extent along x, after rotation
   * @param heightMm extent along y, after rotation
   * @param straight false if it stands at another angle than 0, 90, 180 or 270 degrees; its extent
   *     is then that of the box around it
   * @param drill hole, x and y extent after rotation
   */
  record Pad(
      List<String> names,
      Kind kind,
      double xMm,
      double yMm,
      double widthMm,
      double heightMm,
      boolean straight,
      Optional<Box> drill) {

    /** Copies the list. */
    public Pad {
      names = List.copyOf(names);
    }

    /** The names in one word, as "A1/B12". */
    String name() {
      return String.join("/", names);
    }
  }

  /**
   * An upright box.
   *
   * @param leftMm smallest x
   * @param topMm smallest y
   * @param rightMm greatest x
   * @param bottomMm greatest y
   */
  record Box(double leftMm, double topMm, double rightMm, double bottomMm) {

    double widthMm() {
      return rightMm - leftMm;
    }

    double heightMm() {
      return bottomMm - topMm;
    }

    double middleX() {
      return (leftMm + rightMm) / 2;
    }

    double middleY() {
      return (topMm + bottomMm) / 2;
    }

    Box with(double x, double y) {
      return new Box(
          Math.min(leftMm, x), Math.min(topMm, y), Math.max(rightMm, x), Math.max(bottomMm, y));
    }

    Box join(Box other) {
      return with(other.leftMm, other.topMm).with(other.rightMm, other.bottomMm);
    }
  }

  /**
   * Pads that are no lands of the front.
   *
   * @param withoutCopper surface pads without a copper layer: openings of the stencil or the mask
   * @param backOnly copper on the back alone
   * @param bareHoles holes without copper
   * @param edgeContacts contacts of a card's edge, never soldered
   * @param merged pads that lay on another
   */
  record LeftOut(int withoutCopper, int backOnly, int bareHoles, int edgeContacts, int merged) {}
}
