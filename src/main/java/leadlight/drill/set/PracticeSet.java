package leadlight.drill.set;

import com.fasterxml.jackson.annotation.JsonAlias;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import leadlight.drill.pool.Known;
import leadlight.drill.pool.ToolSaid;

/**
 * A set as its folder has it ({@code practice-set.json}): what is asked, and what is told
 * afterwards. The same pool, request and seed give the same bytes.
 *
 * @param format {@link #FORMAT}
 * @param name for people
 * @param about what it was drawn from and how, in a line
 * @param seed of the draw
 * @param productClass 1, 2 or 3
 * @param specimens in their order
 */
public record PracticeSet(
    @JsonProperty(required = true) String format,
    @JsonProperty(required = true) String name,
    @JsonProperty(required = true) String about,
    @JsonProperty(required = true) long seed,
    @JsonProperty(required = true) int productClass,
    @JsonProperty(required = true) @JsonAlias("cards") List<Specimen> specimens) {

  /** What {@code format} says. */
  public static final String FORMAT = "leadlight/practice-set/1";

  /** What it said before words were changed; such a set has {@code cards} for specimens. */
  private static final String EARLIER = "leadlight/deck/1";

  /** Copies the list; refuses another format and an empty set. */
  public PracticeSet {
    specimens = List.copyOf(specimens);
    if (!FORMAT.equals(format) && !EARLIER.equals(format)) {
      throw new IllegalArgumentException("format must be " + FORMAT);
    }
    if (specimens.isEmpty()) {
      throw new IllegalArgumentException("a practice set has at least one specimen");
    }
  }

  /**
   * One picture with the joints to be judged in it: one, or all of a row.
   *
   * @param picture file name
   * @param sha256 hash of the picture
   * @param widthPx width of the picture
   * @param heightPx height of the picture
   * @param spots the joints, from left to right
   */
  public record Specimen(
      @JsonProperty(required = true) String picture,
      @JsonProperty(required = true) String sha256,
      @JsonProperty(required = true) int widthPx,
      @JsonProperty(required = true) int heightPx,
      @JsonProperty(required = true) List<Spot> spots) {

    /** Copies the list; refuses a picture that is not a plain file name. */
    public Specimen {
      spots = List.copyOf(spots);
      if (!picture.matches("(picture|card)-\\d{3}\\.jpg")) {
        throw new IllegalArgumentException("a specimen's picture is called picture-NNN.jpg");
      }
      if (spots.isEmpty()) {
        throw new IllegalArgumentException("a specimen asks for at least one joint");
      }
    }
  }

  /**
   * A joint to be judged.
   *
   * @param pin place in the row, from 1
   * @param item the joint everywhere else, as "board.jpg pin 3"
   * @param xPx its middle in the picture, from the left
   * @param halfPx half of the room it has, to both sides
   * @param marks where to look, told with the truth
   */
  public record Spot(
      @JsonProperty(required = true) int pin,
      @JsonProperty(required = true) String item,
      double xPx,
      double halfPx,
      Optional<Known> known,
      Optional<ToolSaid> tool,
      List<Mark> marks) {

    /** Fills in what a file leaves out because it is empty. */
    public Spot {
      marks = marks == null ? List.of() : List.copyOf(marks);
    }
  }

  /** A place in the picture to look at. */
  public record Mark(double xPx, double yPx, double widthPx, double heightPx) {}

  /** What a specimen is called before people. */
  public String word() {
    return joints() > specimens.size() ? "row" : "joint";
  }

  /** Number of joints to be judged. */
  public int joints() {
    return specimens.stream().mapToInt(specimen -> specimen.spots().size()).sum();
  }
}
