package leadlight.page;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import leadlight.model.result.ScoredPhoto;
import leadlight.page.look.Assets;
import leadlight.page.photo.PageMaker;
import leadlight.page.words.PageContext;
import leadlight.report.picture.LegPhotos;
import leadlight.vision.Frame;

/**
 * The page of one photo: a single HTML file that needs no network and runs nothing but its own
 * script. The bytes depend on the arguments alone. Safe for threads.
 */
public final class PhotoPage {

  private final PageContext context;
  private final String css = Assets.text("page.css");
  private final String script = Assets.text("page.js");

  /** Takes what all pages of a run share. */
  public PhotoPage(PageContext context) {
    this.context = context;
  }

  /**
   * The page, UTF-8.
   *
   * @param picture the upright photo, untouched; stays open
   */
  public byte[] html(ScoredPhoto scored, Frame picture) {
    return withLegs(scored, LegPhotos.NONE, picture);
  }

  /** The page of a connector: its row, and its anchor legs in photos of their own. */
  public byte[] withLegs(ScoredPhoto scored, LegPhotos legs, Frame picture) {
    StringOutput output = new StringOutput(1 << 20);
    JtephotoGenerated.render(
        new OwaspHtmlTemplateOutput(output),
        null,
        new PageMaker(context.at(scored.settings().row()), css, script)
            .view(scored, legs, picture));
    return output.toString().getBytes(StandardCharsets.UTF_8);
  }
}
