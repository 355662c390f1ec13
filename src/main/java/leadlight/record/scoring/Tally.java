package leadlight.record.scoring;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What is counted together for charts.
 *
 * @param unit what is counted
 * @param scope of which photos: {@link #LAST}, {@link #ALL}, or a stage's id; replaced scorings
 *     never count
 * @param axis by what; empty for photos
 * @param name the day, connector, person, pin or stage; empty for findings and photos
 * @param verdicts of a joint its verdict as it counts; of a board all that its joints have there,
 *     sorted; of a photo {@link #FOUND} or {@link #LOST}
 * @param findings kinds of a joint's findings as they count, each once; empty otherwise
 */
public record Tally(
    Unit unit,
    String scope,
    Optional<Axis> axis,
    String name,
    List<String> verdicts,
    List<String> findings) {

  /** The scope of each board's last stage. */
  public static final String LAST = "last";

  /** The scope of all stages. */
  public static final String ALL = "all";

  /** A photo whose row was found. */
  public static final String FOUND = "found";

  /** A photo whose row was not found. */
  public static final String LOST = "lost";

  private static final String BETWEEN = ",";

  /** What is counted. */
  public enum Unit {
    JOINT("joint"),
    BOARD("board"),
    PHOTO("photo");

    private final String id;

    Unit(String id) {
      this.id = id;
    }

    /** The name in the table. */
    public String id() {
      return id;
    }
  }

  /** By what it is grouped. */
  public enum Axis {
    DAY("day"),
    CONNECTOR("connector"),
    OPERATOR("operator"),
    PIN("pin"),
    STAGE("stage"),
    FINDING("finding");

    private final String id;

    Axis(String id) {
      this.id = id;
    }

    /** The name in the table and on the command line. */
    public String id() {
      return id;
    }

    /** An axis by its name. */
    public static Optional<Axis> of(String name) {
      return Arrays.stream(values()).filter(axis -> axis.id.equals(name)).findFirst();
    }
  }

  /** Several ids in one column. */
  public static String joined(List<String> ids) {
    return String.join(BETWEEN, ids);
  }

  /** The ids of one column. */
  public static List<String> apart(String joined) {
    return joined.isEmpty() ? List.of() : List.of(joined.split(BETWEEN));
  }
}
