package leadlight.quality;

import java.util.Base64;
import java.util.List;
import org.apache.commons.text.StringEscapeUtils;

/**
 * A page as one HTML file: style, pictures and plots inside, no script, nothing fetched. All words
 * are escaped; they stand in element content only.
 */
public final class HtmlPage {

  private static final String HEAD =
      """
      <!DOCTYPE html>
      <html lang="en"><head><meta charset="utf-8">
      <meta http-equiv="Content-Security-Policy"
       content="default-src 'none'; img-src data:; style-src 'unsafe-inline'">
      <meta name="viewport" content="width=device-width, initial-scale=1">
      <style>
      body{font:16px/1.45 sans-serif;color:#1a1a1a;background:#fff;max-width:60rem;margin:1.5rem auto;padding:0 1rem}
      h1{font-size:1.6rem;margin:.3rem 0}h2{font-size:1.15rem;margin:1.6rem 0 .4rem}
      p{margin:.4rem 0}p.strong{font-weight:bold;border-left:4px solid #1a1a1a;padding-left:.6rem}
      div.grid{overflow-x:auto}table{border-collapse:collapse;margin:.6rem 0;font-size:.92rem}
      th,td{border-bottom:1px solid #b8b8b8;padding:.25rem .7rem .25rem 0;text-align:left;vertical-align:top}
      th{border-bottom:2px solid #1a1a1a}svg{max-width:100%;height:auto;margin:.6rem 0}
      .pictures{display:flex;flex-wrap:wrap;gap:.8rem}
      figure{margin:0;width:15rem;border:1px solid #b8b8b8;padding:.5rem;break-inside:avoid}
      figure img{width:100%;display:block}figcaption{font-size:.88rem}figcaption div{min-height:1.3rem}
      @media print{body{margin:0;max-width:none}}
      </style>
      """;

  private HtmlPage() {}

  /** The file's text. */
  public static String of(Page page) {
    StringBuilder html = new StringBuilder(HEAD);
    html.append("<title>").append(escaped(page.title())).append("</title></head><body>\n");
    html.append("<h1>").append(escaped(page.title())).append("</h1>\n");
    page.blocks().forEach(b -> html.append(block(b)).append('\n'));
    return html.append("</body></html>\n").toString();
  }

  private static String block(Page.Block block) {
    if (block instanceof Page.Heading heading) {
      return "<h2>" + escaped(heading.text()) + "</h2>";
    }
    if (block instanceof Page.Text text) {
      return (text.strong() ? "<p class=\"strong\">" : "<p>") + escaped(text.text()) + "</p>";
    }
    if (block instanceof Page.Chart chart) {
      return chart.plot().svg();
    }
    if (block instanceof Page.Grid grid) {
      return grid(grid);
    }
    return pictures((Page.Pictures) block);
  }

  private static String grid(Page.Grid grid) {
    StringBuilder html = new StringBuilder("<div class=\"grid\"><table><thead>");
    html.append(row(grid.header(), "th")).append("</thead><tbody>\n");
    grid.rows().forEach(r -> html.append(row(r, "td")).append('\n'));
    return html.append("</tbody></table></div>").toString();
  }

  private static String row(List<String> cells, String tag) {
    StringBuilder html = new StringBuilder("<tr>");
    for (String cell : cells) {
      html.append('<').append(tag).append('>').append(escaped(cell));
      html.append("</").append(tag).append('>');
    }
    return html.append("</tr>").toString();
  }

  private static String pictures(Page.Pictures block) {
    StringBuilder html = new StringBuilder("<div class=\"pictures\">");
    for (Page.Picture picture : block.pictures()) {
      html.append("<figure>");
      if (picture.png().length > 0) {
        html.append("<img alt=\"\" src=\"data:image/png;base64,")
            .append(Base64.getEncoder().encodeToString(picture.png()))
            .append("\">");
      }
      html.append("<figcaption>");
      picture.lines().forEach(l -> html.append("<div>").append(escaped(l)).append("</div>"));
      html.append("</figcaption></figure>\n");
    }
    return html.append("</div>").toString();
  }

  private static String escaped(String text) {
    return StringEscapeUtils.escapeHtml4(text);
  }
}
