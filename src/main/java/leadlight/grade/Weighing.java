package leadlight.grade;

import java.util.Optional;
import leadlight.model.Opinions;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;

/** From two opinions on a joint to one. */
final class Weighing {

  private final Opinions opinions;
  private final Decision decision;
  private final TwoOpinions rule = TwoOpinions.builtIn();

  /**
   * Takes whose opinion counts.
   *
   * @param decision from where on opinions differ
   */
  Weighing(Opinions opinions, Decision decision) {
    this.opinions = opinions;
    this.decision = decision;
  }

  /**
   * What is said of one joint.
   *
   * @throws IllegalArgumentException if nobody was asked whose opinion counts
   */
  Weighed of(Joint joint) {
    Optional<Chances> measures =
        opinions == Opinions.READER ? Optional.empty() : joint.byMeasures();
    Optional<Reading> reader = opinions == Opinions.MEASURES ? Optional.empty() : joint.byReader();
    if (measures.isEmpty() && reader.isEmpty()) {
      throw new IllegalArgumentException("there is no opinion on pin " + joint.pin());
    }
    return new Weighed(measures, reader);
  }

  /** The opinions on one joint, each by itself and both as one. */
  final class Weighed {

    private final Optional<Chances> measures;
    private final Optional<Reading> reading;
    private final Chances both;

    private Weighed(Optional<Chances> measures, Optional<Reading> reading) {
      this.measures = measures;
      this.reading = reading;
      Optional<Chances> reader = reader();
      this.both =
          measures.isPresent() && reader.isPresent()
              ? rule.both(measures.get(), reader.get())
              : measures.or(() -> reader).orElseThrow();
    }

    /** Both as one, or the only one. */
    Chances both() {
      return both;
    }

    /** The measures' own, if they count. */
    Optional<Chances> measures() {
      return measures;
    }

    /** The second reader's own, if it counts. */
    Optional<Chances> reader() {
      return reading.map(Reading::chances);
    }

    /** The second reader's look at the joint, if it counts. */
    Optional<Reading> reading() {
      return reading;
    }

    /** Whether there are two opinions. */
    boolean two() {
      return measures.isPresent() && reading.isPresent();
    }

    /** Chance from which a fault is possible: a second opinion makes the first sharper. */
    double doubtFrom() {
      return (reading.isPresent() ? decision.doubtFromWithReader() : decision.doubtFrom()).value();
    }

    /** Whether one opinion says rather yes and the other surely no. */
    boolean differ(Question question) {
      return two()
          && rule.bothCount(question)
          && differ(measures.orElseThrow().of(question), reader().orElseThrow().of(question));
    }

    /** Whether of two chances one says rather yes and the other surely no. */
    boolean differ(double one, double other) {
      return Math.max(one, other) >= decision.yesFrom().value()
          && Math.min(one, other) <= decision.noTo().value();
    }
  }
}
