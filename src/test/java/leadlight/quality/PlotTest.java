package leadlight.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import leadlight.statistics.Rate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is drawn lies where its value says: the frame goes from (80, 358) to (840, 66). */
class PlotTest {

  private static final double LEFT = 80;
  private static final double RIGHT = 840;
  private static final double TOP = 66;
  private static final double BASE = 358;

  /** Keeps what is drawn. */
  private static final class Paper implements Surface {
    private final List<double[]> lines = new ArrayList<>();
    private final List<double[]> boxes = new ArrayList<>();
    private final List<String> texts = new ArrayList<>();
    private final List<double[]> places = new ArrayList<>();

    @Override
    public void line(double x0, double y0, double x1, double y1, int colour, double width) {
      lines.add(new double[] {x0, y0, x1, y1, width});
    }

    @Override
    public void box(double x, double y, double width, double height, int colour) {
      boxes.add(new double[] {x, y, width, height});
    }

    @Override
    public void text(double x, double y, Anchor anchor, String text, boolean strong) {
      texts.add(text);
      places.add(new double[] {x, y});
    }

    double[] place(String text) {
      return places.get(texts.indexOf(text));
    }

    List<double[]> ofWidth(double width) {
      return lines.stream().filter(line -> line[4] == width).toList();
    }
  }

  private static Paper draw(List<String> ticks, Plot.Series... series) {
    Paper paper = new Paper();
    new Plot("title", "across", "up", ticks, List.of(series)).draw(paper);
    return paper;
  }

