package leadlight.row;

/**
 * When a fitted row is reported.
 *
 * @param leastInside least mean likeness of its leads to their common picture
 * @param leastLock least phase lock of its zone
 * @param leastLastLead least likeness of the first and of the last lead
 * @param mostOutside most likeness just beyond an end
 * @param leastPitchPx least pitch in photo pixels
 * @param leastBodySide least probability of the body's side
 * @param alike how close in score a second row must be to make the choice ambiguous
 * @param larger how many times longer a row must be to be preferred to another
 */
record AcceptanceTuning(
    double leastInside,
    double leastLock,
    double leastLastLead,
    double mostOutside,
    double leastPitchPx,
    double leastBodySide,
    double alike,
    double larger) {}
