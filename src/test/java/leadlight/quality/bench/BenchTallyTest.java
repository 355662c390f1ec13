package leadlight.quality.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.quality.Page;
import leadlight.quality.agreement.Pages;
import leadlight.quality.bench.Settled.Bench;
import leadlight.statistics.Rate;
import org.junit.jupiter.api.Test;

class BenchTallyTest {

  private static Settled joint(
      String board, Verdict tool, List<FindingKind> findings, Optional<Bench> bench) {
    return new Settled(board, YearMonth.of(2026, 11), tool, findings, bench, Optional.empty());
  }

  private static Settled passed(Bench bench) {
    return joint("a", Verdict.ACCEPTABLE, List.of(), Optional.ofNullable(bench));
  }

  private static Settled called(FindingKind kind, Bench bench) {
    return joint("b", Verdict.DEFECT, List.of(kind), Optional.of(bench));
  }

  @Test
  void whatTheBenchSettlesIsCountedAndNothingElse() {
    BenchTally tally =
        BenchTally.of(
            List.of(
                passed(null),
                passed(Bench.FIRM),
                passed(Bench.OPEN),
                called(FindingKind.OPEN, Bench.OPEN),
                called(FindingKind.OPEN, Bench.FIRM),
                called(FindingKind.BRIDGE, Bench.FIRM),
                called(FindingKind.BRIDGE, Bench.CONDUCTS),
                joint("c", Verdict.UNJUDGED, List.of(), Optional.of(Bench.OPEN))));

    assertThat(tally.joints()).isEqualTo(8);
    assertThat(tally.tried().plain()).as("the unjudged is no verdict").isEqualTo(new Rate(6, 7));
    assertThat(tally.passedTried().plain()).isEqualTo(new Rate(2, 3));
    assertThat(tally.badOfPassed().plain()).isEqualTo(new Rate(1, 2));
    assertThat(tally.badOfCalled().plain())
        .as("a firm lead says nothing of a bridge")
        .isEqualTo(new Rate(1, 3));
    assertThat(tally.missed().plain()).isEqualTo(new Rate(1, 2));
    assertThat(tally.byFinding().get(FindingKind.OPEN).plain()).isEqualTo(new Rate(1, 2));
    assertThat(tally.byMonth().get("2026-11").plain()).isEqualTo(new Rate(3, 6));
  }

  @Test
  void aPersonWhoSaysOtherwiseOverrules() {
    Settled good =
        new Settled(
            "a",
            YearMonth.of(2026, 11),
            Verdict.DEFECT,
            List.of(FindingKind.OPEN),
            Optional.empty(),
            Optional.of(Verdict.ACCEPTABLE));
    assertThat(BenchTally.of(List.of(good, passed(null))).overruled().plain())
        .isEqualTo(new Rate(1, 2));
  }

  private static String verdict(List<Settled> joints) {
    return Trust.builtIn().verdict(BenchTally.of(joints));
  }

  @Test
  void trustEndsWhenTheBenchProvesIt() {
    assertThat(verdict(List.of(passed(null)))).startsWith("Not known yet: 0 of 0 joints");
    List<Settled> missing = new ArrayList<>(Collections.nCopies(20, passed(Bench.OPEN)));
    assertThat(verdict(missing)).startsWith("Do not trust a passed joint");
    List<Settled> crying =
        new ArrayList<>(Collections.nCopies(20, called(FindingKind.OPEN, Bench.FIRM)));
    assertThat(verdict(crying)).startsWith("Do not heat a joint");
  }

  /**
   * Clopper and Pearson: 1 of 1 is 2.5 % or more, 2 of 2 15.8 %; Wilson's would say 20.7 and 34.2.
   */
  @Test
  void oneJointThatPassedWronglyProvesNoRate() {
    assertThat(verdict(List.of(passed(Bench.OPEN))))
        .startsWith("Not known yet: 1 of 1 joints that the bench found bad had passed");
    assertThat(verdict(each(2, Verdict.ACCEPTABLE, FindingKind.OPEN, Bench.OPEN)))
        .startsWith("Do not trust a passed joint")
        .contains("at least 15.8 % had passed");
  }

  private static List<Settled> each(int count, Verdict tool, FindingKind kind, Bench bench) {
    List<FindingKind> findings = tool == Verdict.DEFECT ? List.of(kind) : List.of();
    return IntStream.range(0, count)
        .mapToObj(i -> joint(tool + "-" + kind + "-" + i, tool, findings, Optional.of(bench)))
        .toList();
  }

  private static List<Settled> good(int count) {
    return each(count, Verdict.ACCEPTABLE, FindingKind.OPEN, Bench.FIRM);
  }

  private static List<Settled> right(int count) {
    return each(count, Verdict.DEFECT, FindingKind.OPEN, Bench.OPEN);
  }

  private static List<Settled> all(List<Settled> one, List<Settled> other) {
    List<Settled> all = new ArrayList<>(one);
    all.addAll(other);
    return all;
  }

  /** 0.95 to the power of 59 is below 0.05: by hand. */
  @Test
  void nothingSpeaksForAToolWhosePassedJointsNobodyTried() {
    assertThat(verdict(right(200))).startsWith("Not known yet: 0 passed joints were tried");
    assertThat(verdict(all(right(200), good(58)))).startsWith("Not known yet: 58 passed joints");
    assertThat(verdict(all(right(200), good(59))))
        .startsWith("Nothing here speaks against the tool");
  }

  @Test
  void nothingSpeaksForAToolWhoseCallsMayBeFalse() {
    List<Settled> shorts = each(200, Verdict.UNJUDGED, FindingKind.BRIDGE, Bench.SHORT);
    assertThat(verdict(all(shorts, good(200))))
        .startsWith("Not known yet: 0 of 0 joints that the bench found bad had passed");
    List<Settled> unsure =
        all(right(170), each(15, Verdict.DEFECT, FindingKind.BRIDGE, Bench.CONDUCTS));
    assertThat(verdict(all(unsure, good(59))))
        .as("15 of 185, up to 13 %")
        .startsWith("Not known yet: 185 calls were settled");
  }

  /**
   * By hand, as Begg and Greenes 1983: of ten passed joints two were tried and one was bad, so five
   * are; the one that was called is bad: 5 of 6.
   */
  @Test
  void faultsAmongUntriedJointsAreReckonedFromTriedOnesOfTheirVerdict() {
    List<Settled> joints = new ArrayList<>(Collections.nCopies(8, passed(null)));
    joints.add(passed(Bench.FIRM));
    joints.add(passed(Bench.OPEN));
    joints.add(called(FindingKind.OPEN, Bench.OPEN));

    assertThat(Pages.words(BenchPages.page(BenchTally.of(joints))))
        .contains("83.3 % of all bad joints passed");
  }

  @Test
  void thePageSaysWhatIsMissing() {
    Page page =
        BenchPages.page(
            BenchTally.of(
                List.of(passed(null), passed(Bench.FIRM), called(FindingKind.OPEN, Bench.OPEN))));
    String words =
        page.blocks().stream()
            .filter(Page.Text.class::isInstance)
            .map(block -> ((Page.Text) block).text())
            .reduce("", String::concat);
    assertThat(words)
        .contains("1 passed joint was never tried")
        .contains("Begg and Greenes")
        .contains("0.0 % of all bad joints passed");
  }
}
