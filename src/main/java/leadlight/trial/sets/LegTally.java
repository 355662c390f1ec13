package leadlight.trial.sets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.model.result.GradedLeg;
import leadlight.statistics.ClusterRate;
import leadlight.trial.TrialTable;
import leadlight.trial.truth.LegsTruth;

/** How right photos of anchor legs were judged in class 2, as a table by side. */
public final class LegTally {

  /** What is wanted of wetted degrees: no farther off than this. */
  private static final double NEAR_DEG = 20;

  private final List<Outcome> outcomes = new ArrayList<>();
  private int elsewhere;

  /**
   * What was said of one leg that the frame does not cut.
   *
   * @param truth its photo
   * @param leg the leg
   * @param said empty if it was not found
   */
  private record Outcome(LegsTruth truth, LegsTruth.Leg leg, Optional<GradedLeg> said) {

    boolean is(String class2) {
      return leg.class2().equals(class2);
    }

    boolean said(Verdict verdict) {
      return said.orElseThrow().verdict() == verdict;
    }

    double offDeg() {
      return Math.abs(said.orElseThrow().wetted().value() - leg.wettedDeg());
    }

    boolean within2u() {
      return offDeg() <= 2 * said.orElseThrow().wetted().u();
    }

    boolean misnumbered() {
      return said.isPresent()
          && said.get().number().isPresent()
          && said.get().number().getAsInt() != leg.number();
    }
  }

  /** Adds what was said of a photo. */
  public void add(LegsTruth truth, List<GradedLeg> said) {
    int right = 0;
    for (LegsTruth.Leg leg : truth.legs()) {
      Optional<GradedLeg> at = truth.at(leg, said, GradedLeg::centre);
      right += at.isPresent() ? 1 : 0;
      if (!leg.cut()) {
        outcomes.add(new Outcome(truth, leg, at));
      }
    }
    elsewhere += said.size() - right;
  }

  /** The table, lines of text. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "| side | legs found | "
            + "of | faulty: passed | called | sound: called | accepted |"
            + " unjudged | wetted degrees within 20 | within 2 u |");
    lines.add("|---|---|---|---|---|---|---|---|---|---|");
    for (BoardSide side : BoardSide.values()) {
      List<Outcome> all = of(outcomes, o -> o.truth().side() == side);
      if (!all.isEmpty()) {
        lines.add(row(side.id(), all));
      }
    }
    lines.add("wrong numbers: " + of(outcomes, Outcome::misnumbered).size());
    lines.add("legs said where there is none: " + elsewhere);
    lines.add(
        "legs at a limit, or a matter of taste, are in the measures alone; 95 % intervals by photo"
            + " (Wilson at the effective number of legs)");
    outcomes.stream()
        .filter(o -> o.said().isPresent() && o.is("defect") && o.said(Verdict.ACCEPTABLE))
        .forEach(o -> lines.add("passed: " + told(o)));
    outcomes.stream()
        .filter(o -> o.said().isPresent() && o.is("acceptable") && o.said(Verdict.DEFECT))
        .forEach(o -> lines.add("called in error: " + told(o)));
    return lines;
  }

  private static String told(Outcome o) {
    return o.truth().photo().getFileName()
        + " leg "
        + o.leg().number()
        + ", "
        + o.leg().condition();
  }

  private static String row(String side, List<Outcome> all) {
    List<Outcome> found = of(all, o -> o.said().isPresent());
    List<Outcome> faulty = of(found, o -> o.is("defect"));
    List<Outcome> sound = of(found, o -> o.is("acceptable"));
    List<Outcome> both = of(found, o -> o.is("defect") || o.is("acceptable"));
    return String.join(
        " | ",
        "| " + side,
        "" + found.size(),
        "" + all.size(),
        rate(faulty, o -> o.said(Verdict.ACCEPTABLE)),
        rate(faulty, o -> o.said(Verdict.DEFECT)),
        rate(sound, o -> o.said(Verdict.DEFECT)),
        rate(sound, o -> o.said(Verdict.ACCEPTABLE)),
        rate(both, o -> o.said(Verdict.UNJUDGED)),
        rate(found, o -> o.offDeg() <= NEAR_DEG),
        rate(found, Outcome::within2u) + " |");
  }

  private static List<Outcome> of(List<Outcome> some, Predicate<Outcome> wanted) {
    return some.stream().filter(wanted).toList();
  }

  private static String rate(List<Outcome> some, Predicate<Outcome> so) {
    ClusterRate.Builder rate = new ClusterRate.Builder();
    some.forEach(o -> rate.add(o.truth().photo(), so.test(o)));
    return TrialTable.plain(rate.rate(), 1);
  }
}
