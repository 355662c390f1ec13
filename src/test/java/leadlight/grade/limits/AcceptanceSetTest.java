package leadlight.grade.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import leadlight.data.DataFile;
import leadlight.data.Provenance;
import leadlight.model.FindingKind;
import leadlight.model.Unit;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AcceptanceSetTest {

  private static final AcceptanceSet IPC = AcceptanceSet.load("ipc-a-610");

  /** The tail of a 19-way receptacle: W 0.20, T 0.10, L 1.40 mm. */
  private static final JointGeometry TAIL = JointGeometry.of(0.20, 1.40);

  @TempDir Path folder;

  /** IPC-A-610 Table 8-5, worked for W 0.20, L 1.40: 3W = 0.60 is below 75 % L = 1.05. */
  @ParameterizedTest
  @CsvSource({
    "SIDE_OVERHANG,     UPPER, 0.10, 0.10, 0.05",
    "END_JOINT_WIDTH,   LOWER, 0.10, 0.10, 0.15",
    "SIDE_JOINT_LENGTH, LOWER, 0.20, 1.05, 1.05",
    "ELECTRICAL_CLEARANCE, LOWER, 0.13, 0.13, 0.13"
  })
  void theWorkedExampleComesOut(
      Feature feature, Bound bound, double one, double two, double three) {
    double[] expected = {one, two, three};
    for (int productClass = 1; productClass <= 3; productClass++) {
      Limit limit = IPC.limit(feature, productClass, TAIL).orElseThrow();
      assertThat(limit.value()).isCloseTo(expected[productClass - 1], within(1e-12));
      assertThat(limit.bound()).isEqualTo(bound);
      assertThat(limit.unit()).isEqualTo(Unit.MM);
      assertThat(limit.basis().source()).contains("IPC");
    }
  }

  /** IPC-A-610 Table 8-5, A and D: the absolute 0.5 mm rules for wide leads. */
  @Test
  void wideLeadsMeetTheAbsoluteLimit() {
    JointGeometry wide = JointGeometry.of(1.2, 5);

    assertThat(value(Feature.SIDE_OVERHANG, 2, wide)).hasValue(0.5);
    assertThat(value(Feature.SIDE_OVERHANG, 3, wide).getAsDouble()).isCloseTo(0.3, within(1e-12));
    assertThat(value(Feature.SIDE_JOINT_LENGTH, 1, wide)).hasValue(0.5);
  }

  /** IPC-A-610 Table 8-5, D: a foot shorter than 3 W must be wetted all along. */
  @Test
  void aShortFootMustBeWettedAllAlong() {
    assertThat(value(Feature.SIDE_JOINT_LENGTH, 2, JointGeometry.of(0.2, 0.59))).hasValue(0.59);
    assertThat(value(Feature.SIDE_JOINT_LENGTH, 2, JointGeometry.of(0.25, 0.8))).hasValue(0.75);
  }

  /** IPC-A-610E, F: G + T up to a lead thickness of 0.38 mm, G + 50 % T above; class 3 G + T. */
  @Test
  void theHeelFilletFollowsTheLeadsThickness() {
    assertThat(heel(2, 0.38)).isCloseTo(0.40, within(1e-12));
    assertThat(heel(2, 0.40)).isCloseTo(0.22, within(1e-12));
    assertThat(heel(3, 0.40)).isCloseTo(0.42, within(1e-12));
    assertThat(value(Feature.HEEL_FILLET_HEIGHT, 1, thick(0.1))).isEmpty();
  }

  /** IPC-A-610 Table 7-4. */
  @Test
  void legsInPlatedHolesHaveLimitsOfTheirOwn() {
    assertThat(value(Feature.LEG_VERTICAL_FILL, 1, TAIL)).isEmpty();
    assertThat(value(Feature.LEG_VERTICAL_FILL, 2, TAIL)).hasValue(0.75);
    assertThat(value(Feature.LEG_DESTINATION_WETTING, 3, TAIL)).hasValue(270);
    assertThat(value(Feature.LEG_SOURCE_WETTING, 3, TAIL)).hasValue(330);
    assertThat(IPC.limit(Feature.LEG_SOURCE_WETTING, 3, TAIL).orElseThrow().unit())
        .isEqualTo(Unit.DEGREE);
  }

  @Test
  void aLimitThatNeedsAnUnknownLengthIsNotGiven() {
    OptionalDouble none = OptionalDouble.empty();
    JointGeometry unknown = new JointGeometry(none, none, none, none, none);

    assertThat(value(Feature.SIDE_OVERHANG, 2, unknown)).isEmpty();
    assertThat(value(Feature.SIDE_JOINT_LENGTH, 2, unknown)).isEmpty();
    assertThat(value(Feature.ELECTRICAL_CLEARANCE, 2, unknown)).hasValue(0.13);
  }

  /** NASA-STD-8739.2: A at most 25 % W, C at least 75 % W, planarity at most 0.26 mm. */
  @Test
  void theNasaSetIsOneForEveryClass() {
    AcceptanceSet nasa = AcceptanceSet.load("nasa-8739-2");
    for (int productClass = 1; productClass <= 3; productClass++) {
      assertThat(nasa.limit(Feature.SIDE_OVERHANG, productClass, TAIL).orElseThrow().value())
          .isCloseTo(0.05, within(1e-12));
      assertThat(nasa.limit(Feature.END_JOINT_WIDTH, productClass, TAIL).orElseThrow().value())
          .isCloseTo(0.15, within(1e-12));
      assertThat(nasa.limit(Feature.PLANARITY, productClass, TAIL).orElseThrow().value())
          .isEqualTo(0.26);
    }
  }

  /** IPC-A-610: bridging is a defect in every class (read); excess and voids are from memory. */
  @Test
  void findingsMeanWhatTheTableSays() {
    assertThat(verdicts(FindingKind.BRIDGE))
        .containsExactly(Verdict.DEFECT, Verdict.DEFECT, Verdict.DEFECT);
    assertThat(verdicts(FindingKind.EXCESS))
        .containsExactly(Verdict.ACCEPTABLE, Verdict.PROCESS_INDICATOR, Verdict.PROCESS_INDICATOR);
    assertThat(IPC.rule(FindingKind.BRIDGE, 2).basis().provenance())
        .isEqualTo(Provenance.PUBLISHED);
    assertThat(IPC.rule(FindingKind.VOID, 2).basis().words()).endsWith("(from memory)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"ipc-a-610", "nasa-8739-2"})
  void everyBuiltInSetKnowsItselfAndIsCautious(String id) {
    AcceptanceSet set = AcceptanceSet.load(id);

    assertThat(set.id()).isEqualTo(id);
    assertThat(AcceptanceSet.builtInIds()).contains(id);
    assertThat(set.notes()).anyMatch(note -> note.contains("from memory"));
    assertThat(set.decisionLevel()).isEqualTo(0.95);
  }

  @Test
  void aUsersOwnFileTakesTheSetsPlace() throws IOException {
    String own =
        DataFile.builtIn("acceptance/ipc-a-610.json")
            .text()
            .replace("\"id\": \"ipc-a-610\"", "\"id\": \"ours\"")
            .replace("{ \"mm\": 0.13 }", "{\"mm\": 0.2}")
            .replace("{\"mm\": 0.13}", "{\"mm\": 0.2}");
    AcceptanceSet set = AcceptanceSet.load(save(own).toString());

    assertThat(set.id()).isEqualTo("ours");
    assertThat(set.limit(Feature.ELECTRICAL_CLEARANCE, 1, TAIL).orElseThrow().value())
        .isEqualTo(0.2);
  }

  @Test
  void aFileThatDoesNotFitIsRefusedInOneLine() throws IOException {
    assertRefused("\"upper\"", "\"highest\"", "one of upper, lower");
    assertRefused("\"share\": 0.5", "\"share\": -0.5", "share must lie in [0.0, 100.0]");
    assertRefused("\"lesser_of\"", "\"least_of\"", "limits[0].by_class.1");
    assertRefused("\"finding\": \"bridge\"", "\"finding\": \"open\"", "open twice");
    assertRefused("\"feature\": \"side-overhang\"", "\"feature\": \"planarity\"", null);
    assertRefused("\"degrees\": 180", "\"mm\": 180", "is limited in DEGREE");
    assertRefused("leadlight/acceptance/1", "leadlight/acceptance/9", "schema must be");
    assertRefused("\"level\": 0.95", "\"level\": 95", "level must lie between 0.5 and 1");
    assertRefused("\"1\": {\"lesser_of\"", "\"4\": {\"lesser_of\"", "classes 1, 2 and 3");
  }

  @Test
  void aFeatureThatIsLimitedTwiceIsRefused() throws IOException {
    String text = DataFile.builtIn("acceptance/ipc-a-610.json").text();
    Path file =
        save(text.replace("\"feature\": \"end-joint-width\"", "\"feature\": \"side-overhang\""));
    assertThatThrownBy(() -> AcceptanceSet.load(file.toString()))
        .hasMessageContaining("limits has SIDE_OVERHANG twice");
  }

  @Test
  void aRuleForAClassThatThereIsNotIsRefused() throws IOException {
    String text = DataFile.builtIn("acceptance/ipc-a-610.json").text();
    int rules = text.indexOf("\"rules\"");
    Path file =
        save(text.substring(0, rules) + text.substring(rules).replaceFirst("\"1\":", "\"7\":"));
    assertThatThrownBy(() -> AcceptanceSet.load(file.toString()))
        .hasMessageContaining("classes 1, 2 and 3");
  }

  @ParameterizedTest
  @CsvSource({"360, true", "360.5, false", "0, true", "-1, false"})
  void anAngleLiesWithinOneTurn(double degrees, boolean taken) {
    assertTaken(() -> new LimitRule.Angle(degrees), taken);
  }

  @ParameterizedTest
  @CsvSource({"1, true", "1.01, false", "0, true", "-0.01, false"})
  void aPartIsNoMoreThanTheWhole(double part, boolean taken) {
    assertTaken(() -> new LimitRule.Part(part), taken);
  }

  @ParameterizedTest
  @CsvSource({"0, false", "0.001, true", "999.9, true", "1000, false"})
  void aLengthOfAJointIsAboveZeroAndBelowAMetre(double mm, boolean taken) {
    assertTaken(() -> JointGeometry.of(mm, 1), taken);
  }

  @ParameterizedTest
  @CsvSource({"0.5, false", "0.51, true", "0.99, true", "1, false"})
  void aDecisionIsSurerThanAGuessAndNeverCertain(double level, boolean taken) {
    assertTaken(() -> new AcceptanceFile.Decision(level, IPC.decisionBasis()), taken);
  }

  private static void assertTaken(ThrowingCallable making, boolean taken) {
    if (taken) {
      assertThatCode(making).doesNotThrowAnyException();
    } else {
      assertThatThrownBy(making).isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void aSetSaysWhatItIsAndWhereItsDecisionComesFrom() {
    assertThat(IPC.name()).startsWith("IPC-A-610");
    assertThat(IPC.sha256()).isEqualTo(DataFile.builtIn("acceptance/ipc-a-610.json").sha256());
    assertThat(IPC.decisionBasis().source()).isEqualTo("JCGM 106:2012");
  }

  @Test
  void anUnknownSetIsAnsweredWithTheKnownOnes() {
    assertThatThrownBy(() -> AcceptanceSet.load("ipc"))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("ipc-a-610, nasa-8739-2");
  }

  private void assertRefused(String old, String replacement, String message) throws IOException {
    String text = DataFile.builtIn("acceptance/ipc-a-610.json").text();
    assertThat(text).contains(old);
    Path file = save(text.replaceFirst(Pattern.quote(old), replacement));
    if (message == null) {
      assertThat(AcceptanceSet.load(file.toString()).limit(Feature.SIDE_OVERHANG, 2, TAIL))
          .isEmpty();
      return;
    }
    assertThatThrownBy(() -> AcceptanceSet.load(file.toString()))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith(file + ", line ")
        .hasMessageContaining(message)
        .hasMessageNotContaining("\n");
  }

  private Path save(String text) throws IOException {
    return Files.writeString(folder.resolve("own.json"), text);
  }

  private static OptionalDouble value(Feature feature, int productClass, JointGeometry joint) {
    return IPC.limit(feature, productClass, joint).stream().mapToDouble(Limit::value).findFirst();
  }

  private static double heel(int productClass, double thicknessMm) {
    return value(Feature.HEEL_FILLET_HEIGHT, productClass, thick(thicknessMm)).orElseThrow();
  }

  private static JointGeometry thick(double thicknessMm) {
    return new JointGeometry(
        OptionalDouble.of(0.2),
        OptionalDouble.of(1.4),
        OptionalDouble.of(thicknessMm),
        OptionalDouble.of(0.02),
        OptionalDouble.empty());
  }

  private static List<Verdict> verdicts(FindingKind finding) {
    return Arrays.asList(1, 2, 3).stream().map(c -> IPC.rule(finding, c).verdict()).toList();
  }
}
