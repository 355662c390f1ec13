package leadlight.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.FindingKind;
import leadlight.model.Measure;
import leadlight.model.Opinions;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.Question;
import leadlight.model.Unit;
import leadlight.model.Verdict;
import leadlight.model.joint.BenchOpinion;
import leadlight.model.joint.Chances;
import leadlight.model.joint.EnrolledRow;
import leadlight.model.joint.Evidence;
import leadlight.model.joint.Familiarity;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.joint.LimitCheck;
import leadlight.model.joint.Reading;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.remark.Reason;
import leadlight.model.row.Lead;
import leadlight.model.row.RowSpec;
import org.junit.jupiter.api.Test;

/** What the table of {@link GradingTableTest} does not say: what findings carry, and the row. */
class GraderTest {

  private static final double FAMILIAR = 0.001;
  private static final Reason STEP = new Reason("toe_step", 0.4, 0.1, 2);
  private static final Reason SPAN = new Reason("gap_span", 0.9, 0.1, 3);
  private static final Reason FILM = new Reason("residue_film", 0.02, 0, 1);

  private static Chances sound() {
    return Chances.of(question -> question == Question.OPEN ? 0.9 : 0.001);
  }

  private static Quantity mm(double value) {
    return new Quantity(value, 0.01, Unit.MM);
  }

  private static final Map<Measure, Quantity> WITHIN_ITS_LAND =
      Map.of(
          Measure.LEAD_WIDTH, mm(0.2),
          Measure.LAND_AHEAD, mm(0.3),
          Measure.SIDE_OVERHANG, mm(-0.05));

  private static Joint joint(int pin, Chances measures, Optional<Reading> reader) {
    PointPx at = new PointPx(pin, 0);
    return new Joint(
        new Lead(pin, at, at, at, at, 1, 0, 0),
        Map.of(
            Measure.LEAD_WIDTH, mm(0.2),
            Measure.LAND_AHEAD, mm(0.3),
            Measure.SIDE_OVERHANG, mm(0.12)),
        List.of(
            new Evidence(FindingKind.BRIDGE, 0.9, pin + 1, Optional.empty(), List.of(SPAN)),
            new Evidence(
                FindingKind.RESIDUE,
                0.9,
                0,
                Optional.of(new NoteOfJoint.Film(0.02)),
                List.of(FILM)),
            new Evidence(FindingKind.OPEN, 0.9, 0, Optional.empty(), List.of(STEP))),
        Optional.empty(),
        Optional.of(measures),
        reader);
  }

  /** A joint that stands within its land. */
  private static Joint plain(int pin, Chances measures) {
    Joint joint = joint(pin, measures, Optional.empty());
    return new Joint(
        joint.lead(),
        WITHIN_ITS_LAND,
        List.of(),
        Optional.empty(),
        joint.byMeasures(),
        Optional.empty());
  }

  private static Grader.GradedRow row(double unfamiliar, List<Joint> joints) {
    RowSpec spec =
        RowSpec.plain(
            Math.max(3, joints.size()), 0.5, OptionalDouble.empty(), OptionalDouble.empty());
    return new Grader(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2, Opinions.BOTH)
        .grade(spec, joints, new Familiarity(unfamiliar, true));
  }

  private static GradedJoint graded(Joint joint) {
    return row(FAMILIAR, List.of(joint)).joints().get(0);
  }

  private static List<Joint> row(int lacking, double chance, int leads) {
    return IntStream.rangeClosed(1, leads)
        .mapToObj(
            pin -> plain(pin, pin <= lacking ? sound().with(Question.UNWETTED, chance) : sound()))
        .toList();
  }

  @Test
  void aFindingCarriesClauseSignalsAndItsOwnChance() {
    GradedJoint joint = graded(joint(1, sound().with(Question.UNWETTED, 0.97), Optional.empty()));

    Finding open = find(joint, FindingKind.OPEN);
    assertThat(open.probability()).isCloseTo(0.999 * 0.97, within(1e-9));
    assertThat(open.share()).hasValue(0.9);
    assertThat(open.reasons()).containsExactly(STEP);
    assertThat(open.pins()).containsExactly(1);
    assertThat(open.clause()).contains("IPC-A-610J");
    assertThat(open.settleBy()).isEmpty();
  }

