package leadlight.summary.day;

import java.util.List;
import leadlight.model.Verdict;

/**
 * One job of a run.
 *
 * @param job its name
 * @param boards how many of its boards were photographed
 * @param verdict the worst photo of each board's last stage: how the job stands
 * @param tally the joints of these photos
 * @param photos all its photos, by board and stage
 * @param fit whether nothing that is recorded of its boards forbids to hand them back
 */
public record JobLine(
    String job, int boards, Verdict verdict, Tally tally, List<PhotoLine> photos, boolean fit) {}
