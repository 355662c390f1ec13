package leadlight.app.output;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.data.WholeFile;
import leadlight.page.QualityPage;
import leadlight.quality.Page;
import leadlight.quality.Plot;
import leadlight.quality.Surface;
import leadlight.report.paint.Sketch;

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
    written.add(data(folder.resolve(name + "-tables.csv"), PageData.csv(page)));
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

  /** A plot as PNG. */
  private static final class PlotPicture {

    private PlotPicture() {}

    static byte[] png(Plot plot) {
      try (Sketch sketch = new Sketch(Plot.WIDTH, Plot.HEIGHT)) {
        plot.draw(
            new Surface() {
              @Override
              public void line(
                  double x0, double y0, double x1, double y1, int colour, double width) {
                sketch.line(x0, y0, x1, y1, colour, width);
              }

              @Override
              public void box(double x, double y, double width, double height, int colour) {
                sketch.box(x, y, width, height, colour);
              }

              @Override
              public void text(double x, double y, Anchor anchor, String text, boolean strong) {
                sketch.text(x, y, before(anchor), text, strong);
              }
            });
        return sketch.png();
      }
    }

    /** Share of a text that lies before its place. */
    private static double before(Surface.Anchor anchor) {
      return switch (anchor) {
        case START -> 0;
        case MIDDLE -> 0.5;
        case END -> 1;
      };
    }
  }
}