  @Test
  void statesThatExcludeEachOtherShareOneProbability() {
    Chances either = sound().with(Question.UNWETTED, 0.97).with(Question.OPEN, 0.6);
    GradedJoint joint = graded(joint(1, either, Optional.empty()));

    Finding open = find(joint, FindingKind.OPEN);
    Finding starved = find(joint, FindingKind.INSUFFICIENT);
    assertThat(open.probability()).isEqualTo(starved.probability());
    assertThat(open.share().orElseThrow() + starved.share().orElseThrow()).isEqualTo(1);
    assertThat(starved.reasons()).containsExactly(STEP);
  }

  @Test
  void aBridgeNamesBothPinsAndTheSignalsOfItsOwnGap() {
    Chances bridges = sound().with(Question.BRIDGE_AFTER, 0.9).with(Question.BRIDGE_BEFORE, 0.8);
    GradedJoint joint = graded(joint(2, bridges, Optional.empty()));

    List<Finding> found =
        joint.findings().stream().filter(f -> f.kind() == FindingKind.BRIDGE).toList();
    assertThat(found).extracting(Finding::pins).containsExactly(List.of(2, 3), List.of(2, 1));
    assertThat(found.get(0).reasons()).containsExactly(SPAN);
    assertThat(found.get(1).reasons()).isEmpty();
  }

  @Test
  void whatWasMeasuredOfAFindingTravelsWithIt() {
    Finding residue = find(graded(joint(1, sound(), Optional.empty())), FindingKind.RESIDUE);
    assertThat(residue.measured()).contains(new NoteOfJoint.Film(0.02));
    assertThat(residue.reasons()).containsExactly(FILM);
  }

  /** Limit 0.10 mm (Table 8-5, A, half of 0.2); Phi(2) = 0.97725. */
  @Test
  void anOverhangSaysItsLimitAndTheProbabilityThatDecided() {
    Chances sureOfNone = sound().with(Question.OVER_HALF, 1e-6);
    Reading reader = new Reading(sureOfNone, 0.001, false, Optional.empty());
    GradedJoint joint = graded(joint(1, sureOfNone, Optional.of(reader)));

    Finding over = find(joint, FindingKind.SIDE_OVERHANG);
    assertThat(over.probability()).isCloseTo(0.97725, within(1e-5));
    assertThat(over.measured()).contains(new NoteOfJoint.AgainstLimit(0.12, 0.01, 0.1));
    assertThat(over.clause()).contains("Table 8-5");
    LimitCheck check = joint.checks().get(0);
    assertThat(check.measure()).isEqualTo(Measure.SIDE_OVERHANG);
    assertThat(check.limit()).isEqualTo(0.1);
    assertThat(check.atMost()).isTrue();
    assertThat(check.kept()).isCloseTo(0.02275, within(1e-5));
    assertThat(check.measured()).isEqualTo(mm(0.12));
    assertThat(check.clause()).isEqualTo(over.clause());
  }

  @Test
  void aDoubtNamesBothOpinions() {
    Reading reader =
        new Reading(sound().with(Question.UNWETTED, 0.2), 0.001, false, Optional.empty());
    Joint joint = joint(1, sound().with(Question.UNWETTED, 0.2), Optional.of(reader));
    Doubt.Possible possible =
        graded(without(joint)).doubts().stream()
            .filter(Doubt.Possible.class::isInstance)
            .map(Doubt.Possible.class::cast)
            .findFirst()
            .orElseThrow();

    assertThat(possible.kind()).isEqualTo(FindingKind.OPEN);
    assertThat(possible.measures()).hasValue(0.2);
    assertThat(possible.reader()).hasValue(0.2);
    assertThat(possible.chance()).isBetween(0.02, 0.5);
  }

  private static Joint without(Joint joint) {
    return new Joint(
        joint.lead(),
        WITHIN_ITS_LAND,
        List.of(),
        Optional.empty(),
        joint.byMeasures(),
        joint.byReader());
  }