  private static Plot.Series series(Plot.Style style, double... xy) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new double[] {xy[i], xy[i + 1]});
    }
    return new Plot.Series("name", style, points);
  }

  @Test
  void aLineGoesThroughItsPoints() {
    Paper paper = draw(List.of(), series(Plot.Style.LINE, 0, 0, 5, 10, 10, 5));

    List<double[]> drawn = paper.ofWidth(1.8);
    assertThat(drawn.get(drawn.size() - 2)).containsExactly(LEFT, BASE, 460, TOP, 1.8);
    assertThat(drawn.get(drawn.size() - 1)).containsExactly(460, TOP, RIGHT, 212, 1.8);
  }

  @Test
  void aDashedLineIsSixTenthsInk() {
    Paper paper = draw(List.of(), series(Plot.Style.DASHED, 0, 10, 10, 10));

    List<double[]> dashes =
        paper.ofWidth(1.6).stream().filter(line -> line[1] == TOP && line[3] == TOP).toList();
    assertThat(dashes.get(0)[0]).isEqualTo(LEFT);
    assertThat(dashes.get(0)[2]).isCloseTo(LEFT + 6, within(1e-9));
    assertThat(dashes.get(1)[0]).isCloseTo(LEFT + 10, within(1e-9));
    assertThat(dashes).hasSizeBetween(76, 77).allMatch(line -> line[2] <= RIGHT + 1e-9);
  }

  @Test
  void aDashedLineThatRisesIsDashedAlongItself() {
    Paper paper = draw(List.of(), series(Plot.Style.DASHED, 0, 0, 10, 10));
    double rise = (TOP - BASE) / (RIGHT - LEFT);
    assertThat(paper.ofWidth(1.6))
        .filteredOn(line -> line[0] >= LEFT && line[1] > TOP && line[3] != line[1])
        .isNotEmpty()
        .allSatisfy(
            line -> {
              assertThat(line[1]).isCloseTo(BASE + rise * (line[0] - LEFT), within(1e-6));
              assertThat(line[3]).isCloseTo(BASE + rise * (line[2] - LEFT), within(1e-6));
              assertThat(Math.hypot(line[2] - line[0], line[3] - line[1])).isLessThan(6.01);
            });
  }

  @Test
  void twoEqualPointsAreNoLine() {
    assertThat(draw(List.of(), series(Plot.Style.DASHED, 10, 10, 10, 10)).ofWidth(1.6))
        .as("but for the legend's sample")
        .allMatch(line -> line[1] == 37);
  }

  @Test
  void barsStandOnTheBaseLineOverTheirNames() {
    Paper paper = draw(List.of("open", "bridge"), series(Plot.Style.BARS, 0, 8, 1, 2));

    double[] open = paper.boxes.get(paper.boxes.size() - 2);
    double[] bridge = paper.boxes.get(paper.boxes.size() - 1);
    assertThat(open[0] + open[2] / 2).isEqualTo(paper.place("open")[0]).isEqualTo(270);
    assertThat(bridge[0] + bridge[2] / 2).isEqualTo(paper.place("bridge")[0]).isEqualTo(650);
    assertThat(open[2]).as("seven tenths of the room").isCloseTo(0.7 * 380, within(1e-9));
    assertThat(open[1] + open[3]).isCloseTo(BASE, within(1e-9));
    assertThat(bridge[1] + bridge[3]).isCloseTo(BASE, within(1e-9));
    assertThat(open[3]).isCloseTo(4 * bridge[3], within(1e-9));
  }

  @Test
  void pointsAreSquaresAndAlarmsCrossesAboutTheirPlace() {
    Paper points = draw(List.of(), series(Plot.Style.POINTS, 5, 5, 10, 10));
    assertThat(points.boxes).anySatisfy(b -> assertThat(b).containsExactly(456.5, 208.5, 7, 7));
    assertThat(points.boxes).anySatisfy(b -> assertThat(b).containsExactly(836.5, 62.5, 7, 7));

    Paper alarms = draw(List.of(), series(Plot.Style.ALARM, 5, 5, 10, 10));
    assertThat(alarms.ofWidth(3))
        .anySatisfy(l -> assertThat(l).containsExactly(453, 205, 467, 219, 3))
        .anySatisfy(l -> assertThat(l).containsExactly(453, 219, 467, 205, 3));
  }

  @Test
  void axesTitlesAndTicksStandAboutTheFrame() {
    Paper paper = draw(List.of(), series(Plot.Style.LINE, 0, 0, 10, 10));

    assertThat(paper.place("title")).containsExactly(LEFT, 22);
    assertThat(paper.place("up")).containsExactly(LEFT, 42);
    assertThat(paper.place("across")).containsExactly(RIGHT, 408);
    assertThat(paper.ofWidth(1.2))
        .anySatisfy(l -> assertThat(l).containsExactly(LEFT, TOP, LEFT, BASE, 1.2))
        .anySatisfy(l -> assertThat(l).containsExactly(LEFT, BASE, RIGHT, BASE, 1.2));
    assertThat(paper.places).anySatisfy(p -> assertThat(p).containsExactly(LEFT - 8, TOP + 5));
    assertThat(paper.places).anySatisfy(p -> assertThat(p).containsExactly(RIGHT, BASE + 18));
    assertThat(paper.ofWidth(1))
        .anySatisfy(l -> assertThat(l).containsExactly(LEFT, TOP, RIGHT, TOP, 1))
        .anySatisfy(l -> assertThat(l).containsExactly(RIGHT, BASE, RIGHT, BASE + 4, 1));
  }

  @Test
  void theLegendNamesWhatHasANameFromTheRight() {
    Plot.Series one = new Plot.Series("one", Plot.Style.LINE, List.of(new double[] {1, 1}));
    Plot.Series two = new Plot.Series("second", Plot.Style.ALARM, List.of(new double[] {1, 1}));
    Plot.Series none = new Plot.Series("", Plot.Style.DASHED, List.of(new double[] {1, 1}));
    Paper paper = draw(List.of(), one, none, two);

    assertThat(paper.place("second")).containsExactly(RIGHT, 42);
    assertThat(paper.place("one")).containsExactly(RIGHT - 6 * 7.5 - 8 - 44, 42);
    assertThat(paper.texts).doesNotContain("");
    assertThat(paper.ofWidth(1.8))
        .as("a piece of line before its name")
        .anySatisfy(l -> assertThat(l[2] - l[0]).isEqualTo(26));
    assertThat(paper.ofWidth(3)).as("the sample and the mark").hasSize(4);
  }

  @Test
  void namesThatWouldRunIntoEachOtherAreSparedOrStaggered() {
    List<String> few = List.of("a", "b", "c");
    Paper level = draw(few, series(Plot.Style.POINTS, 0, 1));
    assertThat(few).allMatch(name -> level.place(name)[1] == BASE + 18);

    List<String> many = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      many.add("name%02d".formatted(i));
    }
    Paper sparse = draw(many, series(Plot.Style.POINTS, 0, 1));
    // 40 names of 7 letters and a blank: 52 px in 19: every second, in two heights.
    assertThat(many.stream().filter(sparse.texts::contains)).hasSize(20);
    assertThat(sparse.place("name00")[1]).isEqualTo(BASE + 18);
    assertThat(sparse.place("name02")[1]).isEqualTo(BASE + 34);
    assertThat(sparse.place("name04")[1]).isEqualTo(BASE + 18);
  }

  @Test
  void aGapIsNotDrawnForAFault() {
    assertThatThrownBy(() -> series(Plot.Style.LINE, 0, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("name");
    assertThatThrownBy(() -> series(Plot.Style.LINE, Double.POSITIVE_INFINITY, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Plot.Series("s", Plot.Style.LINE, List.of(new double[] {1, 2, 3})))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @CsvSource({
    "10,10,2.5,5",
    "9.2,10,2.5,5",
    "2,2,0.25,9",
    "1.9,2,0.25,9",
    "5,5,0.5,11",
    "3.3,3.5,0.5,8",
    "0.48,0.5,0.05,11",
    "0,1,0.25,5",
    "-3,1,0.25,5"
  })
  void anAxisEndsAtARoundValueAboveTheGreatest(double greatest, double most, double step, int n) {
    Axis axis = Axis.upTo(greatest, 0, 100);

    assertThat(axis.most()).isCloseTo(most, within(1e-9));
    assertThat(axis.at(0)).isZero();
    assertThat(axis.at(most)).isCloseTo(100, within(1e-9));
    assertThat(axis.ticks()).hasSize(n);
    assertThat(axis.ticks().get(1)).isCloseTo(step, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"10,5,5", "2,0.25,0.25", "2,0.5,0.5", "0.5,0.05,0.05", "200,25,25", "20,2.5,2.5"})
  void aTickHasTheDecimalsItNeeds(double most, double tick, String label) {
    assertThat(new Axis(0, most, 0, 1).label(tick)).isEqualTo(label);
  }

  @Test
  void svgHoldsShapesAndEscapedWords() {
    String svg =
        new Plot("a < b & \"c\"", "x", "y", List.of(), List.of(series(Plot.Style.POINTS, 1, 1)))
            .svg();

    assertThat(svg)
        .startsWith("<svg viewBox=\"0 0 860 420\"")
        .endsWith("</svg>")
        .contains("a &lt; b &amp; &quot;c&quot;")
        .contains("<rect")
        .contains("<path")
        .contains("text-anchor=\"middle\"")
        .contains("font-weight=\"bold\"");
  }

  @ParameterizedTest
  @CsvSource({"0,2,0.00", "-0.001,2,0.00", "-0.4,0,0", "1.005,1,1.0", "-1.25,2,-1.25"})
  void numbersAreNeverMinusNought(double value, int decimals, String text) {
    assertThat(Words.fixed(value, decimals)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0,0",
    "1234.5,1235",
    "12.345,12.35",
    "0.0123456,0.01235",
    "1,1.000",
    "9999,9999",
    "0.000012345,0.00001235",
    "0.00000000012345,0.00000000",
    "-0.25,-0.2500"
  })
  void fourDigitsCount(double value, String text) {
    assertThat(Words.significant(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0.0009,p below 0.001",
    "0.001,p 0.001",
    "0.0496,p 0.050",
    "0.1,p 0.10",
    "0.5,p 0.50"
  })
  void significanceHasTheDigitsThatMatter(double p, String text) {
    assertThat(Words.p(p)).isEqualTo(text);
  }

  /** Newcombe 1998, 95 % Wilson: 15 of 148 .0624-.1605. */
  @Test
  void aRateComesWithItsInterval() {
    assertThat(Words.rate(new Rate(15, 148))).isEqualTo("15 of 148 = 10.1 % (6.2 to 16.0 %)");
    assertThat(Words.rate(new Rate(0, 0))).contains("none");
    assertThat(Words.count(1, "joint")).isEqualTo("1 joint");
    assertThat(Words.count(2, "joint")).isEqualTo("2 joints");
    assertThatThrownBy(() -> Words.fixed(Double.NaN, 2)).hasMessageContaining("NaN");
  }

  @Test
  void anIntervalStandsUprightFromEndToEnd() {
    Paper paper = draw(List.of("a", "b"), series(Plot.Style.SPANS, 0, 0, 0, 10, 1, 2, 1, 8));

    List<double[]> upright =
        paper.ofWidth(1.8).stream()
            .filter(line -> line[0] == line[2] && Math.max(line[1], line[3]) > TOP)
            .toList();
    assertThat(upright).as("but for the legend's, above the frame").hasSize(2);
    assertThat(upright.get(0)[1]).isCloseTo(BASE, within(1e-9));
    assertThat(upright.get(0)[3]).isCloseTo(TOP, within(1e-9));
    assertThat(upright.get(1)[0]).isCloseTo(LEFT + 0.75 * (RIGHT - LEFT), within(1e-9));
  }
}
