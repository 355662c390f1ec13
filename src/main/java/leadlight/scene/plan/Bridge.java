package leadlight.scene.plan;

/**
 * Solder from one joint to the next.
 *
 * @param pin number of the left of the two lands, 1 for the first
 * @param vMm middle of the bridge along the leads
 * @param widthMm at its ends
 * @param waist how much narrower in its middle, 0 to 1
 * @param pressurePerMm as a joint's
 */
public record Bridge(int pin, double vMm, double widthMm, double waist, double pressurePerMm) {}
