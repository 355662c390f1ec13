package leadlight.quality;

/**
 * A workmanship limit that a gauge is asked to decide.
 *
 * @param measure which measure it is set for
 * @param productClass 1, 2 or 3
 * @param value upper limit, in the measure's unit
 * @param source where it comes from
 */
public record ClassLimit(String measure, int productClass, double value, String source) {}
