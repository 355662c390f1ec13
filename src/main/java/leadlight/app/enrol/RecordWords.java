package leadlight.app.enrol;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlight.enrol.Bench;
import leadlight.model.Verdict;
import leadlight.record.JobRecord;
import leadlight.record.said.RecordedJoint;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;

/**
 * What the record says of the joints of one bench's photos: those that were judged as of this
 * bench, whatever its version. A photo that was scored more than once is one photo.
 */
final class RecordWords {

  private final Map<String, Said> photos = new LinkedHashMap<>();
  private int elsewhere;

  private RecordWords() {}

  /**
   * One photo.
   *
   * @param scoring its last scoring as of the bench
   * @param joints by pin as each scoring of it has the joint, oldest first
   */
  record Said(Scoring scoring, Map<Integer, List<RecordedJoint>> joints) {

    /** What is known of a pin. */
    JointWord word(int pin) {
      return JointWord.of(joints.getOrDefault(pin, List.of()));
    }

    /** The tool's verdict when the photo was first scored: who prodded had seen it. */
    Verdict first(int pin) {
      return joints.get(pin).get(0).tool().verdict();
    }

    /** The pins of which it is known whether solder holds them. */
    Map<Integer, Boolean> known() {
      Map<Integer, Boolean> known = new TreeMap<>();
      joints.keySet().forEach(pin -> word(pin).soldered().ifPresent(held -> known.put(pin, held)));
      return known;
    }
  }

  /** All photos of a bench. */
  static RecordWords of(JobRecord record, String bench) {
    RecordWords words = new RecordWords();
    for (Scoring scoring : record.scorings(Search.all())) {
      boolean mine = scoring.method().bench().filter(it -> Bench.isOf(it, bench)).isPresent();
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
    Map<Integer, List<RecordedJoint>> all = new TreeMap<>();
    Said before = photos.get(photo);
    if (before != null
        && before.scoring().method().settings().row().equals(scoring.method().settings().row())) {
      all.putAll(before.joints());
    }
    for (RecordedJoint joint : joints) {
      all.computeIfAbsent(joint.pin(), pin -> new ArrayList<>()).add(joint);
    }
    photos.put(photo, new Said(scoring, all));
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
      photo.joints().keySet().forEach(pin -> count.merge(photo.word(pin), 1, Integer::sum));
      photo.known().keySet().forEach(pin -> chosen.merge(photo.first(pin), 1, Integer::sum));
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
