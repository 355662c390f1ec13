package leadlight.app.output;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.data.Cells;
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

  /** A page as data: its words, tables and the points of its plots. */
  private static final class PageData {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private PageData() {}

    /** The page as a tree; pictures by their words alone. */
    static String json(Page page) {
      ObjectNode root = JSON.objectNode();
      root.put("schema", "leadlight-page-1");
      root.put("title", page.title());
      ArrayNode blocks = root.putArray("blocks");
      for (Page.Block block : page.blocks()) {
        ObjectNode node = blocks.addObject();
        if (block instanceof Page.Heading heading) {
          node.put("heading", heading.text());
        } else if (block instanceof Page.Text text) {
          node.put(text.strong() ? "strong" : "text", text.text());
        } else if (block instanceof Page.Grid grid) {
          grid(node.putObject("table"), grid);
        } else if (block instanceof Page.Chart chart) {
          plot(node.putObject("plot"), chart.plot());
        } else if (block instanceof Page.Pictures pictures) {
          ArrayNode lines = node.putArray("pictures");
          pictures.pictures().forEach(picture -> texts(lines.addArray(), picture.lines()));
        }
      }
      return root.toPrettyString() + "\n";
    }

    private static void grid(ObjectNode node, Page.Grid grid) {
      texts(node.putArray("header"), grid.header());
      ArrayNode rows = node.putArray("rows");
      grid.rows().forEach(row -> texts(rows.addArray(), row));
    }

    private static void plot(ObjectNode node, Plot plot) {
      node.put("title", plot.title()).put("x", plot.xLabel()).put("y", plot.yLabel());
      texts(node.putArray("ticks"), plot.ticks());
      ArrayNode all = node.putArray("series");
      for (Plot.Series series : plot.series()) {
        ArrayNode points = all.addObject().put("name", series.name()).putArray("points");
        series.points().forEach(point -> points.addArray().add(point[0]).add(point[1]));
      }
    }

    private static void texts(ArrayNode to, List<String> texts) {
      texts.forEach(to::add);
    }

    /**
     * All of a page, a line a cell (RFC 4180): table, its heading, line, column, value. Tables are
     * 1, 2, ..., plots "plot 1", ... with a line a point; words are of no table.
     */
    static String csv(Page page) {
      StringWriter text = new StringWriter();
      try (CsvWriter csv = CsvWriter.builder().build(text)) {
        csv.writeRecord("table", "heading", "line", "column", "value");
        int tables = 0;
        int plots = 0;
        String heading = "";
        for (Page.Block block : page.blocks()) {
          if (block instanceof Page.Heading named) {
            heading = Cells.harmless(named.text());
          } else if (block instanceof Page.Grid grid) {
            cells(csv, ++tables, heading, grid);
          } else if (block instanceof Page.Chart chart) {
            points(csv, "plot " + ++plots, chart.plot());
          } else if (block instanceof Page.Text words) {
            csv.writeRecord("", heading, "", "words", Cells.harmless(words.text()));
          }
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      return text.toString();
    }

    private static void cells(CsvWriter csv, int table, String heading, Page.Grid grid) {
      for (int line = 0; line < grid.rows().size(); line++) {
        List<String> row = grid.rows().get(line);
        for (int column = 0; column < row.size(); column++) {
          String name = Cells.harmless(grid.header().get(column));
          String value = Cells.harmless(row.get(column));
          csv.writeRecord("" + table, heading, "" + (line + 1), name, value);
        }
      }
    }

    private static void points(CsvWriter csv, String table, Plot plot) {
      String title = Cells.harmless(plot.title());
      int line = 0;
      for (Plot.Series series : plot.series()) {
        for (double[] point : series.points()) {
          String number = "" + ++line;
          csv.writeRecord(table, title, number, "series", Cells.harmless(series.name()));
          csv.writeRecord(table, title, number, Cells.harmless(plot.xLabel()), x(plot, point[0]));
          csv.writeRecord(table, title, number, Cells.harmless(plot.yLabel()), "" + point[1]);
        }
      }
    }

    /** The name at a place of an axis of names, or the number. */
    private static String x(Plot plot, double at) {
      boolean named = at == Math.rint(at) && at >= 0 && at < plot.ticks().size();
      return named ? Cells.harmless(plot.ticks().get((int) at)) : "" + at;
    }
  }
}
