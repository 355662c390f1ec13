package leadlight.quality.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import leadlight.model.UserError;
import leadlight.quality.Outside;
import leadlight.quality.Page;
import leadlight.quality.Words;
import leadlight.quality.agreement.Pages;
import leadlight.quality.gauge.variance.GaugeData;
import leadlight.quality.gauge.variance.GaugeRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page of AIAG's gauge study (MSA, 4th edition): 10 parts, 3 operators, 3 trials. */
class GaugePagesTest {

  private static final Path AIAG_FILE = Outside.FOLDER.resolve("aiag-gauge.csv");
  private static final GaugeInput AIAG = GaugeInput.read(AIAG_FILE);

  @TempDir private Path folder;

  private static Page page(GaugeInput input, ClassLimit... limits) {
    return GaugePages.page(input, List.of(limits), Set.of("unjudged"), "lamp");
  }

  private GaugeInput read(String... lines) throws IOException {
    Path file = folder.resolve("gauge.csv");
    Files.write(file, List.of(lines));
    return GaugeInput.read(file);
  }

  /** Published by AIAG: EV .20186, AV .22967, GRR .30577, PV 1.10460, 26.68 %, 5 categories. */
  @Test
  void theMethodOfAveragesAndRanges() {
    assertThat(Pages.line(page(AIAG), "method", "average and range"))
        .containsExactly(
            "average and range", "0.2019", "0.2297", "0.3058", "1.105", "1.146", "26.7 %", "5");
  }

  /** Published by AIAG: 27.9 % by analysis of variance, which is marginal (10 to 30 %). */
  @Test
  void theSummaryIsByAnalysisOfVariance() {
    List<String> line = Pages.line(page(AIAG), "measure", "reading");
    assertThat(line.get(5)).isEqualTo("27.9 %");
    assertThat(line.get(7)).isEqualTo("marginal");
    assertThat(Pages.words(page(AIAG))).as("interaction p .974").contains("pooled");
  }

  @ParameterizedTest
  @CsvSource({"0,good", "0.10,good", "0.101,marginal", "0.30,marginal", "0.301,poor"})
  void aGaugeTakesTenPerCentWhenGoodAndThirtyWhenMarginal(double share, String verdict) {
    assertThat(GaugeRules.builtIn().verdict(share)).isEqualTo(verdict);
  }

  /** JCGM 106: 1.645 standard uncertainties; the gauge's is .306 (analysis of variance .3024). */
  @Test
  void partsWithinTheGuardBandOfALimitCannotBeJudged() {
    ClassLimit limit = new ClassLimit("reading", 2, 0.2, "a drawing");
    Page page = page(AIAG, limit);

    assertThat(Pages.strong(page)).contains("class 2");
    // Means of parts by AIAG: 1 .169, 2 -.851, 3 1.099, 4 .367, 5 -1.064, 6 -.186, 7 .454, 8 -.342.
    assertThat(Pages.words(page)).contains("parts inside it: 1, 4, 6, 7.");
  }

  @Test
  void ofALimitOfAnotherMeasureNothingIsSaid() {
    Page page = page(AIAG, new ClassLimit("width", 2, 0.2, "a drawing"));
    assertThat(Pages.strong(page)).contains("No class limit");
  }

