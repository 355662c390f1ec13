package leadlight.cli.terminal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.app.output.PageFiles;
import leadlight.app.record.RecordLines;
import leadlight.quality.Page;

/** A page written to files, and its words on the terminal. */
public final class PageShow {

  /** Longer paragraphs are wrapped, as {@link TextColumns} does. */
  private static final int LINE = 100;

  private PageShow() {}

  /** Writes the files of {@link PageFiles}; prints the words and the paths. */
  public static void write(Page page, Path folder, String name, Streams streams) {
    List<Path> written = PageFiles.write(page, folder, name);
    text(page).lines().forEach(line -> streams.out().println(RecordLines.printable(line)));
    written.forEach(file -> streams.out().println("  wrote " + file));
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
