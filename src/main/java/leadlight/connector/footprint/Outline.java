package leadlight.connector.footprint;

import java.util.Optional;
import java.util.stream.Stream;
import leadlight.connector.footprint.Footprint.Box;
import leadlight.connector.footprint.SExpression.Branch;

/**
 * The box around drawn lines: exact for polygons, lines and circles; arcs by their given points.
 */
final class Outline {

  private Outline() {}

  /** The box around all that a list draws. */
  static Optional<Box> of(Branch drawing) {
    return drawing.items().stream()
        .filter(Branch.class::isInstance)
        .flatMap(item -> box((Branch) item).stream())
        .reduce(Box::join);
  }

  /** The box around all that a footprint draws on a layer. */
  static Optional<Box> onLayer(Branch footprint, String layer) {
    return footprint.items().stream()
        .filter(Branch.class::isInstance)
        .map(Branch.class::cast)
        .filter(item -> item.branch("layer").filter(l -> l.words().contains(layer)).isPresent())
        .flatMap(item -> box(item).stream())
        .reduce(Box::join);
  }

  private static Optional<Box> box(Branch item) {
    return switch (item.head().replaceFirst("^(fp|gr)_", "")) {
      case "line", "rect", "arc", "curve", "poly" -> around(points(item));
      case "circle" -> item.branch("center").flatMap(c -> item.branch("end").map(e -> disc(c, e)));
      default -> Optional.empty();
    };
  }

  private static Stream<Branch> points(Branch item) {
    Stream<Branch> corners = item.branch("pts").stream().flatMap(pts -> pts.branches("xy"));
    Stream<Branch> ends =
        Stream.of("start", "mid", "end").flatMap(head -> item.branch(head).stream());
    return Stream.concat(corners, ends);
  }

  private static Optional<Box> around(Stream<Branch> points) {
    return points
        .map(p -> new Box(p.number(1), p.number(2), p.number(1), p.number(2)))
        .reduce(Box::join);
  }

  private static Box disc(Branch centre, Branch end) {
    double x = centre.number(1);
    double y = centre.number(2);
    double r = Math.hypot(end.number(1) - x, end.number(2) - y);
    return new Box(x - r, y - r, x + r, y + r);
  }
}
