package leadlight.app.output;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.data.WholeFile;
import leadlight.page.QualityPage;
import leadlight.quality.Page;

/** A page as files. */
public final class PageFiles {

  private PageFiles() {}

  /**
   * Writes NAME.html, its data as NAME-page.json and NAME-tables.csv, and a NAME.png, NAME-2.png,
   * ... a plot; gives their paths.
   */
  public static List<Path> write(Page page, Path folder, String name) {
    OutputFolder.make(folder);
    List<Path> written = new ArrayList<>();
    Path html = folder.resolve(name + ".html");
    WholeFile.write(html, QualityPage.html(page));
    written.add(html);
    written.add(data(folder.resolve(name + "-page.json"), PageData.json(page)));
    if (page.blocks().stream().anyMatch(Page.Grid.class::isInstance)) {
      written.add(data(folder.resolve(name + "-tables.csv"), PageData.csv(page)));
    }
    int plots = 0;
    for (Page.Block block : page.blocks()) {
      if (block instanceof Page.Chart chart) {
        plots++;
        Path png = folder.resolve(name + (plots == 1 ? "" : "-" + plots) + ".png");
        WholeFile.write(png, PlotPicture.png(chart.plot()));
        written.add(png);
      }
    }
    return written;
  }

  private static Path data(Path file, String text) {
    WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    return file;
  }
}
