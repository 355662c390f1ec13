package leadlight.page;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import leadlight.model.result.ScoredPhoto;
import leadlight.page.look.Assets;
import leadlight.page.words.PageContext;
import leadlight.vision.Frame;

/**
 * One page that a customer takes home: before and after, in plain words, as HTML and as PDF with
 * the same content. The bytes depend on the arguments alone.
 */
public final class CustomerSheet {

  /**
   * A photo with its result.
   *
   * @param scored the result
   * @param picture the upright photo; stays open
   */
  public record Shot(ScoredPhoto scored, Frame picture) {}

  private final SheetView view;

  /**
   * Makes the content.
   *
   * @param before the row before the work, if it was photographed
   * @param now the row as it is
   */
  public CustomerSheet(PageContext context, SheetRequest asked, Optional<Shot> before, Shot now) {
    PageContext here = context.at(now.scored().settings().row());
    this.view = new SheetMaker(here).view(asked, before, now);
  }

  /** As a web page in one file, UTF-8. */
  public byte[] html() {
    String css = Assets.text("sheet.css");
    StringOutput output = new StringOutput(1 << 18);
    JtesheetGenerated.render(
        new OwaspHtmlTemplateOutput(output), null, view, Assets.policy(css), css);
    return output.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** As a PDF of one A4 page. */
  public byte[] pdf() {
    return new SheetPdf(view).bytes();
  }
}
