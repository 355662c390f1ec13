package leadlight.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import leadlight.data.Figure;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.FindingKind;
import leadlight.model.Measure;
import leadlight.model.Opinions;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.Question;
import leadlight.model.Unit;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Evidence;
import leadlight.model.joint.Familiarity;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.Remark;
import leadlight.model.row.Lead;
import leadlight.model.row.RowSpec;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The decision as a table: {@code grading-table.csv} says of a joint, sound in all that a line does
 * not name, what is said of it. Words of the columns: {@code measures} and {@code reader} name the
 * chance of a question by either opinion ({@code unwetted=0.6}, or a threshold by its name, just
 * above or below: {@code unwetted=seenFrom-}), {@code seen} other evidence ({@code residue=0.6})
 * and facts (see {@link #with}).
 */
class GradingTableTest {

  private static final int LEADS = 5;

  /** A chance that counts as nothing by any threshold. */
  private static final double NONE = 0.001;

  /** Without the least chance of no lead, the chance of a lack is that of no fillet alone. */
  private static final Map<Question, Double> USUAL =
      Map.of(Question.OPEN, 0.9, Question.MISSING, 0.0);

  private static final RowSpec SPEC =
      RowSpec.plain(LEADS, 0.5, OptionalDouble.empty(), OptionalDouble.empty());

  private final Map<Question, Double> measures = sound();
  private final Map<Question, Double> reader = sound();
  private final Map<Measure, Quantity> sizes = new EnumMap<>(Measure.class);
  private final List<Evidence> evidence = new ArrayList<>();
  private Optional<Doubt> unfit = Optional.empty();
  private double strangeness = NONE;
  private boolean unlike;
  private double unfamiliar = NONE;
  private int pin = 2;

  private static Map<Question, Double> sound() {
    Map<Question, Double> chances = new EnumMap<>(Question.class);
    for (Question question : Question.values()) {
      chances.put(question, USUAL.getOrDefault(question, NONE));
    }
    return chances;
  }

  @ParameterizedTest(name = "{0}: {2} | {3} | {4}")
  @CsvFileSource(
      resources = "grading-table.csv",
      numLinesToSkip = 1,
      emptyValue = "",
      maxCharsPerColumn = 500)
  void aJointIsJudgedAsTheTableSays(
      String claim,
      String setting,
      String byMeasures,
      String byReader,
      String seen,
      String verdict,
      String findings,
      String doubts) {
    sizes.put(Measure.LEAD_WIDTH, mm(0.2, 0.01));
    sizes.put(Measure.FOOT_LENGTH, mm(1.4, 0.02));
    sizes.put(Measure.LAND_AHEAD, mm(0.3, 0.02));
    sizes.put(Measure.SIDE_OVERHANG, mm(-0.05, 0.01));
    fill(measures, byMeasures);
    if (!"-".equals(byReader)) {
      fill(reader, byReader);
    }
    words(seen).forEach(this::with);

    GradedJoint graded = graded(setting, !"-".equals(byReader));

    assertThat(graded.verdict().id()).as(claim).isEqualTo(verdict);
    assertThat(codes(graded.findings().stream().map(f -> f.kind().id()).toList()))
        .as(claim)
        .isEqualTo(text(findings));
    assertThat(codes(graded.doubts().stream().map(Remark::code).toList()))
        .as(claim)
        .isEqualTo(text(doubts));
  }

  private GradedJoint graded(String setting, boolean read) {
    String[] parts = setting.split(" ", -1);
    Opinions opinions = parts.length > 1 ? Opinions.valueOf(parts[1]) : Opinions.BOTH;
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    return new Grader(limits, Integer.parseInt(parts[0]), opinions)
        .grade(SPEC, List.of(joint(read)), new Familiarity(unfamiliar, read))
        .joints()
        .get(0);
  }

  private Joint joint(boolean read) {
    PointPx at = new PointPx(pin, 0);
    Optional<Reading> reading =
        read
            ? Optional.of(new Reading(new Chances(reader), strangeness, unlike, Optional.empty()))
            : Optional.empty();
    return new Joint(
        new Lead(pin, at, at, at, at, 1, 0, 0),
        sizes,
        evidence,
        unfit,
        Optional.of(new Chances(measures)),
        reading);
  }

  private static void fill(Map<Question, Double> chances, String given) {
    for (String word : words(given)) {
      String[] pair = word.split("=", 2);
      chances.put(Question.valueOf(pair[0].toUpperCase(Locale.ROOT)), number(pair[1]));
    }
  }

  /** A number, or a threshold by its name with + (just above), - (just below) or = (at it). */
  private static double number(String text) {
    if (!Character.isLetter(text.charAt(0))) {
      return Double.parseDouble(text);
    }
    String name = text.substring(0, text.length() - 1);
    double step = Map.of('+', 1e-9, '-', -1e-9, '=', 0.0).get(text.charAt(text.length() - 1));
    return threshold(name) + step;
  }

  private static double threshold(String name) {
    for (RecordComponent component : Decision.class.getRecordComponents()) {
      if (component.getName().equals(name)) {
        try {
          return ((Figure) component.getAccessor().invoke(Decision.builtIn())).value();
        } catch (ReflectiveOperationException e) {
          throw new IllegalStateException(e);
        }
      }
    }
    throw new IllegalArgumentException("no threshold " + name);
  }

  /** A fact beside the chances. */
  private void with(String fact) {
    String[] pair = fact.split("=", 2);
    double value = pair.length > 1 ? number(pair[1]) : 0;
    switch (pair[0]) {
      case "strangeness" -> strangeness = value;
      case "unlike" -> unlike = true;
      case "unfamiliar" -> unfamiliar = value;
      case "ahead-pitch" -> sizes.put(Measure.LAND_AHEAD, mm(value * SPEC.pitchMm(), 0.02));
      case "no-ahead" -> sizes.remove(Measure.LAND_AHEAD);
      case "overhang-mm" -> sizes.put(Measure.SIDE_OVERHANG, mm(value, 0.01));
      case "no-overhang" -> sizes.remove(Measure.SIDE_OVERHANG);
      case "no-width" -> sizes.remove(Measure.LEAD_WIDTH);
      case "pin" -> pin = (int) value;
      case "blurred" -> unfit = Optional.of(new Doubt.Blurred(0.09));
      case "metal-across" ->
          evidence.add(
              new Evidence(
                  FindingKind.BRIDGE,
                  value,
                  pin + 1,
                  Optional.of(new NoteOfJoint.MetalAcross(1)),
                  List.of()));
      case "covered" -> unfit = Optional.of(new Doubt.Covered());
      default ->
          evidence.add(
              new Evidence(
                  FindingKind.valueOf(pair[0].toUpperCase(Locale.ROOT).replace('-', '_')),
                  value,
                  0,
                  Optional.empty(),
                  List.of()));
    }
  }

  private static Quantity mm(double value, double u) {
    return new Quantity(value, u, Unit.MM);
  }

  private static List<String> words(String text) {
    return text == null || text.isBlank() || text.equals("-")
        ? List.of()
        : List.of(text.trim().split(" +"));
  }

  private static String codes(List<String> codes) {
    return codes.stream().collect(Collectors.joining(" "));
  }

  private static String text(String cell) {
    return cell == null ? "" : cell.trim();
  }
}
