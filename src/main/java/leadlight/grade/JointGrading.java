package leadlight.grade;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import leadlight.data.Figure;
import leadlight.model.BenchOpinion;
import leadlight.model.Chances;
import leadlight.model.Doubt;
import leadlight.model.EnrolledRow;
import leadlight.model.Evidence;
import leadlight.model.Familiarity;
import leadlight.model.Finding;
import leadlight.model.FindingKind;
import leadlight.model.GradedJoint;
import leadlight.model.Joint;
import leadlight.model.Measure;
import leadlight.model.Note;
import leadlight.model.Quantity;
import leadlight.model.Question;
import leadlight.model.Reading;
import leadlight.model.Reason;
import leadlight.model.RowSpec;
import leadlight.model.Verdict;

/** The grading of one joint: collects findings, doubts and grounds, then weighs them. */
final class JointGrading {

  /** Two names of one lack of solder. */
  static final Set<FindingKind> LACKS_SOLDER = Set.of(FindingKind.OPEN, FindingKind.INSUFFICIENT);

  /** Kinds that are spoken of by the opinions' chances. */
  private static final Set<FindingKind> OPINED =
      Set.of(
          FindingKind.MISSING_LEAD,
          FindingKind.OPEN,
          FindingKind.INSUFFICIENT,
          FindingKind.EXCESS,
          FindingKind.BRIDGE,
          FindingKind.SOLDER_BALL);

  private static final OptionalDouble NONE = OptionalDouble.empty();

  private final Bench bench;
  private final Decision decision;
  private final Joint joint;
  private final Weighing.Weighed opinion;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Doubt> doubts = new ArrayList<>();
  private final List<Note> grounds = new ArrayList<>();
  private final OverhangLimit overhang;

  /**
   * What all joints of a row are judged by.
   *
   * @param limits the limits
   * @param productClass 1, 2 or 3
   * @param decision the thresholds
   * @param spec the row
   * @param make whether the photo's make is familiar
   * @param enrolled what an enrolled bench says of the row, if one was named
   * @param bareThroughout whether the row's middle joint looks like a land without a lead
   */
  record Bench(
      AcceptanceSet limits,
      int productClass,
      Decision decision,
      RowSpec spec,
      Familiarity make,
      Optional<EnrolledRow> enrolled,
      boolean bareThroughout) {

    Rule rule(FindingKind kind) {
      return limits.rule(kind, productClass);
    }

    boolean unfamiliarPhoto() {
      return unfamiliar(make, decision);
    }

    static boolean unfamiliar(Familiarity make, Decision decision) {
      Figure from =
          make.byReader() ? decision.unfamiliarFrom() : decision.unfamiliarFromByMeasures();
      return make.unfamiliar() >= from.value();
    }

    /** Whether an enrolled bench judges this photo. */
    boolean judged() {
      return enrolled.filter(EnrolledRow::judges).isPresent();
    }

    /** What it says of a joint. */
    Optional<BenchOpinion> said(int pin) {
      return enrolled.filter(EnrolledRow::judges).map(row -> row.opinions().get(pin - 1));
    }

    String name() {
      return enrolled.map(EnrolledRow::bench).orElse("");
    }
  }

  JointGrading(Bench bench, Joint joint, Weighing.Weighed opinion) {
    this.bench = bench;
    this.decision = bench.decision();
    this.joint = joint;
    this.opinion = opinion;
    this.overhang = new OverhangLimit(bench, joint, opinion);
  }

  /** The verdict. */
  GradedJoint grade() {
    if (joint.unfitBecause().filter(Doubt.Covered.class::isInstance).isPresent()) {
      return graded(Verdict.UNJUDGED, List.of(joint.unfitBecause().orElseThrow()));
    }
    coarseFaults();
    if (joint.unfitBecause().isPresent()) {
      doubts.add(0, joint.unfitBecause().get());
    } else if (!seen(FindingKind.MISSING_LEAD)) {
      fineFaults();
    }
    boolean unlike = !likeShown() && opinion.reading().map(Reading::unlike).orElse(false);
    if (unlike) {
      doubts.add(0, new Doubt.UnlikeKnown());
    }
    findings.sort(
        Comparator.comparing(Finding::verdict).thenComparing(Finding::probability).reversed());
    return verdict(unlike);
  }

