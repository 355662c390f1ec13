package leadlight.cli.bench;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlight.model.Verdict;
import leadlight.record.JobRecord;
import leadlight.record.said.RecordedJoint;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;

/**
 * What the record says of the joints of one bench's photos: those that were judged as of this
 * bench, whatever its version. A photo that was scored more than once is one photo; the later word
 * counts.
 */
final class RecordWords {

  private final Map<String, Said> photos = new LinkedHashMap<>();
  private int elsewhere;

  private RecordWords() {}

  /**
   * One photo.
   *
   * @param scoring its last scoring as of the bench
   * @param words by pin what is known of it
   * @param verdicts by pin the tool's verdict when it was first scored: who prodded had seen it
   */
  record Said(Scoring scoring, Map<Integer, JointWord> words, Map<Integer, Verdict> verdicts) {

    /** The pins of which it is known whether solder holds them. */
    Map<Integer, Boolean> known() {
      Map<Integer, Boolean> known = new TreeMap<>();
      words.forEach((pin, word) -> word.soldered().ifPresent(held -> known.put(pin, held)));
      return known;
    }
  }

  /** All photos of a bench. */
  static RecordWords of(JobRecord record, String bench) {
    RecordWords words = new RecordWords();
    for (Scoring scoring : record.scorings(Search.all())) {
      boolean mine =
          scoring.method().bench().filter(it -> it.startsWith(bench + ", version ")).isPresent();
      if (mine) {
        words.add(scoring, record.row(scoring.id()).joints());
      } else {
        words.elsewhere++;
      }
    }
    return words;
  }

  private void add(Scoring scoring, List<RecordedJoint> joints) {
    String photo = scoring.photo().sha256();
    Map<Integer, JointWord> words = new TreeMap<>();
    Map<Integer, Verdict> verdicts = new TreeMap<>();
    Said before = photos.get(photo);
    if (before != null
        && before.scoring().method().settings().row().equals(scoring.method().settings().row())) {
      words.putAll(before.words());
      verdicts.putAll(before.verdicts());
    }
    for (RecordedJoint joint : joints) {
      JointWord word = JointWord.of(joint);
      words.merge(joint.pin(), word, (was, now) -> now == JointWord.NONE ? was : now);
      verdicts.putIfAbsent(joint.pin(), joint.tool().verdict());
    }
    photos.put(photo, new Said(scoring, words, verdicts));
  }

  /** The photos, in the order of the record. */
  List<Said> photos() {
    return List.copyOf(photos.values());
  }

  /** What of it teaches, what proves nothing, and who chose it: in lines. */
  List<String> lines() {
    Map<JointWord, Integer> count = new EnumMap<>(JointWord.class);
    Map<Verdict, Integer> chosen = new EnumMap<>(Verdict.class);
    for (Said photo : photos()) {
      photo.words().values().forEach(word -> count.merge(word, 1, Integer::sum));
      photo
          .known()
          .keySet()
          .forEach(pin -> chosen.merge(photo.verdicts().get(pin), 1, Integer::sum));
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        "the record has %d photos judged as of this bench; %d scorings name it not, and are left out"
            .formatted(photos.size(), elsewhere));
    lines.add(
        "  unsoldered: %d by the bench, %d by a person's eye; sound: %d prodded, %d by a person's eye"
            .formatted(
                of(count, JointWord.UNSOLDERED),
                of(count, JointWord.UNSOLDERED_BY_EYE),
                of(count, JointWord.SOUND),
                of(count, JointWord.SOUND_BY_EYE)));
    lines.add(
        "  not learned from: %d that only conduct (a lead that rests does, too), %d with a fault of"
                .formatted(of(count, JointWord.CONDUCTS), of(count, JointWord.OTHER_FAULT))
            + " another kind, %d whose words contradict each other"
                .formatted(of(count, JointWord.CONTRADICTORY)));
    lines.add(
        "  never prodded, metered or judged by a person: %d joints; they prove nothing"
            .formatted(of(count, JointWord.NONE)));
    lines.add(selection(chosen));
    return lines;
  }

  /** Joints are prodded because they look doubtful: what that means is said with its numbers. */
  private static String selection(Map<Verdict, Integer> chosen) {
    int passed =
        chosen.getOrDefault(Verdict.ACCEPTABLE, 0)
            + chosen.getOrDefault(Verdict.PROCESS_INDICATOR, 0);
    return "  of the joints learned from, the tool had left open %d, called %d and passed %d: who"
            .formatted(
                chosen.getOrDefault(Verdict.UNJUDGED, 0),
                chosen.getOrDefault(Verdict.DEFECT, 0),
                passed)
        + " prods chooses, so they teach, but no share that may pass is proven by them; prod some"
        + " that look sound, too";
  }

  private static int of(Map<JointWord, Integer> count, JointWord word) {
    return count.getOrDefault(word, 0);
  }
}