  @Test
  void verdictsThatChangeAreCountedByPartAndByLamp() throws IOException {
    GaugeInput input =
        read(
            "part,operator,trial,measure,value,verdict",
            "p1,ring,1,x_mm,1.0,defect",
            "p1,ring,2,x_mm,1.1,defect",
            "p1,dome,1,x_mm,1.2,acceptable",
            "p1,dome,2,x_mm,1.0,defect",
            "p2,ring,1,x_mm,2.0,acceptable",
            "p2,ring,2,x_mm,2.1,acceptable",
            "p2,dome,1,x_mm,2.2,acceptable",
            "p2,dome,2,x_mm,2.0,acceptable",
            "p3,ring,1,x_mm,3.0,acceptable",
            "p3,ring,2,x_mm,3.1,unjudged",
            "p3,dome,1,x_mm,3.2,acceptable",
            "p3,dome,2,x_mm,3.0,acceptable");
    Page page = page(input);

    assertThat(Pages.grid(page, "part"))
        .containsExactly(List.of("p1", "1 of 4", "0 of 4"), List.of("p3", "1 of 4", "1 of 4"));
    assertThat(Pages.line(page, "lamp", "ring").get(1)).startsWith("1 of 6");
    assertThat(Pages.line(page, "lamp", "dome").get(1)).startsWith("1 of 6");
    assertThat(Pages.strong(page)).contains("2 of 12").contains("2 of 3").contains("p1, p3");
    assertThat(Pages.headings(page)).contains("Verdicts that change", "x_mm");
  }

  @Test
  void verdictsThatNeverChangeAreSaidToBeSo() throws IOException {
    Page page =
        page(
            read(
                "part,operator,trial,measure,value,verdict",
                "p1,a,1,x,1,good",
                "p1,a,2,x,1,good",
                "p1,b,1,x,1,good",
                "p1,b,2,x,1,good",
                "p2,a,1,x,1,good",
                "p2,a,2,x,1,good",
                "p2,b,1,x,1,good",
                "p2,b,2,x,1,good"));
    assertThat(Pages.words(page)).contains("one verdict throughout").contains("nothing varies");
    assertThat(Pages.strong(page)).contains("No part was found");
    assertThat(Pages.line(page, "measure", "x")).contains("nothing varies");
  }

  @Test
  void missingReadingsLeaveNoPartOut() throws IOException {
    List<String> lines = new ArrayList<>(Files.readAllLines(AIAG_FILE));
    lines.remove(lines.size() - 1);
    Page page = page(read(lines.toArray(String[]::new)));
    assertThat(Pages.words(page)).contains("REML) from all 89 readings of 10 parts");
    assertThat(Pages.line(page, "method", "REML").get(6)).startsWith("27.");
    assertThat(Pages.words(page(AIAG))).doesNotContain("REML");
  }

  /** AIAG MSA: three sigma of one limit, six of a tolerance; the gauge's sigma is .3024. */
  @Test
  void aLimitIsHeldAgainstThreeSigmaAndAToleranceAgainstSix() {
    ClassLimit one = new ClassLimit("reading", 3, 4, "a drawing");
    ClassLimit two = new ClassLimit("reading", 0, OptionalDouble.of(-4), 4, "a drawing");

    assertThat(one.share(0.3024)).isCloseTo(3 * 0.3024 / 4, within(1e-12));
    assertThat(two.share(0.3024)).isCloseTo(6 * 0.3024 / 8, within(1e-12));
    assertThat(two.distance(-3.5)).isCloseTo(0.5, within(1e-12));
    assertThat(Pages.strong(page(AIAG, one, two)))
        .contains("good enough with the guard band kept for class 3", "3 sigma take 22.7 % of it")
        .contains("for your tolerance", "6 sigma take 22.7 % of the tolerance", "at worst");
  }

  @Test
  void aGuardBandsConsequencesAreNumbers() {
    Page page = page(AIAG, new ClassLimit("reading", 2, 1.5, "a drawing"));
    List<List<String>> risks = Pages.grid(page, "guard band");

    assertThat(risks).hasSize(4);
    assertThat(risks.get(0).get(0)).isEqualTo("none (0)");
    assertThat(risks.get(2).get(0)).startsWith("95 % sure (0.4974");
    assertThat(Double.parseDouble(risks.get(2).get(1).replace(" %", "")))
        .isLessThan(Double.parseDouble(risks.get(0).get(1).replace(" %", "")));
  }