  /** Whole leads and metal between them: what a coarse photo shows, too. */
  private void coarseFaults() {
    for (Chances.Fault fault : faults()) {
      if (fault.kind().coarse()) {
        weigh(fault);
      }
    }
    if (!seen(FindingKind.MISSING_LEAD)) {
      overhang.finding().ifPresent(findings::add);
      overhang.doubt().ifPresent(doubts::add);
    }
  }

  private void fineFaults() {
    leadSeen();
    wetting();
    room();
    for (Chances.Fault fault : faults()) {
      if (fault.kind() == FindingKind.EXCESS) {
        weigh(fault);
      }
    }
    state(new Chances.Fault(FindingKind.SOLDER_BALL, 0, chance(Question.BALL), NONE));
    joint.evidence().stream()
        .filter(evidence -> !OPINED.contains(evidence.kind()))
        .forEach(it -> state(new Chances.Fault(it.kind(), 0, it.probability(), NONE)));
    known();
  }

  private List<Chances.Fault> faults() {
    return opinion.both().faults(joint.pin(), bench.spec().leads());
  }

  private double chance(Question question) {
    return opinion.both().of(question);
  }

  /** A fault that both opinions are asked of; strong differences are never weighed out. */
  private void weigh(Chances.Fault fault) {
    Question question = question(fault);
    if (defect(fault) && opinion.differ(question)) {
      doubts.add(differ(fault, question));
    } else if (nothingToCompare(fault)) {
      doubts.add(possible(fault, question));
    } else if (!state(fault) && defect(fault) && fault.chance() >= opinion.doubtFrom()) {
      doubts.add(possible(fault, question));
    }
  }

  /**
   * On a make of photo that the opinions do not know, leads flat on their lands may look like bare
   * lands. One that is missing differs from its neighbours; if all look so, nobody can tell.
   */
  private boolean nothingToCompare(Chances.Fault fault) {
    return fault.kind() == FindingKind.MISSING_LEAD
        && bench.unfamiliarPhoto()
        && bench.bareThroughout()
        && fault.chance() >= decision.seenFrom().value();
  }

  private Question question(Chances.Fault fault) {
    return switch (fault.kind()) {
      case MISSING_LEAD -> Question.MISSING;
      case EXCESS -> Question.EXCESS;
      default ->
          fault.neighbourPin() < joint.pin() ? Question.BRIDGE_BEFORE : Question.BRIDGE_AFTER;
    };
  }

  private boolean defect(Chances.Fault fault) {
    return bench.rule(fault.kind()).verdict() == Verdict.DEFECT;
  }

  /** States a fault that was seen. */
  private boolean state(Chances.Fault fault) {
    boolean seen = fault.chance() >= decision.seenFrom().value();
    if (seen) {
      findings.add(finding(fault));
    }
    return seen;
  }

  private Doubt differ(Chances.Fault fault, Question question) {
    return new Doubt.OpinionsDiffer(
        fault.kind(),
        fault.neighbourPin(),
        opinion.measures().orElseThrow().of(question),
        opinion.reader().orElseThrow().of(question));
  }

  private Doubt possible(Chances.Fault fault, Question question) {
    boolean two = opinion.two();
    return new Doubt.Possible(
        fault.kind(),
        fault.neighbourPin(),
        fault.chance(),
        two ? opinion.measures().orElseThrow().asked(question) : NONE,
        two ? opinion.reader().orElseThrow().asked(question) : NONE);
  }

