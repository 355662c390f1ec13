package leadlight.report.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.report.words.HandsOn;
import leadlight.report.words.PictureWords;
import leadlight.report.words.ReportContext;
import leadlight.report.words.StatedLimits;
import leadlight.report.words.Words;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;

/**
 * One line of the table of findings: all joints with one kind of trouble and one thing to do.
 *
 * @param verdict what it means
 * @param pins the pins, as "3-5, 9" or, for bridges, "5-6; 9-10"
 * @param what the finding in words
 * @param evidence what in the photo speaks for the surest of them
 * @param clause the rule with its source
 * @param todo how to settle it at the bench
 */
record Entry(
    Verdict verdict, String pins, String what, String evidence, String clause, String todo) {

  private record Seen(GradedJoint joint, Finding finding) {}

  private record Key(Verdict verdict, String what, String clause, String todo) {}

  /** Worst first, then by pin. */
  static List<Entry> of(List<GradedJoint> joints, ReportContext context) {
    return new Maker(context).of(joints);
  }

  /** Makes the lines in a language. */
  private static final class Maker {

    private final StatedLimits limits;
    private final PictureWords said;
    private final Sentences sentences;

    Maker(ReportContext context) {
      this.limits = context.limits();
      this.said = new PictureWords(context.words());
      this.sentences = said.sentences();
    }

    List<Entry> of(List<GradedJoint> joints) {
      Map<Key, List<Seen>> groups = new LinkedHashMap<>();
      for (GradedJoint joint : joints) {
        for (Finding f : Sentences.spoken(joint.findings())) {
          groups
              .computeIfAbsent(
                  new Key(f.verdict(), what(f), rule(f), sentences.settle(f)),
                  key -> new ArrayList<>())
              .add(new Seen(joint, f));
        }
      }
      List<Entry> entries = new ArrayList<>();
      groups.forEach((key, seen) -> entries.add(entry(key, seen)));
      entries.addAll(unjudged(joints));
      entries.sort(Comparator.comparingInt((Entry e) -> Verdict.WORST_FIRST.indexOf(e.verdict())));
      return entries;
    }

    private String rule(Finding finding) {
      return finding.clause().isEmpty() ? "" : limits.rule(finding, said.words());
    }

    private Entry entry(Key key, List<Seen> seen) {
      boolean pairs = seen.stream().anyMatch(s -> s.finding().pins().size() > 1);
      String pins =
          pairs
              ? seen.stream()
                  .map(s -> Words.pins(s.finding().pins()))
                  .distinct()
                  .collect(Collectors.joining("; "))
              : Words.pins(seen.stream().map(s -> s.joint().pin()).toList());
      Seen surest =
          seen.stream()
              .max(
                  Comparator.comparingDouble((Seen s) -> s.finding().probability())
                      .thenComparing(s -> -s.joint().pin()))
              .orElseThrow();
      String evidence = String.join("; ", sentences.because(surest.finding()));
      if (seen.size() > 1 && !evidence.isEmpty()) {
        evidence = said.get("evidence-of", surest.joint().pin(), evidence);
      }
      return new Entry(key.verdict(), pins, key.what(), evidence, key.clause(), key.todo());
    }

    private String what(Finding finding) {
      String kind = said.kind(finding.kind());
      return finding.share().isPresent() ? said.words().get("kind.no-fillet", kind) : kind;
    }

    private List<Entry> unjudged(List<GradedJoint> joints) {
      List<Entry> entries = new ArrayList<>();
      HandsOn.doubts(joints, sentences)
          .forEach(
              (why, pins) ->
                  entries.add(
                      new Entry(
                          Verdict.UNJUDGED,
                          Words.pins(pins),
                          VerdictWords.of(Verdict.UNJUDGED, said.words()),
                          String.join("; ", why),
                          "",
                          "")));
      return entries;
    }
  }
}