  @Test
  void whatAVerdictOfGoodRestsOnIsNamed() {
    Reading reader = new Reading(sound(), 0.003, false, Optional.empty());
    Joint joint = without(joint(1, sound(), Optional.of(reader)));

    assertThat(graded(joint).grounds())
        .containsExactly(
            new NoteOfJoint.LeadSeen(0.001),
            new NoteOfJoint.FilletSeen(OptionalDouble.of(0.001), OptionalDouble.of(0.001)),
            new NoteOfJoint.RoomForFillet(0.3),
            new NoteOfJoint.LikeKnown(0.003),
            new NoteOfJoint.FamiliarPhoto(FAMILIAR));
    assertThat(graded(plain(1, sound().with(Question.UNWETTED, 0.97))).grounds()).isEmpty();
  }

  @Test
  void anUndecidedLimitCarriesItsNumbers() {
    Joint joint = joint(1, sound(), Optional.empty());
    Joint close =
        new Joint(
            joint.lead(),
            Map.of(
                Measure.LEAD_WIDTH, mm(0.2),
                Measure.LAND_AHEAD, mm(0.3),
                Measure.SIDE_OVERHANG, mm(0.1)),
            List.of(),
            Optional.empty(),
            joint.byMeasures(),
            Optional.empty());

    assertThat(graded(close).doubts())
        .containsExactly(new Doubt.LimitUndecided(FindingKind.SIDE_OVERHANG, 0.1, 0.01, 0.1, 0.5));
  }

  /** Limit 0.10 mm; 0.05 with u 0.01 is five u within: Phi(-5) = 2.87e-7. */
  @Test
  void aReadersDoubtOfAKeptLimitNamesWhatBothSay() {
    Chances sees = sound().with(Question.OVER_HALF, 0.8);
    Reading reader = new Reading(sees, 0.001, false, Optional.empty());
    Joint joint = joint(1, sound(), Optional.of(reader));
    Joint within =
        new Joint(
            joint.lead(),
            Map.of(
                Measure.LEAD_WIDTH, mm(0.2),
                Measure.LAND_AHEAD, mm(0.3),
                Measure.SIDE_OVERHANG, mm(0.05)),
            List.of(),
            Optional.empty(),
            joint.byMeasures(),
            joint.byReader());

    Doubt.OpinionsDiffer differ = (Doubt.OpinionsDiffer) graded(within).doubts().get(0);
    assertThat(differ.kind()).isEqualTo(FindingKind.SIDE_OVERHANG);
    assertThat(differ.measures()).isCloseTo(2.87e-7, within(1e-9));
    assertThat(differ.reader()).isEqualTo(0.8);
  }

  @Test
  void otherDoubtsThanOfWettingDoNotMakeARowAlike() {
    List<Joint> bridges =
        IntStream.rangeClosed(1, 20)
            .mapToObj(pin -> plain(pin, sound().with(Question.BRIDGE_AFTER, 0.3)))
            .toList();
    assertThat(row(FAMILIAR, bridges).notes()).isEmpty();
  }

  @Test
  void opinionsThatDifferOnWettingAreADoubtOfIt() {
    Reading sure =
        new Reading(sound().with(Question.UNWETTED, 0.9), 0.001, false, Optional.empty());
    List<Joint> differing =
        IntStream.rangeClosed(1, 20)
            .mapToObj(pin -> without(joint(pin, sound(), Optional.of(sure))))
            .toList();
    assertThat(row(FAMILIAR, differing).notes()).containsExactly(new NoteOfRow.AlikeThroughout());
  }

  @Test
  void jointsThatAreUnfitAreNoWitnessesOfSameness() {
    List<Joint> blurred = row(20, 0.3, 20).stream().map(GraderTest::blurred).toList();
    assertThat(row(FAMILIAR, blurred).notes()).isEmpty();
    List<Joint> half = new ArrayList<>(blurred.subList(0, 12));
    half.addAll(row(8, 0.3, 8));
    assertThat(row(FAMILIAR, half).notes()).containsExactly(new NoteOfRow.AlikeThroughout());
  }

