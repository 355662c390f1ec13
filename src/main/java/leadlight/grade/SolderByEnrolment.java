package leadlight.grade;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import leadlight.grade.limits.Rule;
import leadlight.model.FindingKind;
import leadlight.model.Question;
import leadlight.model.joint.BenchOpinion;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Finding;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfRow;

/**
 * What an enrolled bench's own joints say of one joint. Where the general opinions count, too, the
 * bench says nothing against what one of them rather sees, nor where they contradict each other,
 * but leaves a doubt; where it is unsure it has no say there.
 *
 * <p>Of starved joints it has no say on any make of photo, since it was shown unsoldered ones:
 * "good" needs the general opinions to see that a joint is not starved, each as surely as it must
 * see a fillet, since the bench stands in for their doubt of an open one. Where they do not count
 * nobody sees that, and the joint stays unjudged.
 */
final class SolderByEnrolment {

  private final RowRules rules;
  private final int pin;
  private final Weighing.Weighed opinion;
  private final boolean general;

  SolderByEnrolment(RowRules rules, int pin, Weighing.Weighed opinion) {
    this.rules = rules;
    this.pin = pin;
    this.opinion = opinion;
    this.general = !rules.unfamiliarPhoto();
  }

  /** Says it; false if the general opinions are to be asked. */
  boolean settles(List<Finding> findings, List<Doubt> doubts, List<Note> grounds) {
    Optional<BenchOpinion> said = rules.said(pin);
    if (said.isEmpty()) {
      return false;
    }
    double chance = said.get().unsoldered();
    return switch (said.get().side()) {
      case SOLDERED -> soldered(chance, doubts, grounds);
      case UNSOLDERED -> unsoldered(chance, findings, doubts);
      case BETWEEN -> unsure(new Doubt.BenchUnsure(rules.name(), chance), doubts);
      case UNLIKE_SHOWN -> unsure(new Doubt.UnlikeShown(rules.name()), doubts);
    };
  }

  private boolean soldered(double chance, List<Doubt> doubts, List<Note> grounds) {
    if (!general) {
      return doubts.add(new Doubt.StarvedNotShown(rules.name()));
    }
    if (lacks() || opinion.differ(Question.UNWETTED)) {
      return doubts.add(new Doubt.BenchDiffers(rules.name(), true));
    }
    return !perhapsStarved() && grounds.add(new NoteOfRow.SolderedByBench(rules.name(), chance));
  }

  private boolean unsoldered(double chance, List<Finding> findings, List<Doubt> doubts) {
    if (general) {
      return !lacks(opinion.both()) && doubts.add(new Doubt.BenchDiffers(rules.name(), false));
    }
    return findings.add(finding(chance));
  }

  private boolean unsure(Doubt doubt, List<Doubt> doubts) {
    return !general && doubts.add(doubt);
  }

  /** Whether any opinion, or both as one, rather sees no fillet. */
  private boolean lacks() {
    return Stream.of(Optional.of(opinion.both()), opinion.measures(), opinion.reader())
        .flatMap(Optional::stream)
        .anyMatch(this::lacks);
  }

  private boolean lacks(Chances chances) {
    return chances.lackingSolder() >= rules.decision().yesFrom().value();
  }

  private boolean perhapsStarved() {
    Chances both = opinion.both();
    boolean ratherStarved =
        both.lackingSolder() >= opinion.doubtFrom()
            && both.of(Question.OPEN) < rules.decision().yesFrom().value();
    return ratherStarved
        || starved(both) >= opinion.doubtFrom()
        || opinion.reader().stream()
            .anyMatch(it -> starved(it) > rules.decision().filletReaderTo().value());
  }

  /** The part of a lack of solder that is no open joint. */
  private static double starved(Chances chances) {
    return chances.lackingSolder() * (1 - chances.of(Question.OPEN));
  }

  private Finding finding(double chance) {
    Rule rule = rules.rule(FindingKind.OPEN);
    return new Finding(
        FindingKind.OPEN,
        List.of(pin),
        rule.verdict(),
        chance,
        OptionalDouble.empty(),
        Optional.of(new NoteOfRow.UnsolderedByBench(rules.name())),
        List.of(),
        rule.basis().words(),
        rule.settleBy().orElse(""));
  }
}
