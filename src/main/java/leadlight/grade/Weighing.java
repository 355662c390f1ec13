package leadlight.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import leadlight.model.Evidence;
import leadlight.model.FaultChances;
import leadlight.model.FindingKind;
import leadlight.model.Joint;
import leadlight.model.Opinions;
import leadlight.model.Reading;

/** From two opinions on a joint to the evidence that is graded. */
final class Weighing {

  /** Kinds whose evidence is made of the opinions' chances. */
  private static final Set<FindingKind> OPINED =
      Set.of(
          FindingKind.MISSING_LEAD,
          FindingKind.OPEN,
          FindingKind.INSUFFICIENT,
          FindingKind.EXCESS,
          FindingKind.BRIDGE,
          FindingKind.SOLDER_BALL);

  /** Below this there is nothing to speak of. */
  private static final double WORTH_SAYING = 0.05;

  /** A limit is the one that an opinion spoke of if it differs by less than this share of width. */
  private static final double SAME_LIMIT = 0.02;

  private final Opinions opinions;
  private final TwoOpinions rule = TwoOpinions.builtIn();

  Weighing(Opinions opinions) {
    this.opinions = opinions;
  }

  /** Whether the second reader's opinion on a joint counts. */
  boolean read(Joint joint) {
    return opinions != Opinions.MEASURES && joint.byReader().isPresent();
  }

  /**
   * The evidence on one joint by the opinions that count.
   *
   * @param leads leads of the row
   */
  List<Evidence> evidence(Joint joint, int leads) {
    List<Evidence> measured = joint.evidence();
    if (measured.isEmpty() || !read(joint)) {
      return measured;
    }
    FaultChances chances = chances(joint);
    boolean fine = measured.stream().anyMatch(it -> it.kind() == FindingKind.EXCESS);
    List<Evidence> evidence = new ArrayList<>();
    for (FaultChances.Named named : chances.named(joint.pin(), leads, fine)) {
      evidence.add(evidence(named, measured));
    }
    if (fine && chances.ball() >= WORTH_SAYING) {
      evidence.add(
          evidence(new FaultChances.Named(FindingKind.SOLDER_BALL, chances.ball(), 0), measured));
    }
    measured.stream().filter(it -> !OPINED.contains(it.kind())).forEach(evidence::add);
    return evidence;
  }

  private FaultChances chances(Joint joint) {
    FaultChances byReader = joint.byReader().orElseThrow().chances();
    return opinions == Opinions.READER
        ? byReader
        : rule.both(joint.byMeasures().orElseThrow(), byReader);
  }

  /**
   * Chance that the side overhang passes its limit, by the opinions that count.
   *
   * @param share the limit, in widths of the lead
   * @return empty if the measure alone counts, or if the reader was not asked for this share
   */
  OptionalDouble overhang(Joint joint, double share) {
    if (!read(joint)) {
      return OptionalDouble.empty();
    }
    return asked(share)
        .map(question -> OptionalDouble.of(question.applyAsDouble(chances(joint))))
        .orElse(OptionalDouble.empty());
  }

  /** In a word, what each says of an overhang by a share; empty if there is one opinion only. */
  Optional<String> overhangWords(Joint joint, double share) {
    return asked(share).flatMap(question -> words(joint, question));
  }

  private static Optional<ToDoubleFunction<FaultChances>> asked(double share) {
    if (Math.abs(share - FaultChances.HALF) < SAME_LIMIT) {
      return Optional.of(FaultChances::overHalf);
    }
    return Math.abs(share - FaultChances.QUARTER) < SAME_LIMIT
        ? Optional.of(FaultChances::overQuarter)
        : Optional.empty();
  }

  /** The chance by the opinions that count, with the numbers that the measures give. */
  private static Evidence evidence(FaultChances.Named named, List<Evidence> measured) {
    Optional<Evidence> like =
        measured.stream()
            .filter(it -> sameQuestion(it.kind(), named.kind()))
            .filter(it -> it.neighbourPin() == named.neighbourPin())
            .findFirst();
    return new Evidence(
        named.kind(),
        named.chance(),
        named.neighbourPin(),
        like.map(Evidence::words).orElse(""),
        like.map(Evidence::reasons).orElse(List.of()));
  }

  /** Open and insufficient answer one question. */
  private static boolean sameQuestion(FindingKind a, FindingKind b) {
    return a == b
        || (JointGrading.LACKS_SOLDER.contains(a) && JointGrading.LACKS_SOLDER.contains(b));
  }

  /** Whether the reader knows nothing like this joint. */
  boolean unlike(Joint joint) {
    return opinions != Opinions.MEASURES && joint.byReader().map(Reading::unlike).orElse(false);
  }

  /** In a word, what each says of a question; empty if there is one opinion only. */
  Optional<String> words(Joint joint, Evidence evidence) {
    return words(joint, chances -> chance(chances, joint, evidence));
  }

  private Optional<String> words(Joint joint, ToDoubleFunction<FaultChances> question) {
    if (opinions != Opinions.BOTH || joint.byReader().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "measures %d %%, second reader %d %%",
            percent(question.applyAsDouble(joint.byMeasures().orElseThrow())),
            percent(question.applyAsDouble(joint.byReader().get().chances()))));
  }

  /** Rounded down, so that 99.9 % never reads as certain. */
  private static int percent(double chance) {
    return (int) Math.floor(100 * chance);
  }

  private static double chance(FaultChances chances, Joint joint, Evidence evidence) {
    return switch (evidence.kind()) {
      case MISSING_LEAD -> chances.missing();
      case EXCESS -> chances.excess();
      case SOLDER_BALL -> chances.ball();
      case BRIDGE ->
          evidence.neighbourPin() < joint.pin() ? chances.bridgeBefore() : chances.bridgeAfter();
      default -> chances.unwetted();
    };
  }
}
