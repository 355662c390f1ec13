package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sampling, agreement, gauge and charts as a user meets them, bad data first. */
class QualityCommandsTest {

  private static final Path STUDIES = Path.of("src/test/resources/quality");

  @TempDir private Path folder;

  @AfterEach
  void noPictureStaysInNativeMemoryAndNoNumberIsMissing() throws IOException {
    assertThat(Frame.live()).isZero();
    Path out = Files.createDirectories(folder.resolve("out"));
    try (Stream<Path> files = Files.walk(out)) {
      for (Path page : files.filter(f -> f.toString().endsWith(".html")).toList()) {
        assertThat(Files.readString(page).replaceAll("base64,[^\"]*", ""))
            .doesNotContain("NaN", "Infinity", "http://", "https://", "<script")
            .contains("never certifies");
      }
    }
  }

  private Path file(String name, String... lines) throws IOException {
    return Files.write(folder.resolve(name), List.of(lines));
  }

  private Run run(Object... args) {
    Object[] all =
        Stream.concat(Stream.of(args), Stream.of("--out", folder.resolve("out"))).toArray();
    return Run.of(all);
  }

  private void assertOneLine(Run run, String... parts) {
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.err()).contains(parts);
    assertThat(folder.resolve("out")).as("nothing half-written").doesNotExist();
  }

  @Test
  void aPlanIsPrintedAndDrawn() {
    Run run = run("sample", "plan", "--lot", 500, "--aql", "1.0");

    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("inspect 50, accept the lot with 1 or fewer");
    assertThat(folder.resolve("out/plan.png")).isNotEmptyFile();
    assertThat(folder.resolve("out/plan.html")).content().contains("<svg", "code letter H");
    assertThat(folder.resolve("out/plan-page.json"))
        .content()
        .contains("leadlight-page-1", "\"strong\" : \"Lot of 500", "\"ticks\"");
    assertThat(folder.resolve("out/plan-tables.csv"))
        .content()
        .startsWith("table,heading,line,column,value")
        .contains("1,What the plan can tell,1,accepted at least,95.0 %");
  }

  @Test
  void aChartWithoutATableComesAsCsvWithThePointsOfItsPlot() {
    Run run = run("chart", STUDIES.resolve("nist-p-chart.csv"), "--per", "wafer", "--cusum");

    assertThat(run.status()).as(run.err()).isZero();
    assertThat(folder.resolve("out/cusum-p-wafer-tables.csv"))
        .content()
        .contains(
            "words,\"A lasting shift is seen, first at 23.\"",
            "plot 1,CUSUM chart by group,1,series");
  }

  @Test
  void aPlanNeedsOneWayOfPlanning() {
    assertOneLine(run("sample", "plan", "--lot", 500), "--aql", "--good");
    assertOneLine(run("sample", "plan", "--lot", 500, "--aql", "1.1"), "not in the table");
    assertOneLine(run("sample", "plan", "--lot", 1, "--aql", "1.0"), "cannot be sampled");
    assertOneLine(run("sample", "plan", "--lot", 10, "--good", "1", "--bad", "5"), "further apart");
  }

  @Test
  void refusedLotsTightenThePlan() throws IOException {
    Path lots = file("lots.csv", "lot,result", "1,refused", "2,refused");
    Run run = run("sample", "plan", "--lot", 1000, "--aql", "2.5", "--history", lots);

    assertThat(run.out()).contains("tightened inspection", "3 or fewer", "from memory");
    assertOneLine(
        Run.of(
            "sample",
            "plan",
            "--lot",
            9,
            "--aql",
            "1.0",
            "--out",
            folder.resolve("none"),
            "--history",
            file("odd.csv", "lot,result", "1,fine")),
        true);
  }

  private static void assertOneLine(Run run, boolean odd) {
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.err()).contains("line 2", "\"fine\" is no result").isNotEqualTo("" + odd);
  }

  @Test
  void aSampleIsDrawnFilledInAndDecided() throws IOException {
    Path lot = lot(60);
    Run drawn = run("sample", "draw", lot, "--aql", "4.0", "--seed", 7);
    assertThat(drawn.status()).as(drawn.err()).isZero();
    Path results = folder.resolve("out/results.csv");
    List<String> lines = Files.readAllLines(results);
    assertThat(lines).hasSize(14).startsWith("item,verdict,finding");

    assertThat(Run.of("sample", "decide", folder.resolve("out")).err())
        .contains("lacks the verdict of 13 of 13");
    Files.write(results, filled(lines, "acceptable"));
    Run good = Run.of("sample", "decide", folder.resolve("out"));
    assertThat(good.status()).isZero();
    assertThat(good.out()).contains("The lot is accepted", "0 of 13 = 0.0 % (0.0 to 22.8 %)");
    assertThat(folder.resolve("out/decision-tables.csv"))
        .content()
        .startsWith("table,heading,line,column,value")
        .contains("words,The lot is accepted");

    Files.write(results, filled(lines, "defect"));
    Path lots = folder.resolve("lots.csv");
    Run bad = Run.of("sample", "decide", folder.resolve("out"), "--history", lots);
    assertThat(bad.status()).isEqualTo(3);
    assertThat(bad.out()).contains("The lot is refused");
    assertThat(lots).hasContent("lot,result\n\"lot\",refused");
  }

  private Path lot(int units) throws IOException {
    String items =
        IntStream.rangeClosed(1, units)
            .mapToObj(i -> "board " + i)
            .collect(Collectors.joining("\n"));
    return file("lot.csv", "item", items);
  }

  private static List<String> filled(List<String> lines, String verdict) {
    return lines.stream().map(l -> l.replace(",,", "," + verdict + ",")).toList();
  }

  @Test
  void aLotIsEnteredOnce() throws IOException {
    run("sample", "draw", lot(60), "--aql", "4.0", "--seed", 7);
    Path results = folder.resolve("out/results.csv");
    Files.write(results, filled(Files.readAllLines(results), "acceptable"));
    Path lots = folder.resolve("lots.csv");
    Run.of("sample", "decide", folder.resolve("out"), "--history", lots, "--name", "lot 12");
    Run again =
        Run.of("sample", "decide", folder.resolve("out"), "--history", lots, "--name", "lot 12");

    assertThat(again.status()).isEqualTo(2);
    assertThat(again.err()).contains("line 2", "\"lot 12\" is entered already");
    assertThat(lots).hasContent("lot,result\n\"lot 12\",accepted");
  }

  @Test
  void otherPlansAreDrawn() {
    Run two = run("sample", "plan", "--lot", 1000, "--aql", "1.0", "--double");
    assertThat(two.out()).as(two.err()).contains("between them inspect 50");
    Run each = run("sample", "plan", "--lot", 1000, "--good", 1, "--bad", 6, "--sequential");
    assertThat(each.out()).as(each.err()).contains("Wald 1947", "When to stop");
    Run alone = run("sample", "plan", "--lot", 500, "--lq", 2);
    assertThat(alone.out()).as(alone.err()).contains("inspect 102", "2859-2", "AOQL");
  }

  @Test
  void aDoublePlanAsksForItsSecondSampleOnlyIfTheFirstDoesNotDecide() throws IOException {
    Run drawn = run("sample", "draw", lot(600), "--aql", "1.0", "--double");
    assertThat(drawn.status()).as(drawn.err()).isZero();
    Path results = folder.resolve("out/results.csv");
    List<String> lines = Files.readAllLines(results);
    assertThat(lines).hasSize(101);

    Files.write(results, filled(lines, 0));
    assertThat(Run.of("sample", "decide", folder.resolve("out")).out())
        .contains("The lot is accepted", "first sample of 50");
    Files.write(results, filled(lines, 1));
    Run open = Run.of("sample", "decide", folder.resolve("out"));
    assertThat(open.status()).isEqualTo(2);
    assertThat(open.err()).contains("the first 50 units do not decide", "50 of 100 units");
    Files.write(results, filled(lines, 3));
    assertThat(Run.of("sample", "decide", folder.resolve("out")).status()).isEqualTo(3);
  }

  /** The first 50 are filled in, so many of them as defects. */
  private static List<String> filled(List<String> lines, int defects) {
    return IntStream.range(0, lines.size())
        .mapToObj(
            i ->
                i == 0 || i > 50
                    ? lines.get(i)
                    : lines.get(i).replace(",,", i <= defects ? ",defect," : ",acceptable,"))
        .toList();
  }

  @Test
  void aSequentialPlanGoesOnUnitByUnitAndStopsWhenItDecides() throws IOException {
    Run drawn = run("sample", "draw", lot(600), "--good", 1, "--bad", 6, "--sequential");
    assertThat(drawn.status()).as(drawn.err()).isZero();
    Path results = folder.resolve("out/results.csv");
    List<String> lines = Files.readAllLines(results);
    Files.write(results, filled(lines, 0));

    Run good = Run.of("sample", "decide", folder.resolve("out"));
    assertThat(good.out())
        .as(good.err())
        .contains("The lot is accepted", "0 nonconforming in 44", "6 more results are filled in");
    assertThat(run("sample", "draw", lot(60), "--good", 1, "--bad", 6, "--sequential").err())
        .contains("132 units and the lot has 60");
  }

  @Test
  void aSeriesThatStoppedCanResume() throws IOException {
    String[] stopped = {
      "lot,result",
      "1,refused",
      "2,refused",
      "3,refused",
      "4,refused",
      "5,refused",
      "6,refused",
      "7,refused"
    };
    assertOneLine(
        run("sample", "plan", "--lot", 500, "--aql", "1.0", "--history", file("s.csv", stopped)),
        "acceptance stops",
        "\"resumed\"");
    String[] resumed = java.util.Arrays.copyOf(stopped, 9);
    resumed[8] = "mended,resumed";
    Run run =
        run("sample", "plan", "--lot", 500, "--aql", "1.0", "--history", file("r.csv", resumed));
    assertThat(run.out()).as(run.err()).contains("tightened inspection", "resumes");
  }

  @Test
  void aLotIsEnteredBehindAStopOnlyWhenItsCauseIsMended() throws IOException {
    run("sample", "draw", lot(60), "--aql", "4.0", "--seed", 7);
    Path results = folder.resolve("out/results.csv");
    Files.write(results, filled(Files.readAllLines(results), "acceptable"));
    Path lots =
        file(
            "lots.csv",
            "lot,result",
            "1,refused\n2,refused\n3,refused\n4,refused\n5,refused\n6,refused\n7,refused");
    byte[] before = Files.readAllBytes(lots);
    Run stopped = decided(lots, "8");
    assertThat(stopped.status()).isEqualTo(2);
    assertThat(stopped.err()).contains("acceptance stops", "name --resumed").hasLineCount(1);
    assertThat(lots).hasBinaryContent(before);
    assertThat(decided(lots, "8", "--resumed").out())
        .contains("With it lots.csv 8 lots; the next one gets tightened inspection");
    assertThat(Files.readString(lots)).endsWith("\"before 8\",resumed\n\"8\",accepted\n");
    assertThat(decided(lots, "9", "--resumed").err()).contains("acceptance has not stopped");
  }

  /** Ten accepted in a row lead to reduced inspection only if those responsible agree. */
  @Test
  void reducedInspectionIsSaidWhereItIsAgreed() throws IOException {
    run("sample", "draw", lot(60), "--aql", "4.0", "--seed", 7);
    Path results = folder.resolve("out/results.csv");
    Files.write(results, filled(Files.readAllLines(results), "acceptable"));
    String nine =
        IntStream.range(1, 10).mapToObj(i -> i + ",accepted\n").collect(Collectors.joining());
    Path lots = file("lots.csv", "lot,result", nine.strip());
    Path same = file("same.csv", "lot,result", nine.strip());
    assertThat(decided(lots, "10").out()).contains("the next one gets normal inspection");
    assertThat(decided(same, "10", "--reduced-agreed").out())
        .contains("the next one gets reduced inspection");
  }

  @Test
  void whatIsSaidOfAFileOfLotsIsRefusedWithoutOne() {
    for (List<Object> words :
        List.<List<Object>>of(
            List.of("--resumed"), List.of("--reduced-agreed"), List.of("--name", "12"))) {
      List<Object> all = new ArrayList<>(List.of("sample", "decide", folder.resolve("out")));
      all.addAll(words);
      assertOneLine(Run.of(all.toArray()), "name it with --history");
    }
    assertOneLine(
        run("sample", "plan", "--lot", 500, "--aql", "1.0", "--reduced-agreed"),
        "name it with --history");
  }

  /** What a person answered is not kept, so that nobody is asked in vain. */
  @Test
  void nobodyIsAskedOfALotThatCannotBeEntered() throws IOException {
    run("sample", "draw", lot(60), "--aql", "4.0", "--seed", 7);
    Path lots = file("lots.csv", "lot,result", "12,accepted");
    Run again = decided(lots, "12", "--ask");
    assertThat(again.status()).isEqualTo(2);
    assertThat(again.err()).contains("\"12\" is entered already").doesNotContain("defect (d)?");
  }

  private Run decided(Path lots, String name, Object... more) {
    List<Object> words =
        new ArrayList<>(List.of("sample", "decide", folder.resolve("out"), "--history", lots));
    words.addAll(List.of("--name", name));
    words.addAll(List.of(more));
    return Run.of(words.toArray());
  }

  @Test
  void missingVerdictsAreAskedFor() throws IOException {
    run("sample", "draw", lot(60), "--aql", "4.0");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream sink = new PrintStream(out, true, StandardCharsets.UTF_8);
    int status =
        Main.run(
            new ByteArrayInputStream("x\nAcceptable\n".repeat(13).getBytes(StandardCharsets.UTF_8)),
            sink,
            sink,
            "sample",
            "decide",
            folder.resolve("out").toString(),
            "--ask");

    assertThat(status).isZero();
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("(a) or defect (d)?", "accepted");
  }

  @Test
  void theSameSeedDrawsTheSameUnitsAndAnotherOthers() throws IOException {
    Path lot = lot(500);
    List<String> first = drawn(lot, 1);

    assertThat(drawn(lot, 1)).isEqualTo(first);
    assertThat(drawn(lot, 2)).isNotEqualTo(first);
  }

  private List<String> drawn(Path lot, int seed) throws IOException {
    run("sample", "draw", lot, "--aql", "1.0", "--seed", seed);
    return Files.readAllLines(folder.resolve("out/results.csv"));
  }

  @Test
  void aWorkSheetShowsTheJointAndNotWhatWasSaidOfIt() throws IOException {
    Path reports = folder.resolve("reports");
    Run.of(
        "score",
        "sample-images/logger-sensor-open.jpg",
        "--leads",
        20,
        "--pitch",
        0.5,
        "--out",
        reports);
    Run run = run("sample", "draw", reports, "--aql", "10", "--photos", "sample-images");

    assertThat(run.status()).as(run.err()).isZero();
    String sheet = Files.readString(folder.resolve("out/work-sheet.html"));
    assertThat(sheet.split("data:image/png", -1)).hasSize(1 + 5);
    assertThat(sheet.replaceAll("<style>(?s:.*?)</style>|base64,[^\"]*|logger-sensor-open", ""))
        .doesNotContain("open", "unjudged", "insufficient", "bridge");
  }

  @Test
  void aLotThatIsSmallerThanItsSampleIsInspectedInFull() throws IOException {
    Run run = run("sample", "draw", lot(4), "--aql", "0.65");

    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("Lot of 4: inspect 4");
  }

  @Test
  void oneCategoryOnlyIsSaidNotComputed() throws IOException {
    Path grades =
        file(
            "g.csv",
            "item,grader,verdict",
            "1,a,acceptable",
            "1,b,acceptable",
            "2,a,acceptable",
            "2,b,acceptable");
    Run run = run("agree", grades, "--reference", "b");

    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("one category only", "none to rate", "no wrong grade", "None.");
  }

  @Test
  void badGradesAreOneLine() throws IOException {
    assertOneLine(
        run("agree", file("a.csv", "item,grader,verdict", "1,a,good", "1,b,")),
        "a.csv, line 3",
        "\"verdict\" is empty");
    assertOneLine(
        run(
            "agree",
            file("b.csv", "item,grader,verdict", "1,a,good", "1,b,good"),
            "--reference",
            "c"),
        "\"c\" is no grader",
        "a, b");
    assertOneLine(
        run("agree", file("c.csv", "item,grader,verdict", "1,a,good", "1,a,good")),
        "line 3",
        "before");
    assertOneLine(run("agree", file("d.csv", "item,grader", "1,a")), "no column \"verdict\"");
    assertOneLine(run("agree", file("e.csv", "item,grader,verdict")), "no line below");
    assertOneLine(
        run("agree", file("f.csv", "item,grader,verdict", "1,a,good")), "nothing to compare");
    assertOneLine(run("agree", folder.resolve("none.csv")), "is not a file");
    assertOneLine(
        run("agree", file("h.csv", "item,grader,verdict", "1,a,x,extra")),
        "line 2",
        "4 cells below 3 headers");
    assertOneLine(
        run("agree", file("i.csv", "item,grader,verdict", "1,a,good", "1,b,Defect")),
        "i.csv, line 3, column 3 (verdict)",
        "\"Defect\" is no verdict that is known");
    assertOneLine(
        run("agree", file("k.csv", "item,grader,verdict", "1,a,good"), "--bad-is", "good"),
        "\"good\" is named under two");
  }

  @Test
  void namesFromATableStayTextOnThePage() throws IOException {
    Path grades =
        file("g.csv", "item,grader,verdict", "<script>1,a,defect", "<script>1,b,acceptable");
    run("agree", grades);

    assertThat(folder.resolve("out/agreement.html")).content().contains("&lt;script&gt;1");
  }

  @Test
  void theGaugeStudyOfTheManual() {
    Run run = run("gauge", STUDIES.resolve("aiag-gauge.csv"));

    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("26.7 %", "27.9 %", "No class limit applies");
  }

  @Test
  void readingsWithoutVariationAreSaidToBeSo() throws IOException {
    StringBuilder text = new StringBuilder("part,operator,trial,measure,value");
    for (int i = 0; i < 8; i++) {
      text.append("\n%d,%d,%d,side_overhang_mm,0.1".formatted(i / 4, i / 2 % 2, i % 2));
    }
    Run run = run("gauge", file("r.csv", text.toString()), "--lead-width", "0.2");

    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("nothing varies", "guard band 0 mm", "cannot be tested");
  }

  @Test
  void badReadingsAreOneLine() throws IOException {
    String header = "part,operator,trial,measure,value";
    assertOneLine(
        run("gauge", file("a.csv", header, "1,a,1,m,1", "1,a,2,m,")), "line 3", "\"value\"");
    assertOneLine(run("gauge", file("b.csv", header, "1,a,1,m,NaN")), "line 2", "not a number");
    assertOneLine(run("gauge", file("c.csv", header, "1,a,1,m,1", "2,a,1,m,2")), "two operators");
    assertOneLine(
        run("gauge", file("d.csv", header, "1,a,1,m,1", "1,a,1,m,2")), "line 3", "before");
    assertOneLine(
        run("gauge", file("e.csv", header, "1,a,1,m,1", "1,a,2,m,1", "2,b,1,m,1", "2,b,2,m,1")),
        "part 1, operator b has 0 of 2");
  }

  @Test
  void theWafersOfTheHandbook() {
    Run run = run("chart", STUDIES.resolve("nist-p-chart.csv"), "--per", "wafer");

    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("mean 0.2313, 347 in 1500", "a point beyond three sigma");
    assertThat(folder.resolve("out/chart-p-wafer.png")).isNotEmptyFile();
  }

  @Test
  void aStageThatIsNamedCountsAloneInATableToo() throws IOException {
    Path table =
        file(
            "stages.csv",
            "day,board,stage,verdict",
            "2026-11-01,a,as-received,defect",
            "2026-11-02,a,final,acceptable");

    assertThat(run("chart", table, "--stage", "as received").out())
        .contains("1 in 1", "1 joint of other stages is left out: only as received counts.");
    assertThat(run("chart", table).out()).contains("0 in 1", "1 joint of earlier stages");
  }

  @Test
  void lampsThatDifferAreNotSentToWiderLimits() throws IOException {
    Path lamps = file("lamps.csv", "group,units,count", "ring,500,5", "side,500,60");

    assertThat(run("chart", lamps, "--per", "lamp").out())
        .contains("they differ more", "unlike each other")
        .doesNotContain("--laney");
  }

  @Test
  void zeroDefectsAreSaidToTellNothingYet() throws IOException {
    Run run = run("chart", file("j.csv", "day,verdict", "2026-11-24,acceptable"), "--kind", "dpmo");

    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("not one defect", "0 in 1");
  }

  @Test
  void badCountsAreOneLine() throws IOException {
    assertOneLine(run("chart", file("a.csv", "group,units,count", "1,0,0")), "line 2", "0 units");
    assertOneLine(
        run("chart", file("b.csv", "group,units,count", "1,5,-1")), "line 2", "not a count");
    assertOneLine(run("chart", file("c.csv", "group,units,count", "1,5,6")), "u chart");
    assertOneLine(run("chart", file("d.csv", "day,verdict", ",defect")), "\"day\" is empty");
    assertOneLine(run("chart", "--record", folder.resolve("none")), "no record");
    assertOneLine(run("chart", "x.csv", "--kind", "z"), "--kind z");
    Path days = file("e.csv", "day,verdict", "2026-11-24,defect");
    assertOneLine(run("chart", days, "--stage", "final"), "no column \"stage\"");
    Path stages = file("f.csv", "day,stage,verdict", "2026-11-24,final,defect");
    assertOneLine(run("chart", stages, "--stage", "after-rework"), "no line of stage after-rework");
  }
}