  /**
   * A lead on the land, by each opinion on its own; beside the reader the measures may be less
   * sure.
   */
  private void leadSeen() {
    double chance = greatest(Question.MISSING);
    Figure measuresTo = opinion.two() ? decision.leadMeasuresTo() : decision.leadTo();
    boolean seen =
        missingTo(opinion.measures(), measuresTo) && missingTo(opinion.reader(), decision.leadTo());
    if (seen) {
      grounds.add(new Note.LeadSeen(chance));
    } else {
      doubts.add(new Doubt.LeadNotSeen(chance));
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
  private void wetting() {
    if (!new BenchWetting(bench, joint.pin(), opinion).settles(findings, doubts, grounds)) {
      generalWetting();
    }
  }

  /** Why nothing is said of wetting on a make of photo on which that was never shown to work. */
  private Doubt unfamiliar() {
    return bench
        .enrolled()
        .flatMap(EnrolledRow::notAs)
        .<Doubt>map(why -> new Doubt.NotAsEnrolled(bench.name(), why))
        .orElseGet(() -> new Doubt.UnfamiliarPhoto(opinion.both().notHeld()));
  }

  /**
   * By the general opinions: each must have seen it at this joint. On a make of photo on which this
   * was never shown to work, neither is said.
   */
  private void generalWetting() {
    List<Chances.Fault> lack =
        faults().stream().filter(it -> LACKS_SOLDER.contains(it.kind())).toList();
    Chances.Fault likeliest = lack.get(0);
    if (bench.unfamiliarPhoto()) {
      doubts.add(unfamiliar());
    } else if (opinion.differ(Question.UNWETTED)) {
      doubts.add(differ(likeliest, Question.UNWETTED));
    } else if (likeliest.chance() >= decision.seenFrom().value()) {
      lack.forEach(fault -> findings.add(finding(fault)));
    } else if (likeliest.chance() >= opinion.doubtFrom()) {
      doubts.add(possible(likeliest, Question.UNWETTED));
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
      grounds.add(new Note.FilletSeen(measures, reader));
    } else {
      doubts.add(new Doubt.FilletNotSeen(measures, reader));
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
  private void room() {
    Quantity ahead = joint.measures().get(Measure.LAND_AHEAD);
    double neededMm = decision.roomFrom().value() * bench.spec().pitchMm();
    if (ahead != null && ahead.value() >= neededMm) {
      grounds.add(new Note.RoomForFillet(ahead.value()));
    } else {
      doubts.add(new Doubt.NoRoomForFillet(ahead == null ? 0 : ahead.value(), neededMm));
    }
  }

  /** On a make of photo that the reader does not know, the bench's own joints are what is known. */
  private boolean likeShown() {
    return bench.unfamiliarPhoto()
        && bench
            .said(joint.pin())
            .filter(it -> it.side() != BenchOpinion.Side.UNLIKE_SHOWN)
            .isPresent();
  }

  /** Nothing strange: where the second reader was asked, the joint is like joints that it knows. */
  private void known() {
    if (likeShown()) {
      return;
    }
    opinion
        .reading()
        .map(Reading::strangeness)
        .ifPresent(
            strangeness -> {
              if (strangeness <= decision.knownTo().value()) {
                grounds.add(new Note.LikeKnown(strangeness));
              } else {
                doubts.add(new Doubt.UnlikeKnown());
              }
            });
    if (!bench.unfamiliarPhoto()) {
      grounds.add(new Note.FamiliarPhoto(bench.make().unfamiliar()));
    }
  }

  private boolean seen(FindingKind kind) {
    return findings.stream().anyMatch(finding -> finding.kind() == kind);
  }

  private Finding finding(Chances.Fault fault) {
    Rule rule = bench.rule(fault.kind());
    Optional<Evidence> measured =
        joint.evidence().stream()
            .filter(it -> sameQuestion(it.kind(), fault.kind()))
            .filter(it -> it.neighbourPin() == fault.neighbourPin())
            .findFirst();
    List<Reason> reasons = measured.map(Evidence::reasons).orElse(List.of());
    return new Finding(
        fault.kind(),
        fault.neighbourPin() == 0
            ? List.of(joint.pin())
            : List.of(joint.pin(), fault.neighbourPin()),
        rule.verdict(),
        fault.chance(),
        fault.share(),
        measured.flatMap(Evidence::measured),
        reasons,
        rule.basis().words(),
        rule.settleBy().orElse(""));
  }

  private static boolean sameQuestion(FindingKind a, FindingKind b) {
    return a == b || (LACKS_SOLDER.contains(a) && LACKS_SOLDER.contains(b));
  }

  /** A joint unlike all that is known is not judged, whatever else was said of it. */
  private GradedJoint verdict(boolean unlike) {
    Verdict worst =
        findings.stream().map(Finding::verdict).reduce(Verdict.ACCEPTABLE, Verdict::worse);
    if (worst == Verdict.DEFECT && !unlike) {
      return graded(worst, List.of());
    }
    if (worst == Verdict.UNJUDGED && doubts.isEmpty()) {
      doubts.add(new Doubt.ToSettle(findings.get(0).kind()));
    }
    return doubts.isEmpty()
        ? graded(worst, List.of())
        : graded(Verdict.UNJUDGED, doubts.stream().distinct().toList());
  }

  private GradedJoint graded(Verdict verdict, List<Doubt> because) {
    boolean good = verdict == Verdict.ACCEPTABLE || verdict == Verdict.PROCESS_INDICATOR;
    return new GradedJoint(
        joint, verdict, findings, overhang.checks(), because, good ? grounds : List.of());
  }
}
