package leadlight.quality;

/** What a count leaves out and why, in a sentence. */
public final class LeftOut {

  /** Why a board's earlier stages do not count. */
  public static final String LAST_STAGE = "each board counts at its last stage";

  private LeftOut() {}

  /** Joints that nobody decided. */
  public static String undecided(int joints) {
    return joints == 1
        ? "1 joint without a decision is no opportunity and is left out."
        : joints + " joints without a decision are no opportunities and are left out.";
  }

  /**
   * What is of another stage than the one that counts.
   *
   * @param what "joint" or "photo"
   * @param which "earlier" or "other"
   * @param why which stage counts
   */
  public static String ofStages(int number, String what, String which, String why) {
    return "%d %s of %s stages %s left out: %s."
        .formatted(number, number == 1 ? what : what + "s", which, number == 1 ? "is" : "are", why);
  }
}
