package leadlight.page;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import java.util.List;
import leadlight.page.look.Assets;
import leadlight.page.words.SafeText;
import leadlight.quality.Page;

/** Pages of sampling, agreement, gauges, charts and drills: one HTML file without script. */
public final class QualityPage {

  /** Letters of a cell that get a wider column; common practice, no source. */
  private static final int LONG = 24;

  private final Page page;
  private final String css = Assets.text("quality.css");

  private QualityPage(Page page) {
    this.page = page;
  }

  /** The page, UTF-8; its words are escaped. */
  public static byte[] html(Page page) {
    StringOutput output = new StringOutput(1 << 14);
    JtequalityGenerated.render(new OwaspHtmlTemplateOutput(output), null, new QualityPage(page));
    return output.toString().getBytes(StandardCharsets.UTF_8);
  }

  String title() {
    return safe(page.title());
  }

  List<Page.Block> blocks() {
    return page.blocks();
  }

  String css() {
    return css;
  }

  String policy() {
    return Assets.policy(css);
  }

  /** Names of people, photos and boards come from outside. */
  String safe(String outside) {
    return SafeText.of(outside);
  }

  String uri(Page.Picture picture) {
    return Assets.dataUri("image/png", picture.png());
  }

  /** Whether a cell holds words that would run down a narrow column. */
  boolean isLong(String cell) {
    return cell.length() > LONG;
  }

  /** Whether a cell is a figure, which stands to the right in its column. */
  boolean isFigure(String cell) {
    return cell.matches("[-+]?[0-9.,]+( %)?");
  }
}
