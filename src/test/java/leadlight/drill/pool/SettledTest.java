package leadlight.drill.pool;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.drill.sitting.PracticeSets;
import leadlight.model.FindingKind;
import leadlight.model.PointPx;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.remark.Doubt;
import leadlight.model.row.Lead;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.Overrule;
import leadlight.record.said.RecordedJoint;
import leadlight.text.Messages;
import leadlight.trial.truth.TrueClass;
import org.junit.jupiter.api.Test;

class SettledTest {

  private static RecordedJoint joint(Verdict tool, List<Overrule> people, List<BenchResult> bench) {
    PointPx place = new PointPx(0, 0);
    Lead lead = new Lead(1, place, place, place, place, 1, 0, 0);
    List<Finding> findings =
        tool == Verdict.DEFECT
            ? List.of(
                new Finding(
                    FindingKind.EXCESS,
                    List.of(1),
                    tool,
                    0.9,
                    OptionalDouble.empty(),
                    Optional.empty(),
                    List.of(),
                    "",
                    ""))
            : List.of();
    List<Doubt> why = tool == Verdict.UNJUDGED ? List.of(new Doubt.Glare(0.5)) : List.of();
    return new RecordedJoint(
        new GradedJoint(
            new Joint(lead, Map.of(), List.of(), Optional.empty()),
            tool,
            findings,
            List.of(),
            why,
            List.of()),
        people,
        bench);
  }

  private static Overrule says(String person, Verdict verdict) {
    Optional<FindingKind> finding =
        verdict == Verdict.DEFECT ? Optional.of(FindingKind.OPEN) : Optional.empty();
    return new Overrule(verdict, finding, "seen", person, PracticeSets.NOON);
  }

  private static BenchResult bench(BenchTest test, String result) {
    return new BenchResult(test, result, OptionalInt.empty(), "Ada", PracticeSets.NOON);
  }

  private static Optional<TrueClass> truth(
      Verdict tool, List<Overrule> people, List<BenchResult> bench) {
    return Settled.of(joint(tool, people, bench), Messages.of("en")).map(Known::verdict);
  }

  @Test
  void theBenchSettlesWhatItTests() {
    List<BenchResult> moves = List.of(bench(BenchTest.PROD, "moves"));
    Known open =
        Settled.of(joint(Verdict.ACCEPTABLE, List.of(), moves), Messages.of("en")).orElseThrow();
    assertThat(open.verdict()).isEqualTo(TrueClass.DEFECT);
    assertThat(open.findings()).containsExactly(FindingKind.OPEN);
    assertThat(open.how()).isEqualTo("at the bench, prodded, it moves");

    List<BenchResult> shorted = List.of(bench(BenchTest.METER, "short"));
    assertThat(
            Settled.of(joint(Verdict.UNJUDGED, List.of(), shorted), Messages.of("en"))
                .orElseThrow()
                .findings())
        .containsExactly(FindingKind.BRIDGE);
    assertThat(truth(Verdict.UNJUDGED, List.of(), List.of(bench(BenchTest.PROD, "firm"))))
        .contains(TrueClass.ACCEPTABLE);
  }

  @Test
  void theBenchDoesNotSettleWhatItCannotFeel() {
    assertThat(truth(Verdict.DEFECT, List.of(), List.of(bench(BenchTest.PROD, "firm")))).isEmpty();
    assertThat(
            truth(
                Verdict.ACCEPTABLE,
                List.of(says("Ada", Verdict.DEFECT)),
                List.of(bench(BenchTest.METER, "ok"))))
        .isEmpty();
  }

  @Test
  void testsThatContradictEachOtherSettleNothingButALaterResultOfTheSameTestCounts() {
    assertThat(
            truth(
                Verdict.ACCEPTABLE,
                List.of(),
                List.of(bench(BenchTest.PROD, "moves"), bench(BenchTest.METER, "ok"))))
        .isEmpty();
    assertThat(
            truth(
                Verdict.ACCEPTABLE,
                List.of(),
                List.of(bench(BenchTest.PROD, "moves"), bench(BenchTest.PROD, "firm"))))
        .contains(TrueClass.ACCEPTABLE);
  }

  @Test
  void twoMustAgreeAndNobodyDiffer() {
    List<Overrule> one = List.of(says("Ada", Verdict.DEFECT));
    assertThat(truth(Verdict.ACCEPTABLE, one, List.of())).as("against the tool").isEmpty();
    assertThat(truth(Verdict.DEFECT, one, List.of())).contains(TrueClass.DEFECT);
    List<Overrule> two = List.of(says("Ada", Verdict.DEFECT), says("Grace", Verdict.DEFECT));
    assertThat(truth(Verdict.ACCEPTABLE, two, List.of())).contains(TrueClass.DEFECT);
    List<Overrule> split = List.of(says("Ada", Verdict.DEFECT), says("Grace", Verdict.ACCEPTABLE));
    assertThat(truth(Verdict.DEFECT, split, List.of())).isEmpty();
    assertThat(truth(Verdict.DEFECT, List.of(), List.of())).as("the tool alone").isEmpty();
  }

  @Test
  void onePersonTwiceIsOnePerson() {
    List<Overrule> again = List.of(says("Ada", Verdict.ACCEPTABLE), says("Ada", Verdict.DEFECT));
    assertThat(truth(Verdict.ACCEPTABLE, again, List.of())).isEmpty();
  }
}
