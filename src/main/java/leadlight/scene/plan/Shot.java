package leadlight.scene.plan;

/**
 * One of several photos that are taken of one row.
 *
 * @param grain tells its sensor's noise from that of the others
 * @param rest whether it is the photo at rest of a nudge
 * @param push the lead that a pick pushes in it; null for none
 */
public record Shot(int grain, boolean rest, Push push) {

  /** Refuses a pick in a photo at rest. */
  public Shot {
    if (rest && push != null) {
      throw new IllegalArgumentException("a photo at rest shows no push: leave rest or push out");
    }
  }

  /** Whether it is a photo of a nudge. */
  public boolean nudge() {
    return rest || push != null;
  }
}