  @Test
  void knownValuesGiveBiasAndLinearity() throws IOException {
    Page page =
        page(
            read(
                "part,operator,trial,measure,value,reference",
                "p1,a,1,x_mm,1.1,1",
                "p1,a,2,x_mm,1.1,1",
                "p1,b,1,x_mm,1.1,1",
                "p1,b,2,x_mm,1.1,1",
                "p2,a,1,x_mm,2.2,2",
                "p2,a,2,x_mm,2.2,2",
                "p2,b,1,x_mm,2.2,2",
                "p2,b,2,x_mm,2.2,2",
                "p3,a,1,x_mm,3.3,3",
                "p3,a,2,x_mm,3.3,3",
                "p3,b,1,x_mm,3.3,3",
                "p3,b,2,x_mm,3.3,3"));
    assertThat(Pages.words(page))
        .contains("Bias against known values of 3 parts: 0.2")
        .contains("changes by 10.0 % of the value")
        .contains("of every lamp of this study together; another one differs")
        .contains("more than chance");
    assertThat(Pages.plots(page)).hasSize(3);
    assertThatThrownBy(
            () ->
                read("part,operator,trial,measure,value,reference", "p1,a,1,x,1,1", "p1,a,2,x,1,2"))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("line 3")
        .hasMessageContaining("is known as 1.0 and as 2.0");
  }

  @Test
  void knownValuesOfOneBoardDoNotTellBiasFromChance() throws IOException {
    List<String> lines = new ArrayList<>(List.of("part,operator,trial,measure,value,reference"));
    for (int pin = 1; pin <= 3; pin++) {
      for (String lamp : List.of("ring", "dome")) {
        lines.add("b1 pin %d,%s,1,x_mm,%s,%s".formatted(pin, lamp, pin - .25, pin));
        lines.add("b1 pin %d,%s,2,x_mm,%s,%s".formatted(pin, lamp, pin - .25, pin));
      }
    }
    assertThat(Pages.words(page(read(lines.toArray(String[]::new)))))
        .contains(
            "are of one board or part, read 0.2500 mm too low on average. Joints of one board")
        .doesNotContain("more than chance");
  }

  /** Twenty parts whose lamps read 0.03 too low; what is known of them says so. */
  private GaugeInput low(double known) throws IOException {
    List<String> lines = new ArrayList<>(List.of("part,operator,trial,measure,value,reference"));
    for (int part = 1; part <= 20; part++) {
      for (String lamp : List.of("ring", "dome")) {
        for (int trial = 1; trial <= 2; trial++) {
          double value = 0.1 * part - 0.03 + 0.001 * ((part * 7 + trial * 3 + lamp.length()) % 5);
          lines.add("p%d,%s,%d,x_mm,%.3f,%s".formatted(part, lamp, trial, value, of(part, known)));
        }
      }
    }
    return read(lines.toArray(String[]::new));
  }

  private static String of(int part, double known) {
    return Double.isNaN(known) ? "" : "%.3f".formatted(0.1 * part + known);
  }

  @Test
  void aGaugeThatReadsWrongOnAverageIsNotPlainlyGoodEnough() throws IOException {
    ClassLimit limit = new ClassLimit("x_mm", 2, 1, "a drawing");

    assertThat(Pages.strong(page(low(0), limit)))
        .contains("good enough for class 2")
        .contains("But x_mm is read 0.028")
        .contains("mm too low on average, which none of this allows for");
    assertThat(Pages.strong(page(low(-0.028), limit))).doesNotContain("But x_mm", "not tested");
    assertThat(Pages.strong(page(low(Double.NaN), limit)))
        .contains("Whether x_mm is read right on average was not tested");
  }

