package leadlight.summary;

/**
 * How often something kept joints from being judged.
 *
 * @param text the reason
 * @param joints how many joints
 */
public record Reason(String text, int joints) {}
