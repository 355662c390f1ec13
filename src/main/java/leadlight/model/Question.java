package leadlight.model;

import java.util.Locale;

/**
 * What each opinion is asked of a joint. The id is the one name of the question in files, the
 * record, tables and training scripts. To ask one more: add it here, give it words ({@code
 * question.ID} in the message files) and data that answer it.
 */
public enum Question {
  /** There is no lead on the land. */
  MISSING,
  /** If there is a lead: no fillet joins it to the land. */
  UNWETTED,
  /** If it is unwetted: the lead is open rather than starved. */
  OPEN,
  /** If there is a lead: solder hides it. */
  EXCESS,
  /** Metal spans the gap to the pin before. */
  BRIDGE_BEFORE,
  /** Metal spans the gap to the next pin. */
  BRIDGE_AFTER,
  /** A loose solder ball lies beside or ahead of it. */
  BALL,
  /** If there is a lead: it stands over its land's side by more than a quarter of its width. */
  OVER_QUARTER,
  /** The same by more than half of its width. */
  OVER_HALF;

  /** Shares of the lead's width that limits of side overhang are set at: classes 3, and 1 and 2. */
  public static final double QUARTER = 0.25;

  public static final double HALF = 0.5;

  /** The name in files, the record and the training scripts. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
