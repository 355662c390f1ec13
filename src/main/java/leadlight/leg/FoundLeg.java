package leadlight.leg;

/**
 * A leg's land that was found.
 *
 * @param leg which, or one of those that it may be
 * @param number 1 to n, 0 if it cannot be told
 * @param place where
 * @param match share of its outline that is an edge, 0 to 1
 */
record FoundLeg(LegRequest.Leg leg, int number, LandPlace place, double match) {}
