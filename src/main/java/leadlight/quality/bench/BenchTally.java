package leadlight.quality.bench;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import leadlight.model.FindingKind;
import leadlight.quality.bench.Settled.Bench;
import leadlight.statistics.ClusterRate;

/**
 * What became of the tool's opinions at the bench; intervals by board.
 *
 * @param joints all recorded joints
 * @param tried joints tried at the bench, of those judged
 * @param passedTried joints tried at the bench, of those the tool passed
 * @param badOfPassed joints that the bench found bad, of those passed and tried
 * @param badOfCalled joints that the bench found bad, of those called whose findings a try can
 *     settle
 * @param missed joints passed, of those that the bench found bad and the tool judged
 * @param overruled joints on which a person said otherwise (defect or not), of those judged
 * @param byFinding the same as badOfCalled for each finding
 * @param byMonth verdicts that the bench proved wrong, of those tried, by month of scoring
 */
public record BenchTally(
    int joints,
    ClusterRate tried,
    ClusterRate passedTried,
    ClusterRate badOfPassed,
    ClusterRate badOfCalled,
    ClusterRate missed,
    ClusterRate overruled,
    Map<FindingKind, ClusterRate> byFinding,
    Map<String, ClusterRate> byMonth) {

  /** Counts. */
  public static BenchTally of(List<Settled> joints) {
    List<Settled> judged = joints.stream().filter(j -> j.passed() || j.called()).toList();
    List<Settled> tried = judged.stream().filter(j -> j.bench().isPresent()).toList();
    List<Settled> bad = tried.stream().filter(BenchTally::isBad).toList();
    Map<FindingKind, ClusterRate> byFinding = new TreeMap<>();
    for (FindingKind kind : FindingKind.values()) {
      List<Settled> mine =
          settled(tried).stream().filter(j -> j.findings().contains(kind)).toList();
      if (!mine.isEmpty()) {
        byFinding.put(kind, rate(mine, BenchTally::isBad));
      }
    }
    return new BenchTally(
        joints.size(),
        rate(judged, j -> j.bench().isPresent()),
        rate(judged.stream().filter(Settled::passed).toList(), j -> j.bench().isPresent()),
        rate(tried.stream().filter(Settled::passed).toList(), BenchTally::isBad),
        rate(settled(tried), BenchTally::isBad),
        rate(bad, Settled::passed),
        rate(judged, BenchTally::isOverruled),
        byFinding,
        byMonth(tried));
  }

  /** Called joints of which the bench says yes or no. */
  private static List<Settled> settled(List<Settled> tried) {
    return tried.stream().filter(Settled::called).filter(j -> isBad(j) || j.isRefuted()).toList();
  }

  private static boolean isBad(Settled joint) {
    return joint.bench().map(Bench::isBad).orElse(false);
  }

  private static boolean isOverruled(Settled joint) {
    return joint
        .person()
        .map(p -> (p == leadlight.model.Verdict.DEFECT) != joint.called())
        .orElse(false);
  }

  private static Map<String, ClusterRate> byMonth(List<Settled> tried) {
    Map<String, ClusterRate> months = new TreeMap<>();
    tried.stream()
        .map(j -> j.month().toString())
        .distinct()
        .forEach(
            month ->
                months.put(
                    month,
                    rate(
                        tried.stream().filter(j -> j.month().toString().equals(month)).toList(),
                        j -> j.passed() ? isBad(j) : j.isRefuted())));
    return months;
  }

  private static ClusterRate rate(List<Settled> joints, Predicate<Settled> so) {
    ClusterRate.Builder rate = new ClusterRate.Builder();
    joints.forEach(joint -> rate.add(joint.board(), so.test(joint)));
    return rate.rate();
  }
}
