package leadlight.trial.sets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import leadlight.model.Verdict;
import leadlight.statistics.ClusterRate;
import leadlight.trial.TrialTable;

/** What benches that were enrolled say of joints with truth, beside the general rules. */
public final class EnrolTally {

  private static final String SOUND = "sound";

  private final List<Judged> joints = new ArrayList<>();
  private final Set<String> lost = new TreeSet<>();
  private final Set<String> refused = new LinkedHashSet<>();

  /**
   * A joint that was judged.
   *
   * @param bench which bench
   * @param shown photos of each kind that it was shown
   * @param photo the photo
   * @param pin the pin
   * @param truth "sound", or what is wrong
   * @param general verdict by the general rules
   * @param enrolled verdict with the bench
   * @param note code of the row's note
   * @param notAs in which respect the photo is not as enrolled, else empty
   * @param side where the joint lies, else empty
   * @param chance that nothing holds it, by the bench's line
   * @param generalLogOdds the same by the general opinions that count
   * @param upTo share that was promised; 1 for none
   * @param doubts codes of the doubts
   */
  public record Judged(
      String bench,
      int shown,
      String photo,
      int pin,
      String truth,
      Verdict general,
      Verdict enrolled,
      String note,
      String notAs,
      String side,
      double chance,
      double generalLogOdds,
      double upTo,
      String doubts) {

    boolean sound() {
      return truth.equals(SOUND);
    }
  }

  /** Adds a joint. */
  public void add(Judged joint) {
    joints.add(joint);
  }

  /** Notes a photo whose row was not found, or found wrong. */
  public void lost(String photo) {
    lost.add(photo);
  }

  /** Notes what was refused while a bench was shown a photo. */
  public void refused(String why) {
    refused.add(why);
  }

  /** The table. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("rows not found or wrong: " + lost.size());
    refused.forEach(why -> lines.add("refused: " + why));
    lines.add(
        "| photos shown of each kind | benches | judged as enrolled | wrong good | of photos | called"
            + " | false calls | of photos | unjudged |");
    lines.add("|---|---|---|---|---|---|---|---|---|");
    TreeMap<Integer, List<Judged>> by = new TreeMap<>();
    joints.forEach(it -> by.computeIfAbsent(it.shown(), key -> new ArrayList<>()).add(it));
    by.forEach(
        (shown, of) -> {
          lines.add(row(shown + ", general rules", of, Judged::general));
          lines.add(row(shown + ", enrolled", of, Judged::enrolled));
        });
    lines.add(
        "95 % intervals of joints by photo, of photos by bench (Wilson at the effective number)");
    return lines;
  }

  private static String row(String name, List<Judged> of, Function<Judged, Verdict> verdict) {
    List<Judged> bad = of.stream().filter(it -> !it.sound()).toList();
    List<Judged> sound = of.stream().filter(Judged::sound).toList();
    Predicate<Judged> good = it -> good(verdict.apply(it));
    Predicate<Judged> called = it -> verdict.apply(it) == Verdict.DEFECT;
    return "| %s | %d | %s | %s | %s | %s | %s | %s | %s |"
        .formatted(
            name,
            of.stream().map(Judged::bench).distinct().count(),
            rate(of, it -> it.note().equals("as-enrolled")),
            rate(bad, good),
            photos(bad, good),
            rate(bad, called),
            rate(sound, called),
            photos(sound, called),
            rate(of, it -> verdict.apply(it) == Verdict.UNJUDGED));
  }

  private static boolean good(Verdict verdict) {
    return verdict == Verdict.ACCEPTABLE || verdict == Verdict.PROCESS_INDICATOR;
  }

  /** Photos, by bench. */
  private static String photos(List<Judged> of, Predicate<Judged> which) {
    Map<List<String>, Boolean> photos = new TreeMap<>(Comparator.comparing(List::toString));
    of.forEach(
        it -> photos.merge(List.of(it.bench(), it.photo()), which.test(it), Boolean::logicalOr));
    ClusterRate.Builder rate = new ClusterRate.Builder();
    photos.forEach((photo, some) -> rate.add(photo.get(0), some));
    return TrialTable.plain(rate.rate(), 1);
  }

  /** Joints, by photo. */
  private static String rate(List<Judged> of, Predicate<Judged> which) {
    ClusterRate.Builder rate = new ClusterRate.Builder();
    of.forEach(it -> rate.add(it.photo(), which.test(it)));
    return TrialTable.plain(rate.rate(), 1);
  }

  /** One line a joint. */
  public List<String> csv() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "bench,shown,photo,pin,truth,general,enrolled,note,not_as,side,chance,general_log_odds,"
            + "up_to,doubts");
    for (Judged it : joints) {
      lines.add(
          String.format(
              Locale.ROOT,
              "%s,%d,%s,%d,%s,%s,%s,%s,%s,%s,%.5f,%.4f,%.4f,%s",
              it.bench(),
              it.shown(),
              it.photo(),
              it.pin(),
              it.truth(),
              it.general().name().toLowerCase(Locale.ROOT),
              it.enrolled().name().toLowerCase(Locale.ROOT),
              it.note(),
              it.notAs(),
              it.side(),
              it.chance(),
              it.generalLogOdds(),
              it.upTo(),
              it.doubts()));
    }
    return lines;
  }
}
