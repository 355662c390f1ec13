package leadlight.enrol.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlight.enrol.learn.Enrolment.Fold;
import leadlight.enrol.learn.Enrolment.Kind;
import leadlight.enrol.learn.Enrolment.Line;
import leadlight.enrol.learn.Enrolment.Photo;
import leadlight.enrol.learn.Enrolment.Shown;

/**
 * From joints that were shown to all that follows: a line for each photo, learned without it, and
 * the borders that its joints draw there. A new joint must lie beyond the borders of all photos
 * (cross-conformal prediction: Vovk 2015; Vovk, Gammerman and Shafer 2005, Algorithmic learning in
 * a random world; split: Papadopoulos and others 2002), and beyond by a margin, since joints of one
 * photo are not independent. Bare lands take no part.
 */
public final class Learning {

  private final EnrolTuning tuning;
  private final List<Shown> all;
  private final List<Shown> joints;
  private final List<Photo> photos;

  public Learning(List<Photo> photos, List<Shown> joints, EnrolTuning tuning) {
    this.photos = photos;
    this.all = joints;
    this.joints = Enrolment.leads(photos, joints);
    this.tuning = tuning;
  }

  public Enrolment enrolment(String bench, int version, String reader, String opinions) {
    return new Enrolment(
        Enrolment.SCHEMA,
        bench,
        version,
        reader,
        opinions,
        photos,
        all,
        folds(),
        ShrunkLine.both(joints) ? Optional.of(ShrunkLine.of(joints, tuning)) : Optional.empty(),
        Distances.cloud(
            joints.stream().filter(it -> photos.get(it.photo()).kind() != Kind.RECORDED).toList(),
            photos.size(),
            tuning.leastSpread().value()));
  }

  private List<Fold> folds() {
    Map<Integer, Line> lines = new TreeMap<>();
    List<Double> sound = new ArrayList<>();
    List<Double> unsoldered = new ArrayList<>();
    for (int photo : leftOut(photos.size(), joints)) {
      Line line = ShrunkLine.of(without(photo, joints), tuning);
      lines.put(photo, line);
      of(photo)
          .forEach(
              it -> (it.soldered() ? sound : unsoldered).add(line.of(it.general(), it.features())));
    }
    List<Fold> folds = new ArrayList<>();
    lines.forEach((photo, line) -> folds.add(fold(photo, line, spread(sound), spread(unsoldered))));
    return folds;
  }

  /** Photos with joints that leave both kinds when they are left out, in order. */
  static Set<Integer> leftOut(int photos, List<Shown> joints) {
    Set<Integer> leftOut = new TreeSet<>();
    for (int i = 0; i < photos; i++) {
      int photo = i;
      boolean shown = joints.stream().anyMatch(it -> it.photo() == photo);
      if (shown && ShrunkLine.both(without(photo, joints))) {
        leftOut.add(photo);
      }
    }
    return leftOut;
  }

  private static List<Shown> without(int photo, List<Shown> joints) {
    return joints.stream().filter(it -> it.photo() != photo).toList();
  }

  private Fold fold(int photo, Line line, double soundSpread, double unsolderedSpread) {
    Optional<Double> least =
        of(photo).stream()
            .filter(it -> !it.soldered())
            .map(it -> line.of(it.general(), it.features()))
            .min(Double::compare);
    Optional<Double> most =
        of(photo).stream()
            .filter(Shown::soldered)
            .map(it -> line.of(it.general(), it.features()))
            .max(Double::compare);
    double margin = tuning.margin().value();
    return new Fold(
        photo,
        line,
        least.map(it -> it - margin * unsolderedSpread),
        most.map(it -> it + margin * soundSpread));
  }

  private List<Shown> of(int photo) {
    return joints.stream().filter(it -> it.photo() == photo).toList();
  }

  private static double spread(List<Double> values) {
    double mean = values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    double sum = values.stream().mapToDouble(it -> (it - mean) * (it - mean)).sum();
    return values.isEmpty() ? 0 : Math.sqrt(sum / values.size());
  }
}
