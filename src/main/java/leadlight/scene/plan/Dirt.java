package leadlight.scene.plan;

/**
 * One speck.
 *
 * @param kind what it is
 * @param uMm middle
 * @param vMm middle
 * @param sizeMm radius; half the length of a fibre
 * @param strength 0 to 1; how much a pool of flux glares
 */
public record Dirt(DirtKind kind, double uMm, double vMm, double sizeMm, double strength) {}