  @Test
  void aTrendOverDaysIsTold() throws IOException {
    List<String> lines = new ArrayList<>(List.of("part,operator,trial,measure,value,day"));
    for (int trial = 1; trial <= 4; trial++) {
      for (String part : List.of("p1", "p2")) {
        for (String by : List.of("a", "b")) {
          double noise = (trial * 7 + part.hashCode() + by.hashCode()) % 3 * 0.001;
          lines.add(
              "%s,%s,%d,x_mm,%s,2026-11-%02d"
                  .formatted(part, by, trial, 1 + 0.5 * trial + noise, trial));
        }
      }
    }
    Page page = page(read(lines.toArray(String[]::new)));
    assertThat(Pages.words(page)).contains("Drift: 0.5").contains("more than chance");
    assertThat(Pages.words(page(AIAG))).as("without days").doesNotContain("Drift");
  }

  @Test
  void aTableGivesItsMeasuresDaysAndMeans() throws IOException {
    GaugeInput input =
        read(
            "part,operator,trial,measure,value,day,verdict",
            "p1,a,1,x_mm,1.5,1970-01-03,good",
            "p1,a,1,y_mm,2.5,,good",
            "p2,a,1,x_mm,2.5,1970-01-01,");

    assertThat(input.measures()).containsExactly("x_mm", "y_mm");
    assertThat(input.mean("x_mm")).hasValue(2.0);
    assertThat(input.mean("z_mm")).isEmpty();
    assertThat(input.of("x_mm"))
        .containsExactly(
            new GaugeData.Reading("p1", "a", 1.5), new GaugeData.Reading("p2", "a", 2.5));
    assertThat(input.dated("x_mm"))
        .containsExactly(new Drift.Dated("p1", 2, 1.5), new Drift.Dated("p2", 0, 2.5));
    assertThat(input.dated("y_mm")).isEmpty();
    assertThat(input.readings().get(1).day()).isEqualTo(OptionalDouble.empty());
    assertThat(input.verdicts())
        .as("one verdict a part, operator and trial, whatever was measured")
        .containsExactly(new Flips.Said("p1", "a", "good"));
  }

  @Test
  void aDayIsReadAsOnAChart() throws IOException {
    GaugeInput input =
        read(
            "part,operator,trial,measure,value,day",
            "p1,a,1,x,1,2026-11-27",
            "p1,a,2,x,1,27.11.2026");
    assertThat(input.readings().get(1).day()).isEqualTo(input.readings().get(0).day()).isPresent();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "p1,a,1,x,2,,|given before",
        "p1,a,2,x,two,,|not a number",
        "p1,a,2,x,Infinity,,|not a number",
        "p1,a,2,x,2,27/11/2026,|not a date",
        "p1,,2,x,2,,|\"operator\" is empty"
      })
  void aLineThatMakesNoSenseIsNamed(String line, String trouble) {
    assertThatThrownBy(
            () -> read("part,operator,trial,measure,value,day,verdict", "p1,a,1,x,1,,", line))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("line 3")
        .hasMessageContaining(trouble);
  }

  @Test
  void aMeasuresUnitIsTheEndOfItsName() {
    assertThat(GaugeWords.unit("side_overhang_mm")).isEqualTo(" mm");
    assertThat(GaugeWords.unit("reading")).isEmpty();
  }

  @Test
  void moreThanThirtyPartsAreNamedInShort() {
    List<String> parts = new ArrayList<>();
    for (int i = 1; i <= 30; i++) {
      parts.add("p" + i);
    }
    assertThat(Words.named(parts)).endsWith("p30").doesNotContain("more");
    parts.add("p31");
    parts.add("p32");
    assertThat(Words.named(parts)).endsWith("p30 and 2 more");
  }

  /** By hand: deviations of days -1, 0, 1 and of values -1, 0, 1 in two parts: slope 1. */
  @Test
  void theTrendIsWithinPartsSoThatPartsMayDiffer() {
    List<Drift.Dated> readings = new ArrayList<>();
    for (int day = 0; day < 3; day++) {
      readings.add(new Drift.Dated("low", day, day));
      readings.add(new Drift.Dated("high", day, 100 + day));
    }
    assertThat(Drift.of(readings).orElseThrow().perDay().value()).isCloseTo(1, within(1e-12));
  }
}
