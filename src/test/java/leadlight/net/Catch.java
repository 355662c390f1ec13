package leadlight.net;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import leadlight.model.Question;
import leadlight.model.Verdict;
import leadlight.model.joint.Chances;
import leadlight.model.joint.GradedJoint;
import leadlight.model.result.ScoredPhoto;
import leadlight.trial.Positions;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.JointOutcome;
import leadlight.trial.outcome.JointResult;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.truth.TrueClass;

/**
 * What became of the pictures of one kind.
 *
 * @param scored what was said of each
 * @param outcomes the same beside its truth, of pictures that have one
 */
record Catch(List<ScoredPhoto> scored, List<PhotoOutcome> outcomes) {

  static Catch of(List<NetPicture> pictures, List<ScoredPhoto> scored) {
    List<PhotoOutcome> outcomes =
        IntStream.range(0, pictures.size())
            .filter(i -> pictures.get(i).truth().isPresent())
            .mapToObj(i -> Comparison.of(pictures.get(i).truth().get(), scored.get(i)))
            .toList();
    return new Catch(scored, outcomes);
  }

  /** The figures that bands may be set on; docs/net.md says what each means. */
  Map<String, Double> figures() {
    Map<String, Double> figures = new TreeMap<>();
    figures.put("rows", (double) scored.size());
    figures.put("rows-scored", count(scored, photo -> photo.joints().isEmpty() ? 0 : 1));
    figures.put("good-said-of-bad", goodSaidOfBad());
    if (!outcomes.isEmpty()) {
      withTruth(figures);
    }
    return figures;
  }

  private void withTruth(Map<String, Double> figures) {
    figures.put("rows-right", rows(RowResult.RIGHT));
    figures.put("rows-wrong", rows(RowResult.WRONG));
    figures.put("rows-not-found", rows(RowResult.NOT_FOUND));
    figures.put("caught", joints(JointResult.CAUGHT));
    figures.put("passed", joints(JointResult.PASSED));
    figures.put("false-calls", joints(JointResult.FALSE_CALL));
    figures.put("unjudged", joints(JointResult.UNJUDGED));
    figures.put("named-right", count(joints(), j -> caught(j) && j.namedRight() ? 1 : 0));
    Positions places = Positions.of(outcomes);
    if (places.leads() > 0) {
      figures.put("across-within-2u-%", 100 * places.lateralCovered().share());
      figures.put("along-within-2u-%", 100 * places.axialCovered().share());
      figures.put("across-median-%-of-pitch", 100 * places.lateralMedian());
      figures.put("along-median-%-of-pitch", 100 * places.axialMedian());
    }
    Optional.of(places.overhangCovered())
        .filter(rate -> rate.of() > 0)
        .ifPresent(rate -> figures.put("overhang-within-2u-%", 100 * rate.share()));
    opinions(figures, "defects", TrueClass.DEFECT);
    opinions(figures, "sound", TrueClass.ACCEPTABLE);
  }

  /** Each opinion by itself: a fault in one of them may not hide behind the other. */
  private void opinions(Map<String, Double> figures, String of, TrueClass truth) {
    List<JointOutcome> joints =
        joints().stream().filter(joint -> joint.truth().class2() == truth).toList();
    if (!joints.isEmpty()) {
      figures.put("reader-of-" + of + "-%", mean(joints, Opinion::lackByReader));
      figures.put("measures-of-" + of + "-%", mean(joints, Opinion::lackByMeasures));
    }
  }

  private static double mean(List<JointOutcome> joints, ToDoubleFunction<GradedJoint> chance) {
    return 100
        * joints.stream()
            .mapToDouble(joint -> chance.applyAsDouble(joint.opinion()))
            .filter(Double::isFinite)
            .average()
            .orElse(Double.NaN);
  }

  /** Where there is no true row, or another was found, every joint that is called good counts. */
  private double goodSaidOfBad() {
    if (outcomes.isEmpty()) {
      return count(
          scored, photo -> photo.joints().stream().filter(joint -> good(joint.verdict())).count());
    }
    return count(
        outcomes,
        photo ->
            photo.joints().stream()
                .filter(joint -> good(joint.opinion().verdict()))
                .filter(
                    joint ->
                        photo.row() == RowResult.WRONG
                            || joint.truth().class2() == TrueClass.DEFECT)
                .count());
  }

  private static boolean good(Verdict verdict) {
    return verdict == Verdict.ACCEPTABLE || verdict == Verdict.PROCESS_INDICATOR;
  }

  private static boolean caught(JointOutcome joint) {
    return joint.result() == JointResult.CAUGHT;
  }

  private double rows(RowResult result) {
    return count(outcomes, photo -> photo.row() == result ? 1 : 0);
  }

  private double joints(JointResult result) {
    return count(joints(), joint -> joint.result() == result ? 1 : 0);
  }

  /** Joints of rows that were not set elsewhere. */
  private List<JointOutcome> joints() {
    return outcomes.stream()
        .filter(photo -> photo.row() == RowResult.RIGHT)
        .flatMap(photo -> photo.joints().stream())
        .toList();
  }

  private static <T> double count(List<T> of, ToDoubleFunction<T> how) {
    return of.stream().mapToDouble(how).sum();
  }

  /** What each opinion says of the want of a lead or of solder; NaN if it says nothing. */
  private static final class Opinion {

    static double lackByReader(GradedJoint joint) {
      return joint.joint().byReader().map(reading -> lack(reading.chances())).orElse(Double.NaN);
    }

    static double lackByMeasures(GradedJoint joint) {
      return joint.joint().byMeasures().map(Opinion::lack).orElse(Double.NaN);
    }

    private static double lack(Chances chances) {
      return chances.of(Question.MISSING) + chances.lackingSolder();
    }
  }
}
