package leadlight.cli.terminal;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.data.WholeFile;
import leadlight.page.QualityPage;
import leadlight.quality.Page;

/** A page for files and for the terminal. */
public final class PageFiles {

  /** Longer paragraphs are wrapped, as {@link TextColumns} does. */
  private static final int LINE = 100;

  private PageFiles() {}

  /**
   * Writes NAME.html, its data as NAME-page.json and NAME-tables.csv, and a NAME.png, NAME-2.png,
   * ... a plot; prints the words and the paths.
   */
  public static void write(Page page, Path folder, String name, Streams streams) {
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
    text(page).lines().forEach(line -> streams.out().println(RecordLines.printable(line)));
    written.forEach(file -> streams.out().println("  wrote " + file));
  }

  private static Path data(Path file, String text) {
    WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    return file;
  }

  private static String text(Page page) {
    StringBuilder text = new StringBuilder(page.title()).append("\n");
    for (Page.Block block : page.blocks()) {
      if (block instanceof Page.Heading heading) {
        text.append("\n").append(heading.text()).append("\n");
      } else if (block instanceof Page.Text paragraph) {
        text.append(wrapped(paragraph.text()));
      } else if (block instanceof Page.Grid grid) {
        List<List<String>> rows = new ArrayList<>(List.of(grid.header()));
        rows.addAll(grid.rows());
        text.append(TextColumns.lines(rows));
      }
    }
    return text.toString();
  }

  private static String wrapped(String paragraph) {
    StringBuilder text = new StringBuilder();
    int used = 0;
    for (String word : paragraph.split(" ", -1)) {
      if (used > 0 && used + 1 + word.length() > LINE) {
        text.append("\n");
        used = 0;
      }
      text.append(used > 0 ? " " : "").append(word);
      used += (used > 0 ? 1 : 0) + word.length();
    }
    return text.append("\n").toString();
  }
}
