package leadlight.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import leadlight.Browser;
import leadlight.model.result.ScoredPhoto;
import leadlight.text.LengthUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The pages in a real browser, driven by {@code src/test/browser/check.mjs} with playwright-core
 * and axe-core. Screenshots and printed PDFs stay in {@code target/pages} to be looked at.
 */
class BrowserTest {

  @AfterAll
  static void release() {
    ScoredRow.closeAll();
  }

  private static final Path PAGES = Path.of("target/pages");

  /** Mean grey difference from which two signs of 24 by 24 pixels are told apart at a glance. */
  private static final double APART = 12;

  private static JsonNode results;

  @BeforeAll
  static void openThem() throws IOException, InterruptedException {
    Browser.chromium();
    Files.createDirectories(PAGES);
    page("all-verdicts.html", ScoredRow.withAllVerdicts(), "en");
    page("german.html", ScoredRow.withAllVerdicts(), "de");
    page("hostile.html", ScoredRow.named(ScoredRow.HOSTILE), "en");
    sheet("sheet.html");
    results = run();
  }

  private static void page(String name, ScoredPhoto scored, String language) throws IOException {
    PhotoPage page = new PhotoPage(ScoredRow.context(language, LengthUnit.MM));
    Files.write(PAGES.resolve(name), page.html(scored, ScoredRow.frame()));
  }

  private static void sheet(String name) throws IOException {
    CustomerSheet sheet =
        new CustomerSheet(
            ScoredRow.context("en", LengthUnit.MM),
            CustomerSheetTest.request(
                ScoredRow.HOSTILE, ScoredRow.HOSTILE, Optional.of(ScoredRow.HOSTILE)),
            Optional.empty(),
            new CustomerSheet.Shot(ScoredRow.SCORED, ScoredRow.frame()));
    Files.write(PAGES.resolve(name), sheet.html());
  }

  private static JsonNode run() throws IOException, InterruptedException {
    List<String> pages = new ArrayList<>();
    for (String page : List.of("all-verdicts", "german", "hostile", "sheet")) {
      pages.add(PAGES.resolve(page + ".html").toAbsolutePath().toString());
    }
    return Browser.run("check.mjs", PAGES, pages);
  }

  @Test
  void everyPinIsReachedByKeyboardAndOnlyItIsShown() {
    for (String page : List.of("all-verdicts.html", "german.html", "hostile.html")) {
      JsonNode walk = results.get(page).get("walk");
      List<String> expected = IntStream.rangeClosed(1, 19).mapToObj(pin -> "tab-" + pin).toList();
      assertThat(walk.findValuesAsText("pin")).as(page).containsExactlyElementsOf(expected);
      assertThat(walk.findValuesAsText("focused")).as(page).containsExactlyElementsOf(expected);
      walk.forEach(
          step -> {
            assertThat(step.get("shown")).hasSize(1);
            assertThat(step.at("/shown/0").asText())
                .isEqualTo(step.get("pin").asText().replace("tab", "pin"));
          });
    }
  }

  @Test
  void marksAreSwitchedOffAndOn() {
    JsonNode marks = results.at("/all-verdicts.html/marks");
    assertThat(marks.get("before").asBoolean()).isTrue();
    assertThat(marks.get("off").asBoolean()).isFalse();
    assertThat(marks.get("after").asBoolean()).isTrue();
  }

  @Test
  void aPlotIsDrawnForEachPin() {
    JsonNode plots = results.at("/all-verdicts.html/plots");
    assertThat(plots).hasSize(19);
    plots.forEach(
        plot -> {
          assertThat(plot.get("points").asInt()).isGreaterThan(50);
          assertThat(plot.get("height").asDouble()).isGreaterThan(50);
          assertThat(plot.get("width").asDouble()).isGreaterThan(5);
        });
  }

  @Test
  void nothingIsLoggedNothingLeavesThePageAndNoFaultOfAccessIsFound() {
    results
        .fields()
        .forEachRemaining(
            page -> {
              assertThat(page.getValue().get("console")).as(page.getKey()).isEmpty();
              assertThat(page.getValue().get("requests")).as(page.getKey()).isEmpty();
              assertThat(page.getValue().get("axe")).as(page.getKey()).isEmpty();
            });
  }

  @Test
  void namesFromOutsideNeitherRunNorAddScripts() {
    assertThat(results.at("/hostile.html/hacked").isNull()).isTrue();
    assertThat(results.at("/hostile.html/scripts").asInt()).isOne();
    assertThat(results.at("/sheet.html/hacked").isNull()).isTrue();
    assertThat(results.at("/sheet.html/scripts").asInt()).isZero();
  }

  @Test
  void noPageIsWiderThanItsScreen() {
    results
        .fields()
        .forEachRemaining(
            page ->
                page.getValue()
                    .get("overflow")
                    .forEach(by -> assertThat(by.asInt()).as(page.getKey()).isLessThan(1)));
  }

  @Test
  void printAndABrowserWithoutScriptShowEveryPin() {
    assertThat(results.at("/all-verdicts.html/printed").asInt()).isEqualTo(19);
    assertThat(results.at("/all-verdicts.html/withoutScript").asInt()).isEqualTo(19);
  }

  @Test
  void theFourVerdictsStayApartInGreyUnderEveryKindOfVision() {
    JsonNode visions = results.at("/all-verdicts.html/signs");
    assertThat(visions).as("plain, grey and three kinds of colour blindness").hasSize(5);
    visions
        .fields()
        .forEachRemaining(
            vision -> {
              List<JsonNode> signs = new ArrayList<>();
              vision.getValue().forEach(signs::add);
              assertThat(signs).as(vision.getKey()).hasSize(4);
              for (int i = 0; i < 4; i++) {
                for (int k = 0; k < i; k++) {
                  assertThat(difference(signs.get(i), signs.get(k)))
                      .as("%s: signs %d and %d", vision.getKey(), i, k)
                      .isGreaterThan(APART);
                }
              }
            });
  }

  private static double difference(JsonNode one, JsonNode other) {
    double sum = 0;
    for (int i = 0; i < one.size(); i++) {
      sum += Math.abs(one.get(i).asInt() - other.get(i).asInt());
    }
    return sum / one.size();
  }
}
