package leadlight.drill.skill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.quality.agreement.AgreementStudy;
import leadlight.quality.agreement.Appraisal;
import leadlight.quality.agreement.Coefficient;
import leadlight.quality.grades.Grade;
import leadlight.quality.grades.Grades;
import leadlight.quality.grades.Reading;
import leadlight.record.DrillAnswer;
import leadlight.statistics.ClusterRate;

/**
 * What answers come to against the truth, by the agreement study of {@code quality}: a joint that
 * was judged twice counts twice, one at a limit not at all, an open answer is neither missed nor a
 * false alarm. Joints of one photo are alike: intervals are by photo.
 *
 * @param judged joints that count
 * @param missed faults called sound
 * @param falseAlarm sound joints called faulty
 * @param notJudged answers that decide nothing
 * @param kappa chance-corrected agreement with the truth; empty if all is of one kind
 * @param confusion what each truth was called: truth, call, count
 */
public record Figures(
    int judged,
    ClusterRate missed,
    ClusterRate falseAlarm,
    ClusterRate notJudged,
    Coefficient kappa,
    Map<String, Map<String, Integer>> confusion) {

  public static final Reading READING =
      new Reading(
          Set.of(Verdict.DEFECT.id()),
          Set.of(Verdict.ACCEPTABLE.id(), Verdict.PROCESS_INDICATOR.id()),
          Set.of(Verdict.UNJUDGED.id(), Outcome.LIMIT),
          false);

  private static final String TRUTH = "truth";
  private static final String PERSON = "trainee";

  /** The figures; empty if no answer counts. */
  public static Optional<Figures> of(List<DrillAnswer> answers) {
    List<Grade> grades = new ArrayList<>();
    int counted = 0;
    for (DrillAnswer answer : answers) {
      if (Outcome.of(answer).counts()) {
        counted++;
        String item = photo(answer) + " pin " + counted;
        grades.add(new Grade(item, TRUTH, 1, answer.truth().orElseThrow(), truth(answer)));
        grades.add(new Grade(item, PERSON, 1, answer.said().id(), said(answer)));
      }
    }
    if (counted == 0) {
      return Optional.empty();
    }
    AgreementStudy study = new AgreementStudy(Grades.of(grades), READING, Optional.of(TRUTH));
    Appraisal appraisal = study.appraisals().get(0);
    return Optional.of(
        new Figures(
            counted,
            appraisal.missed(),
            appraisal.falseAlarm(),
            appraisal.undecided(),
            appraisal.kappaByItem(),
            study.confusion(PERSON)));
  }

  /** The photo that the joint was shown in. */
  static String photo(DrillAnswer answer) {
    return answer.item().replaceFirst(" pin \\d+$", "");
  }

  private static Optional<String> truth(DrillAnswer answer) {
    return answer.truthFindings().isEmpty()
        ? Optional.empty()
        : Optional.of(
            String.join("; ", answer.truthFindings().stream().map(FindingKind::id).toList()));
  }

  private static Optional<String> said(DrillAnswer answer) {
    return answer.finding().map(FindingKind::id);
  }
}
