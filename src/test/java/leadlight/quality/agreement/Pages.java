package leadlight.quality.agreement;

import java.util.List;
import java.util.stream.Collectors;
import leadlight.quality.Page;
import leadlight.quality.Plot;

/** Looks things up on a page. */
public final class Pages {

  private Pages() {}

  /** The lines of the first table whose header begins so. */
  public static List<List<String>> grid(Page page, String first) {
    return page.blocks().stream()
        .filter(Page.Grid.class::isInstance)
        .map(Page.Grid.class::cast)
        .filter(grid -> grid.header().get(0).equals(first))
        .findFirst()
        .map(Page.Grid::rows)
        .orElse(List.of());
  }

  /** The line of a table that begins with these cells. */
  public static List<String> line(Page page, String first, String... begin) {
    return grid(page, first).stream()
        .filter(row -> row.subList(0, begin.length).equals(List.of(begin)))
        .findFirst()
        .orElseThrow();
  }

  public static String words(Page page) {
    return page.blocks().stream()
        .filter(Page.Text.class::isInstance)
        .map(block -> ((Page.Text) block).text())
        .collect(Collectors.joining("\n"));
  }

  public static String strong(Page page) {
    return page.blocks().stream()
        .filter(block -> block instanceof Page.Text text && text.strong())
        .map(block -> ((Page.Text) block).text())
        .collect(Collectors.joining("\n"));
  }

  public static List<String> headings(Page page) {
    return page.blocks().stream()
        .filter(Page.Heading.class::isInstance)
        .map(block -> ((Page.Heading) block).text())
        .toList();
  }

  public static List<Plot> plots(Page page) {
    return page.blocks().stream()
        .filter(Page.Chart.class::isInstance)
        .map(block -> ((Page.Chart) block).plot())
        .toList();
  }

  public static List<Page.Picture> pictures(Page page) {
    return page.blocks().stream()
        .filter(Page.Pictures.class::isInstance)
        .flatMap(block -> ((Page.Pictures) block).pictures().stream())
        .toList();
  }
}
