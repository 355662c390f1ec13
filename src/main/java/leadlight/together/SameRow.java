package leadlight.together;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Familiarity;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.model.remark.Doubt;
import leadlight.numeric.Logistic;

/**
 * One joint as several photos of it show it. Chances are joined as log odds: what each photo adds
 * to the odds before any photo, a photo that says more counting more, and all together as many
 * times as independent photos would be needed to say as much (two photos of one joint by one reader
 * err together: the design effect of Kish, Survey Sampling, 1965).
 */
final class SameRow {

  private static final double LEAST = 1e-4;

  private final JoinTuning tuning = JoinTuning.builtIn();

  /**
   * A joint joined; the first photo's place and finds.
   *
   * @param views the joint in each photo in which it was registered, the first photo's first
   */
  Joint joined(List<Joint> views) {
    Joint first = views.get(0);
    List<Joint> fit = views.stream().filter(v -> v.unfitBecause().isEmpty()).toList();
    if (views.size() == 1 || fit.isEmpty()) {
      return first;
    }
    Joint best = fit.contains(first) ? first : fit.get(0);
    Optional<Doubt> none = Optional.empty();
    return new Joint(
        first.lead(),
        measures(fit),
        best.evidence(),
        none,
        pooled(fit, Joint::byMeasures),
        reading(fit));
  }

  /** Of each measure the surest. */
  private static Map<Measure, Quantity> measures(List<Joint> fit) {
    Map<Measure, Quantity> best = new EnumMap<>(Measure.class);
    for (Joint view : fit) {
      view.measures()
          .forEach((what, value) -> best.merge(what, value, (a, b) -> b.u() < a.u() ? b : a));
    }
    return best;
  }

  private Optional<Reading> reading(List<Joint> fit) {
    List<Reading> known =
        fit.stream()
            .flatMap(v -> v.byReader().stream())
            .filter(reading -> !reading.unlike())
            .toList();
    if (known.isEmpty()) {
      return fit.get(0).byReader();
    }
    Optional<Chances> chances =
        pooled(fit, v -> v.byReader().filter(r -> !r.unlike()).map(Reading::chances));
    double strangeness = known.stream().mapToDouble(Reading::strangeness).min().orElse(1);
    return chances.map(c -> new Reading(c, strangeness, false, known.get(0).moved()));
  }

  private Optional<Chances> pooled(List<Joint> fit, Function<Joint, Optional<Chances>> of) {
    List<Chances> all = fit.stream().flatMap(view -> of.apply(view).stream()).toList();
    if (all.isEmpty()) {
      return Optional.empty();
    }
    Map<Question, Double> joined = new EnumMap<>(Question.class);
    for (Question question : Question.values()) {
      List<Double> asked = new ArrayList<>();
      for (Chances one : all) {
        OptionalDouble chance = one.asked(question);
        if (chance.isPresent()) {
          asked.add(chance.getAsDouble());
        }
      }
      if (!asked.isEmpty()) {
        joined.put(question, pooled(asked));
      }
    }
    return Optional.of(new Chances(joined));
  }

  /** Several chances of one thing as one. */
  double pooled(List<Double> chances) {
    double before = logit(tuning.before().value());
    double sum = 0;
    double weights = 0;
    for (double chance : chances) {
      double added = logit(chance) - before;
      double weight = Math.pow(Math.abs(added) + LEAST, tuning.sureCountsMore().value());
      sum += weight * added;
      weights += weight;
    }
    double n = chances.size();
    double independent = n / (1 + (n - 1) * tuning.together().value());
    return Logistic.of(before + independent * sum / weights);
  }

  private static double logit(double chance) {
    double p = Math.max(LEAST, Math.min(1 - LEAST, chance));
    return Math.log(p / (1 - p));
  }

  /** The photos' make: as unfamiliar as the most unfamiliar of them, for its chances count, too. */
  static Familiarity make(List<Familiarity> makes) {
    double most = makes.stream().mapToDouble(Familiarity::unfamiliar).max().orElse(1);
    return new Familiarity(most, makes.get(0).byReader());
  }
}
