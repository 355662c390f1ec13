package leadlight.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import leadlight.quality.Page;
import leadlight.quality.Plot;
import org.junit.jupiter.api.Test;

class QualityPageTest {

  private static final Page PAGE =
      new Page.Builder()
          .heading("<h>")
          .text("a & b")
          .text("")
          .strong("mind <this>")
          .grid(List.of("<c>", "d"), List.of(List.of("1 < 2", "27.9 %")))
          .grid(List.of("empty"), List.of())
          .chart(
              new Plot(
                  "t",
                  "x",
                  "y",
                  List.of(),
                  List.of(new Plot.Series("<s>", Plot.Style.POINTS, List.of(new double[] {1, 1})))))
          .pictures(
              List.of(
                  new Page.Picture(new byte[] {1, 2, 3}, List.of("<one>")),
                  new Page.Picture(new byte[0], List.of("two"))))
          .pictures(List.of())
          .page("T & t");

  private final String html = new String(QualityPage.html(PAGE), StandardCharsets.UTF_8);

  @Test
  void itIsOneFileThatFetchesNothingAndEscapesItsWords() {
    assertThat(html)
        .startsWith("<!doctype html>")
        .contains("<title>T &amp; t</title>", "<h1>T &amp; t</h1>", "<h2>&lt;h&gt;</h2>")
        .contains("<p>a &amp; b</p>", "<p class=\"strong\">mind &lt;this&gt;</p>")
        .contains("<th scope=\"col\">&lt;c&gt;</th>", "<td>1 &lt; 2</td>", "<svg ", "&lt;s&gt;")
        .contains("<td class=\"n\">27.9 %</td>")
        .contains("data:image/png;base64,AQID", "&lt;one&gt;", "two")
        .doesNotContain("<script", "http://", "https://", "<p></p>", "empty");
    assertThat(html.split("<img ", -1)).as("one picture has bytes").hasSize(2);
    assertThat(html.split("<figure>", -1)).hasSize(3);
    assertThat(html.split("<table", -1)).hasSize(2);
  }

  @Test
  void itsStyleIsTheOnlyOneThatItsPolicyLetsIn() {
    assertThat(html)
        .contains("default-src &#39;none&#39;; img-src data:;", "style-src &#39;sha256-")
        .doesNotContain("unsafe-inline");
    assertThat(html.replaceAll("<style>(?s:.*?)</style>", "")).doesNotContain("style=\"");
  }

  @Test
  void itTurnsWithTheReadersColoursAndItsPlotsToo() {
    assertThat(html)
        .contains(
            "content=\"light dark\"", "prefers-color-scheme:dark", "svg text{fill:var(--ink)}");
    for (String colour :
        PAGE.blocks().stream()
            .filter(Page.Chart.class::isInstance)
            .map(b -> ((Page.Chart) b).plot().svg())
            .toList()) {
      java.util.regex.Matcher stroke =
          java.util.regex.Pattern.compile("<path[^>]*stroke=\"(#[0-9a-f]{6})\"").matcher(colour);
      while (stroke.find()) {
        assertThat(html).contains("path[stroke=\"" + stroke.group(1) + "\"]");
      }
    }
  }
}
