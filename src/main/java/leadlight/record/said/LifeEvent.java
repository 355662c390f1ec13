package leadlight.record.said;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import leadlight.data.JsonText;

/**
 * One thing in a board's life that is no photo.
 *
 * @param kind what
 * @param words in the person's words: the complaint, the serial number, part and lot, with what it
 *     was heated, how it was looked at, what was tested, what the decision rests on
 * @param pins pins that were heated; empty for all else
 * @param good whether the test passed, or the board is handed back; empty for all else
 * @param person who
 * @param at when
 */
public record LifeEvent(
    Kind kind,
    String words,
    List<Integer> pins,
    Optional<Boolean> good,
    String person,
    ZonedDateTime at) {

  /** What can be in a life. */
  public enum Kind {
    /** What the customer complains of. */
    COMPLAINT("complaint"),
    /** The board's serial number. */
    SERIAL("serial"),
    /** Part and lot of the new connector. */
    PART("part"),
    /** Joints that were heated. */
    HEAT("heat"),
    /** A person confirms that, and how, each joint was looked at. */
    LOOKED("looked"),
    /** What a photo showed of the connector's anchor legs: {@link LegsSeen}. */
    LEGS("legs"),
    /** Whether the board works. */
    FUNCTION_TEST("function-test"),
    /** The decision to hand it back, or not to. */
    HAND_BACK("hand-back");

    private final String id;

    Kind(String id) {
      this.id = id;
    }

    /** The name in tables and commands. */
    public String id() {
      return id;
    }
  }

  /**
   * Copies the list; refuses an event without a name, a heat without pins and legs that are none.
   */
  public LifeEvent {
    pins = List.copyOf(pins);
    if (kind == Kind.LEGS) {
      JsonText.read(words, LegsSeen.class);
    }
    if (person.isBlank()) {
      throw new IllegalArgumentException("an event needs a name");
    }
    if ((kind == Kind.HEAT) == pins.isEmpty()) {
      throw new IllegalArgumentException("exactly a heat has pins");
    }
    if ((kind == Kind.FUNCTION_TEST || kind == Kind.HAND_BACK) != good.isPresent()) {
      throw new IllegalArgumentException("exactly a test and a decision are good or not");
    }
  }

  /** An event that is words alone. */
  public static LifeEvent said(Kind kind, String words, String person, ZonedDateTime at) {
    return new LifeEvent(kind, words, List.of(), Optional.empty(), person, at);
  }
}
