package leadlight.model.row;

import leadlight.model.PointPx;

/**
 * A row that was considered, chosen or not.
 *
 * @param firstPx middle of its first lead
 * @param lastPx middle of its last lead
 * @param pitchPx pitch
 * @param score what it scored; comparable within one photo
 * @param why one sentence: why it was chosen or left
 */
public record RowCandidate(
    PointPx firstPx, PointPx lastPx, double pitchPx, double score, String why) {}
