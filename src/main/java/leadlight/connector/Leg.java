package leadlight.connector;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;

/**
 * An anchor leg, or the tab that does its work.
 *
 * @param name pin name
 * @param kind how it is held
 * @param from what {@code xMm} counts from
 * @param xMm middle, to the right, in the connector's frame
 * @param yMm middle, down
 * @param land the copper around or under it
 * @param opening the hole or slot; absent for a tab
 */
public record Leg(
    @JsonProperty(required = true) String name,
    @JsonProperty(required = true) Kind kind,
    @JsonProperty(required = true) Origin from,
    @JsonProperty(required = true) double xMm,
    @JsonProperty(required = true) double yMm,
    @JsonProperty(required = true) Size land,
    Optional<Size> opening) {

  /** Refuses a hole without opening and a tab with one. */
  public Leg {
    Mm.within("x_mm", xMm, -1000, 1000);
    Mm.within("y_mm", yMm, -1000, 1000);
    if ((kind == Kind.TAB) == opening.isPresent()) {
      throw new IllegalArgumentException("holes and slots have an opening, tabs have none");
    }
  }

  /** How a leg is held. */
  public enum Kind {
    /** Round plated hole. */
    HOLE,
    /** Long plated hole. */
    SLOT,
    /** Land on the surface. */
    TAB
  }

  /** What a leg's place counts from. */
  public enum Origin {
    /** The middle of the first row. */
    MIDDLE,
    /** The middle of the first row's leftmost land. */
    LEFT_END,
    /** The middle of the first row's rightmost land. */
    RIGHT_END
  }

  /**
   * Extent.
   *
   * @param widthMm along x
   * @param heightMm along y
   */
  public record Size(
      @JsonProperty(required = true) double widthMm,
      @JsonProperty(required = true) double heightMm) {

    /** Refuses lengths that no leg has. */
    public Size {
      Mm.length("width_mm", widthMm);
      Mm.length("height_mm", heightMm);
    }
  }
}
