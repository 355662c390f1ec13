package leadlight.report.words;

import java.util.List;
import java.util.stream.Collectors;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.result.LegSet;
import leadlight.model.row.RowSpec;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;

/**
 * What pictures say, in the words of pages.
 *
 * @param words the language
 */
public record PictureWords(Messages words) {

  /** Lengths on pictures are in millimetres. */
  public Sentences sentences() {
    return new Sentences(words, LengthUnit.MM);
  }

  public String get(String key, Object... values) {
    return words.get("picture." + key, values);
  }

  public String kind(FindingKind kind) {
    return words.get("kind." + kind.id());
  }

  /** "lead beside its land", "solder bridge 5-6": for a place at the joint itself. */
  public String label(Finding finding) {
    return kind(finding.kind())
        + (finding.pins().size() > 1 ? " " + Words.pins(finding.pins()) : "");
  }

  /** "2 defects, 1 not judged, 16 sound"; verdicts that nobody got are left out. */
  public String counts(List<GradedJoint> joints) {
    return Verdict.WORST_FIRST.stream()
        .filter(verdict -> count(joints, verdict) > 0)
        .map(verdict -> counted(joints, verdict))
        .collect(Collectors.joining(", "));
  }

  /** "2 defects", "0 to watch". */
  public String counted(List<GradedJoint> joints, Verdict verdict) {
    return VerdictWords.counted(verdict, count(joints, verdict), words);
  }

  private static int count(List<GradedJoint> joints, Verdict verdict) {
    return (int) joints.stream().filter(joint -> joint.verdict() == verdict).count();
  }

  /** "usb-c-16, 12 joints at 0.5 mm, class 2". */
  public String job(RowSpec row, int productClass) {
    String part =
        row.connectorId().equals("plain") ? words.get("page.plain-row") : row.connectorId();
    return get("job", part, row.leads(), decimal(row.pitchMm(), 3), productClass);
  }

  /** How large a piece is shown: "enlarged 1.60 times", "shown at 0.24 of its size". */
  public String size(double times) {
    if (Math.abs(times - 1) < 0.005) {
      return get("size.same");
    }
    return get(times > 1 ? "size.larger" : "size.smaller", words.number(times, 2));
  }

  /** A number without zeros behind it, as "0.5". */
  public String decimal(double value, int decimals) {
    return Rounded.to(value, decimals).toPlainString().replace(".", words.get("number.decimal"));
  }

  /** "Leg 2", or that photos do not tell which. */
  public String leg(LegSet.Joined leg) {
    return leg.number().isPresent()
        ? words.get("legs.name", leg.number().getAsInt())
        : words.get("legs.unnamed");
  }

  /** "Anchor legs: 1 defect, 1 not judged, 2 sound". */
  public String legs(LegSet set) {
    return words.get("legs.title")
        + ": "
        + List.of(Verdict.DEFECT, Verdict.UNJUDGED, Verdict.ACCEPTABLE).stream()
            .map(verdict -> VerdictWords.counted(verdict, set.count(verdict), words))
            .collect(Collectors.joining(", "));
  }
}