  private static Joint blurred(Joint joint) {
    return new Joint(
        joint.lead(),
        joint.measures(),
        joint.evidence(),
        Optional.of(new Doubt.Blurred(0.09)),
        joint.byMeasures(),
        joint.byReader());
  }

  @Test
  void theOpinionsOnAJointCanBeHadAsOne() {
    Chances measures = sound().with(Question.UNWETTED, 0.97);
    Grader grader = new Grader(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2, Opinions.BOTH);
    assertThat(grader.combined(plain(1, measures))).isEqualTo(measures);
  }

  @Test
  void aRowWhoseWettingIsInDoubtThroughoutLooksAlikeAndThatIsNoProof() {
    assertThat(row(FAMILIAR, row(10, 0.3, 20)).notes())
        .containsExactly(new NoteOfRow.AlikeThroughout());
    assertThat(row(FAMILIAR, row(9, 0.3, 20)).notes()).isEmpty();
  }

  @Test
  void aRowThatIsCalledOpenThroughoutNeedsNoSuchNote() {
    Grader.GradedRow open = row(FAMILIAR, row(20, 0.97, 20));
    assertThat(open.notes()).isEmpty();
    assertThat(open.joints()).allMatch(joint -> !joint.findings().isEmpty());
  }

  @Test
  void unjudgedLeadsAreProddedInTheOrderOfTheirSuspicion() {
    List<Joint> joints = new ArrayList<>(row(0, 0, 20));
    joints.set(2, plain(3, sound().with(Question.UNWETTED, 0.2)));
    joints.set(6, plain(7, sound().with(Question.UNWETTED, 0.6)));
    joints.set(11, plain(12, sound().with(Question.MISSING, 0.4)));
    joints.set(14, plain(15, sound().with(Question.UNWETTED, 0.97)));

    assertThat(row(FAMILIAR, joints).notes()).containsExactly(new NoteOfRow.ProdOrder("7, 12, 3"));
  }

  @Test
  void leadsThatAreAllAsSuspectHaveNoOrder() {
    assertThat(row(FAMILIAR, row(2, 0.3, 20)).notes()).isEmpty();
  }

  @Test
  void onAnUnfamiliarMakeEachJointSaysHowSuspectItIsAsAGuess() {
    Joint suspect = plain(1, sound().with(Question.UNWETTED, 0.4));
    Doubt.UnfamiliarPhoto doubt =
        (Doubt.UnfamiliarPhoto) row(0.9, List.of(suspect)).joints().get(0).doubts().get(0);
    assertThat(doubt.guess()).isCloseTo(1 - 0.999 * 0.6, within(1e-9));
  }

