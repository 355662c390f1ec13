package leadlight.row.tuning;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * When a fitted row is reported.
 *
 * @param leastInside least mean likeness of its leads to their common picture
 * @param leastContrast least mean likeness inside less half the likeness beyond an end
 * @param leastLock least phase lock of its zone
 * @param leastLastLead least likeness of the first and of the last lead
 * @param mostOutside most likeness just beyond an end
 * @param leastPitchPx least pitch in photo pixels
 * @param leastBodySide least probability of the body's side
 * @param mostAxisSpread most spread of the likely middles of the leads, pitches
 * @param alike how close in score a second row must be to make the choice ambiguous
 * @param larger how many times longer a row must be to be preferred to another
 */
public record AcceptanceTuning(
    @JsonProperty(required = true) double leastInside,
    @JsonProperty(required = true) double leastContrast,
    @JsonProperty(required = true) double leastLock,
    @JsonProperty(required = true) double leastLastLead,
    @JsonProperty(required = true) double mostOutside,
    @JsonProperty(required = true) double leastPitchPx,
    @JsonProperty(required = true) double leastBodySide,
    @JsonProperty(required = true) double mostAxisSpread,
    @JsonProperty(required = true) double alike,
    @JsonProperty(required = true) double larger) {}
