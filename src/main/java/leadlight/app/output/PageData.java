package leadlight.app.output;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import leadlight.data.Cells;
import leadlight.quality.Page;
import leadlight.quality.Plot;

/** A page as data: its words, tables and the points of its plots. */
final class PageData {

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
   * All of a page, a line a cell (RFC 4180): table, its heading, line, column, value. Tables are 1,
   * 2, ..., plots "plot 1", ... with a line a point; words are of no table.
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
