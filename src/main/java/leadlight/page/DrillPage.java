package leadlight.page;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import leadlight.text.Messages;

/** The frame of the page on which drills are taken; its own script fills it. */
public final class DrillPage {

  private DrillPage() {}

  /** The page, UTF-8. */
  public static byte[] html(Messages words) {
    StringOutput output = new StringOutput();
    JtedrillGenerated.render(new OwaspHtmlTemplateOutput(output), null, words);
    return output.toString().getBytes(StandardCharsets.UTF_8);
  }
}