  @Test
  void onAnUnfamiliarMakeALeadIsMissingOnlyWhereOthersAreThere() {
    Chances bare = sound().with(Question.MISSING, 0.97);
    List<Joint> one = List.of(plain(1, bare), plain(2, sound()), plain(3, sound()));
    List<Joint> all = List.of(plain(1, bare), plain(2, bare), plain(3, bare));

    assertThat(row(0.9, one).joints().get(0).verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(row(FAMILIAR, all).joints().get(0).verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(row(0.9, all).joints())
        .allSatisfy(joint -> assertThat(joint.verdict()).isEqualTo(Verdict.UNJUDGED));
  }

  @Test
  void anUnfamiliarMakeOfPhotoIsSaidOnceForTheRow() {
    assertThat(row(0.9, row(0, 0, 20)).notes()).containsExactly(new NoteOfRow.Unfamiliar());
  }

  private static GradedJoint enrolled(double unfamiliar, Chances chances, BenchOpinion.Side side) {
    return enrolled(unfamiliar, plain(1, chances), side);
  }

  private static GradedJoint enrolled(double unfamiliar, Joint joint, BenchOpinion.Side side) {
    EnrolledRow bench =
        new EnrolledRow(
            "ring",
            Optional.empty(),
            List.of(new BenchOpinion(side, 0.2)),
            new NoteOfRow.AsEnrolled("ring", 1, 56, 2, 0.052));
    return new Grader(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2, Opinions.BOTH)
        .grade(
            RowSpec.plain(3, 0.5, OptionalDouble.empty(), OptionalDouble.empty()),
            List.of(joint),
            new Familiarity(unfamiliar, true),
            Optional.of(bench))
        .joints()
        .get(0);
  }

  @Test
  void onAnUnfamiliarMakeTheBenchCallsAndDoubts() {
    Finding open = find(enrolled(0.9, sound(), BenchOpinion.Side.UNSOLDERED), FindingKind.OPEN);
    assertThat(open.measured()).contains(new NoteOfRow.UnsolderedByBench("ring"));
    assertThat(enrolled(0.9, sound(), BenchOpinion.Side.BETWEEN).doubts())
        .containsExactly(new Doubt.BenchUnsure("ring", 0.2));
    assertThat(enrolled(0.9, sound(), BenchOpinion.Side.UNLIKE_SHOWN).doubts())
        .containsExactly(new Doubt.UnlikeShown("ring"));
  }

  @Test
  void whatTheBenchVouchesForStillNeedsALead() {
    Chances perhapsNone = sound().with(Question.MISSING, 0.1);
    GradedJoint joint = enrolled(FAMILIAR, perhapsNone, BenchOpinion.Side.SOLDERED);
    assertThat(joint.doubts()).contains(new Doubt.LeadNotSeen(0.1));
    assertThat(joint.verdict()).isEqualTo(Verdict.UNJUDGED);
  }

  @Test
  void whereGeneralOpinionsCountTheBenchSaysNothingAgainstThem() {
    Chances open = sound().with(Question.UNWETTED, 0.97);
    assertThat(enrolled(FAMILIAR, open, BenchOpinion.Side.SOLDERED).doubts())
        .containsExactly(new Doubt.BenchDiffers("ring", true));
    assertThat(enrolled(FAMILIAR, sound(), BenchOpinion.Side.UNSOLDERED).doubts())
        .containsExactly(new Doubt.BenchDiffers("ring", false));
  }

  @Test
  void aBenchSettlesADoubtAboutAnOpenButNotAboutAStarvedJoint() {
    Chances perhapsOpen = sound().with(Question.UNWETTED, 0.3);
    assertThat(enrolled(FAMILIAR, perhapsOpen, BenchOpinion.Side.SOLDERED).doubts()).isEmpty();
    Chances perhapsStarved = perhapsOpen.with(Question.OPEN, 0.2);
    assertThat(enrolled(FAMILIAR, perhapsStarved, BenchOpinion.Side.SOLDERED).doubts())
        .hasSize(1)
        .allSatisfy(doubt -> assertThat(doubt).isInstanceOf(Doubt.Possible.class));
  }

  @Test
  void onAnUnfamiliarMakeTheBenchMakesNoJointGoodForItWasShownNoStarvedOnes() {
    for (Chances general : List.of(sound(), sound().with(Question.UNWETTED, 0.97))) {
      GradedJoint joint = enrolled(0.9, general, BenchOpinion.Side.SOLDERED);
      assertThat(joint.verdict()).isEqualTo(Verdict.UNJUDGED);
      assertThat(joint.doubts()).containsExactly(new Doubt.StarvedNotShown("ring"));
    }
  }

  /** Of a chance of a lack of solder, what is not open is starved. */
  @Test
  void theBenchSettlesAnOpenButEachGeneralOpinionMustSeeThatTheJointIsNotStarved() {
    Chances open = sound().with(Question.UNWETTED, 0.1).with(Question.OPEN, 0.99);
    assertThat(enrolledTwo(sound(), open)).isEmpty();
    assertThat(enrolledTwo(sound(), open.with(Question.OPEN, 0.7)))
        .as("starved by 0.03 of the reader, which may say 0.02")
        .isNotEmpty();
    Chances lacking = sound().with(Question.UNWETTED, 0.45).with(Question.OPEN, 0.6);
    assertThat(enrolled(FAMILIAR, lacking, BenchOpinion.Side.SOLDERED).doubts())
        .as("open rather than starved, but starved by 0.18, where doubt starts at 0.15")
        .hasSize(1);
  }

  private static List<Doubt> enrolledTwo(Chances measures, Chances reader) {
    Joint one = plain(1, measures);
    Joint two =
        new Joint(
            one.lead(),
            one.measures(),
            List.of(),
            Optional.empty(),
            one.byMeasures(),
            Optional.of(new Reading(reader, 0.01, false, Optional.empty())));
    return enrolled(FAMILIAR, two, BenchOpinion.Side.SOLDERED).doubts();
  }

  @Test
  void theBenchOverridesNoOpinionThatSeesNoFilletNorTwoThatContradictEachOther() {
    Doubt differs = new Doubt.BenchDiffers("ring", true);
    Chances open = sound().with(Question.UNWETTED, 0.6);
    assertThat(enrolledTwo(open, sound())).contains(differs);
    assertThat(enrolledTwo(sound(), open)).contains(differs);
    Chances hardlyThere = open.with(Question.MISSING, 0.3);
    assertThat(enrolledTwo(hardlyThere, sound())).as("they contradict").contains(differs);
    assertThat(enrolledTwo(open, sound().with(Question.UNWETTED, 0.015)))
        .as("one sees no fillet, the other is not sure enough to contradict")
        .contains(differs);
    assertThat(enrolledTwo(sound(), sound())).doesNotContain(differs);
  }

  @Test
  void aPhotoThatIsNotAsEnrolledSaysWhyAndIsNotJudgedByTheBench() {
    EnrolledRow bench =
        new EnrolledRow(
            "ring",
            Optional.of("shade"),
            List.of(),
            new NoteOfRow.NotAsEnrolled("ring", 1, "shade"));
    Grader.GradedRow row =
        new Grader(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2, Opinions.BOTH)
            .grade(
                RowSpec.plain(3, 0.5, OptionalDouble.empty(), OptionalDouble.empty()),
                List.of(plain(1, sound())),
                new Familiarity(0.9, true),
                Optional.of(bench));
    assertThat(row.joints().get(0).doubts())
        .containsExactly(new Doubt.NotAsEnrolled("ring", "shade"));
    assertThat(row.notes())
        .containsExactly(
            new NoteOfRow.NotAsEnrolled("ring", 1, "shade"), new NoteOfRow.Unfamiliar());
  }

  @Test
  void aJointOfWhichNobodyWasAskedIsRefused() {
    Joint joint = joint(1, sound(), Optional.empty());
    Joint unasked =
        new Joint(
            joint.lead(),
            joint.measures(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    assertThatThrownBy(() -> graded(unasked)).hasMessageContaining("no opinion on pin 1");
  }

  private static Finding find(GradedJoint joint, FindingKind kind) {
    return joint.findings().stream().filter(f -> f.kind() == kind).findFirst().orElseThrow();
  }

  /** Overhangs 2 u beyond, 1.5 u inside and 6 u inside a limit of 0.1 mm, u 0.01 mm. */
  private static Grader.GradedRow nearTheLimit(String limits) {
    List<Joint> joints = new ArrayList<>();
    for (double overhangMm : new double[] {0.12, 0.085, 0.04}) {
      Joint plain = plain(joints.size() + 1, sound());
      Map<Measure, Quantity> sizes = new EnumMap<>(plain.measures());
      sizes.put(Measure.SIDE_OVERHANG, mm(overhangMm));
      joints.add(
          new Joint(
              plain.lead(),
              sizes,
              List.of(),
              Optional.empty(),
              plain.byMeasures(),
              Optional.empty()));
    }
    RowSpec spec = RowSpec.plain(3, 0.5, OptionalDouble.empty(), OptionalDouble.empty());
    return new Grader(AcceptanceSet.load(limits), 2, Opinions.BOTH)
        .grade(spec, joints, new Familiarity(FAMILIAR, true));
  }

  private static List<Verdict> verdicts(Grader.GradedRow row) {
    return row.joints().stream().map(GradedJoint::verdict).toList();
  }

  @Test
  void aWiderGuardBandLeavesMoreToTheBenchAndTheRowSaysSo() {
    Grader.GradedRow usual = nearTheLimit("ipc-a-610");
    Grader.GradedRow surer = nearTheLimit("ipc-a-610@99");

    assertThat(verdicts(usual))
        .containsExactly(Verdict.DEFECT, Verdict.UNJUDGED, Verdict.ACCEPTABLE);
    assertThat(verdicts(surer))
        .containsExactly(Verdict.UNJUDGED, Verdict.UNJUDGED, Verdict.ACCEPTABLE);
    assertThat(usual.notes()).noneMatch(NoteOfRow.GuardBand.class::isInstance);
    NoteOfRow.GuardBand said = guardBand(surer);
    assertThat(said.level()).isEqualTo(0.99);
    assertThat(said.bandU()).isCloseTo(2.3263, within(1e-4));
    assertThat(said.passedAtLimit()).isCloseTo(0.01, within(1e-12));
    assertThat(said.leftInside()).isCloseTo(0.2503, within(1e-4));
    assertThat(said.undecided()).isEqualTo(2);
    assertThat(said.usualLevel()).isEqualTo(0.95);
    assertThat(said.usuallyUndecided()).isEqualTo(1);
  }

  private static NoteOfRow.GuardBand guardBand(Grader.GradedRow row) {
    return row.notes().stream()
        .filter(NoteOfRow.GuardBand.class::isInstance)
        .map(NoteOfRow.GuardBand.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static Grader grader() {
    return new Grader(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2, Opinions.BOTH);
  }

  private static List<Joint> someSuspect() {
    List<Joint> joints = new ArrayList<>(row(0, 0, 12));
    joints.set(2, plain(3, sound().with(Question.UNWETTED, 0.2)));
    joints.set(6, plain(7, sound().with(Question.UNWETTED, 0.6)));
    joints.set(9, plain(10, sound().with(Question.UNWETTED, 0.97)));
    joints.set(10, plain(11, sound().with(Question.EXCESS, 0.97)));
    return joints;
  }

  @Test
  void leadsAreProddedThatAreUnjudgedThenThoseThatLookOpenAndNoOthers() {
    assertThat(grader().toProd(row(FAMILIAR, someSuspect()).joints())).containsExactly(7, 3, 10);
  }

  @Test
  void notesAreWrittenAnewForJointsThatWereSettledSince() {
    List<GradedJoint> before = row(FAMILIAR, someSuspect()).joints();
    List<GradedJoint> settled = before.stream().filter(joint -> joint.pin() != 7).toList();
    List<Note> notes = List.of(new NoteOfRow.ProdOrder("7, 3"), new NoteOfRow.Unfamiliar());
    assertThat(grader().notes(notes, before))
        .containsExactly(new NoteOfRow.ProdOrder("7, 3"), new NoteOfRow.Unfamiliar());
    assertThat(grader().notes(notes, settled)).containsExactly(new NoteOfRow.Unfamiliar());
  }

  @Test
  void aMakeIsUnfamiliarFromItsBorderOn() {
    double border = Decision.builtIn().unfamiliarFrom().value();
    assertThat(grader().unfamiliar(new Familiarity(border, true))).isTrue();
    assertThat(grader().unfamiliar(new Familiarity(border - 1e-9, true))).isFalse();
  }

  @Test
  void onAnUnknownMakeTheLeastLikeKnownJointsIsTheMostSuspect() {
    Joint alone = plain(1, sound().with(Question.UNWETTED, 0.2));
    Joint joint =
        new Joint(
            alone.lead(),
            alone.measures(),
            List.of(),
            Optional.empty(),
            alone.byMeasures(),
            Optional.of(
                new Reading(sound().with(Question.UNWETTED, 0.2), 0.4, false, Optional.empty())));
    GradedJoint known = row(FAMILIAR, List.of(joint)).joints().get(0);
    GradedJoint unknown = row(0.9, List.of(joint)).joints().get(0);
    assertThat(grader().suspicion(unknown)).isEqualTo(0.4);
    assertThat(grader().suspicion(known)).isEqualTo(grader().combined(joint).notHeld());
  }
}
