package leadlight.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import leadlight.model.Evidence;
import leadlight.model.FindingKind;
import leadlight.model.Joint;
import leadlight.model.Opinions;
import leadlight.model.Reading;
import leadlight.model.SolderChances;

/** From two opinions on a joint to the evidence that is graded. */
final class Weighing {

  /** Kinds that both the measures and the second reader speak of. */
  private static final Set<FindingKind> SOLDER =
      Set.of(
          FindingKind.MISSING_LEAD,
          FindingKind.OPEN,
          FindingKind.INSUFFICIENT,
          FindingKind.EXCESS,
          FindingKind.BRIDGE);

  private final Opinions opinions;
  private final TwoOpinions rule = TwoOpinions.builtIn();

  Weighing(Opinions opinions) {
    this.opinions = opinions;
  }

  /**
   * The evidence on one joint by the opinions that count.
   *
   * @param leads leads of the row
   */
  List<Evidence> evidence(Joint joint, int leads) {
    List<Evidence> measured = joint.evidence();
    if (opinions == Opinions.MEASURES || measured.isEmpty() || joint.byReader().isEmpty()) {
      return measured;
    }
    SolderChances byMeasures = joint.byMeasures().orElseThrow();
    SolderChances byReader = joint.byReader().get().chances();
    SolderChances chances =
        opinions == Opinions.READER ? byReader : rule.both(byMeasures, byReader);
    boolean fine = measured.stream().anyMatch(it -> it.kind() == FindingKind.EXCESS);
    List<Evidence> evidence = new ArrayList<>();
    for (SolderChances.Named named : chances.named(joint.pin(), leads, fine)) {
      evidence.add(evidence(named, measured));
    }
    measured.stream().filter(it -> !SOLDER.contains(it.kind())).forEach(evidence::add);
    return evidence;
  }

  /** The chance by the opinions that count, with the numbers that the measures give. */
  private static Evidence evidence(SolderChances.Named named, List<Evidence> measured) {
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
    if (opinions != Opinions.BOTH || joint.byReader().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "measures %d %%, second reader %d %%",
            percent(chance(joint.byMeasures().orElseThrow(), joint, evidence)),
            percent(chance(joint.byReader().get().chances(), joint, evidence))));
  }

  /** Rounded down, so that 99.9 % never reads as certain. */
  private static int percent(double chance) {
    return (int) Math.floor(100 * chance);
  }

  private static double chance(SolderChances chances, Joint joint, Evidence evidence) {
    return switch (evidence.kind()) {
      case MISSING_LEAD -> chances.missing();
      case EXCESS -> chances.excess();
      case BRIDGE ->
          evidence.neighbourPin() < joint.pin() ? chances.bridgeBefore() : chances.bridgeAfter();
      default -> chances.unwetted();
    };
  }
}
