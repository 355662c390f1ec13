package leadlight.summary.day;

import java.nio.file.Path;
import java.util.List;

/**
 * What a run comes to.
 *
 * @param folder the run's own folder
 * @param jobs worst first
 * @param total the joints of all photos
 * @param strips the pins of each kind of row, over all photos
 * @param reasons why joints are unjudged, commonest first
 * @param retakes photos to take again
 * @param dpmo defects per million, of each stage and of each board's last
 * @param changes from each stage of a board to its next
 */
public record DaySummary(
    Path folder,
    List<JobLine> jobs,
    Tally total,
    List<PinStrip> strips,
    List<Reason> reasons,
    List<Retake> retakes,
    List<Dpmo> dpmo,
    List<BeforeAfter> changes) {

  /** Copies the lists. */
  public DaySummary {
    jobs = List.copyOf(jobs);
    strips = List.copyOf(strips);
    reasons = List.copyOf(reasons);
    retakes = List.copyOf(retakes);
    dpmo = List.copyOf(dpmo);
    changes = List.copyOf(changes);
  }

  /** The joints of the last stage of each board: how the day's work stands. */
  public Tally standing() {
    Tally last = new Tally();
    jobs.forEach(job -> last.add(job.tally()));
    return last;
  }

  /** Number of photos that were scored, by this run or before. */
  public int photos() {
    return jobs.stream().mapToInt(job -> job.photos().size()).sum();
  }
}
