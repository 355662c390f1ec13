package leadlight.grade;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import leadlight.data.Figure;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.Question;
import leadlight.model.joint.BenchOpinion;
import leadlight.model.joint.Chances;
import leadlight.model.joint.EnrolledRow;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.NoteOfJoint;

/**
 * Whether solder is seen to hold a joint's lead: the lead on its land, the fillet, room for it, and
 * a joint like joints that are known. What was not seen is a doubt.
 */
final class SolderSeen {

  private final RowRules rules;
  private final Decision decision;
  private final Joint joint;
  private final Weighing.Weighed opinion;
  private final JointFindings gathered;

  SolderSeen(JointFindings gathered) {
    this.gathered = gathered;
    this.rules = gathered.rules();
    this.decision = rules.decision();
    this.joint = gathered.joint();
    this.opinion = gathered.opinion();
  }

  /**
   * A lead on the land, by each opinion on its own; beside the reader the measures may be less
   * sure.
   */
  void leadSeen() {
    double chance = greatest(Question.MISSING);
    Figure measuresTo = opinion.two() ? decision.leadMeasuresTo() : decision.leadTo();
    boolean seen =
        missingTo(opinion.measures(), measuresTo) && missingTo(opinion.reader(), decision.leadTo());
    if (seen) {
      gathered.grounds().add(new NoteOfJoint.LeadSeen(chance));
    } else {
      gathered.doubts().add(new Doubt.LeadNotSeen(chance));
    }
  }

  private static boolean missingTo(Optional<Chances> opinion, Figure to) {
    return opinion.stream().allMatch(it -> it.of(Question.MISSING) <= to.value());
  }

  private double greatest(Question question) {
    return Stream.of(opinion.measures(), opinion.reader())
        .flatMap(Optional::stream)
        .mapToDouble(it -> it.of(question))
        .max()
        .orElseThrow();
  }

  /**
   * A lack of solder, or the fillet itself: by the bench where it is enrolled and has a say, else
   * by the general opinions.
   */
  void wetting() {
    if (!new SolderByEnrolment(rules, joint.pin(), opinion)
        .settles(gathered.findings(), gathered.doubts(), gathered.grounds())) {
      generalWetting();
    }
  }

  /** Why nothing is said of wetting on a make of photo on which that was never shown to work. */
  private Doubt unfamiliar() {
    return rules
        .enrolled()
        .flatMap(EnrolledRow::notAs)
        .<Doubt>map(why -> new Doubt.NotAsEnrolled(rules.name(), why))
        .orElseGet(() -> new Doubt.UnfamiliarPhoto(opinion.both().notHeld()));
  }

  /**
   * By the general opinions: each must have seen it at this joint. On a make of photo on which this
   * was never shown to work, neither is said.
   */
  private void generalWetting() {
    List<Chances.Fault> lack =
        gathered.faults().stream()
            .filter(it -> JointFindings.LACKS_SOLDER.contains(it.kind()))
            .toList();
    Chances.Fault likeliest = lack.get(0);
    if (rules.unfamiliarPhoto()) {
      gathered.doubts().add(unfamiliar());
    } else if (opinion.differ(Question.UNWETTED)) {
      gathered.doubts().add(gathered.differ(likeliest, Question.UNWETTED));
    } else if (likeliest.chance() >= decision.seenFrom().value()) {
      lack.forEach(fault -> gathered.findings().add(gathered.finding(fault)));
    } else if (likeliest.chance() >= opinion.doubtFrom()) {
      gathered.doubts().add(gathered.possible(likeliest, Question.UNWETTED));
    } else {
      filletSeen();
    }
  }

  private void filletSeen() {
    boolean seen =
        seen(opinion.measures(), decision.filletMeasuresTo())
            && seen(opinion.reader(), decision.filletReaderTo());
    OptionalDouble measures = unwetted(opinion.measures());
    OptionalDouble reader = unwetted(opinion.reader());
    if (seen) {
      gathered.grounds().add(new NoteOfJoint.FilletSeen(measures, reader));
    } else {
      gathered.doubts().add(new Doubt.FilletNotSeen(measures, reader));
    }
  }

  /** An opinion that does not count takes no part; {@link Weighing} sees to it that one does. */
  private static boolean seen(Optional<Chances> opinion, Figure to) {
    return opinion.stream().allMatch(it -> it.of(Question.UNWETTED) <= to.value());
  }

  private static OptionalDouble unwetted(Optional<Chances> opinion) {
    return opinion.stream().mapToDouble(it -> it.of(Question.UNWETTED)).findFirst();
  }

  /** Room between toe and land end: without it a fillet there cannot be told from the toe. */
  void room() {
    Quantity ahead = joint.measures().get(Measure.LAND_AHEAD);
    double neededMm = decision.roomFrom().value() * rules.spec().pitchMm();
    if (ahead != null && ahead.value() >= neededMm) {
      gathered.grounds().add(new NoteOfJoint.RoomForFillet(ahead.value()));
    } else {
      gathered.doubts().add(new Doubt.NoRoomForFillet(ahead == null ? 0 : ahead.value(), neededMm));
    }
  }

  /** On a make of photo that the reader does not know, the bench's own joints are what is known. */
  boolean likeShown() {
    return rules.unfamiliarPhoto()
        && rules
            .said(joint.pin())
            .filter(it -> it.side() != BenchOpinion.Side.UNLIKE_SHOWN)
            .isPresent();
  }

  /** Nothing strange: where the second reader was asked, the joint is like joints that it knows. */
  void known() {
    if (likeShown()) {
      return;
    }
    opinion
        .reading()
        .map(Reading::strangeness)
        .ifPresent(
            strangeness -> {
              if (strangeness <= decision.knownTo().value()) {
                gathered.grounds().add(new NoteOfJoint.LikeKnown(strangeness));
              } else {
                gathered.doubts().add(new Doubt.UnlikeKnown());
              }
            });
    if (!rules.unfamiliarPhoto()) {
      gathered.grounds().add(new NoteOfJoint.FamiliarPhoto(rules.make().unfamiliar()));
    }
  }
}
