package leadlight.connector.footprint;

import java.util.List;
import java.util.Optional;
import leadlight.connector.Mm;
import leadlight.connector.footprint.Footprint.Box;
import leadlight.connector.footprint.Footprint.Kind;
import leadlight.connector.footprint.Footprint.Pad;
import leadlight.connector.footprint.SExpression.Branch;

/**
 * One {@code (pad NAME TYPE SHAPE (at X Y [ROT]) (size W H) [(drill ..)] (layers ..))}: size and
 * drill stand there before rotation; rotation is counter-clockwise as seen, with y down; the copper
 * of a pad with a drill offset lies beside its {@code at}.
 */
final class PadReader {

  private final Branch pad;
  private final Branch at;
  private final double rotationDeg;

  PadReader(Branch pad) {
    this.pad = pad;
    this.at = need("at");
    this.rotationDeg = at.number(3, 0);
  }

  String type() {
    return pad.word(2);
  }

  /** Layer names; a pad without {@code layers} has none. */
  List<String> layers() {
    return pad.branch("layers").map(Branch::words).orElse(List.of());
  }

  boolean copper() {
    return layers().stream().anyMatch(layer -> layer.endsWith(".Cu"));
  }

  boolean frontCopper() {
    List<String> layers = layers();
    return layers.contains("F.Cu") || layers.contains("*.Cu") || layers.contains("F&B.Cu");
  }

  Pad read(Kind kind) {
    Box own = rotated(shape().orElseGet(this::plainBox));
    double x = at.number(1) + own.middleX();
    double y = at.number(2) + own.middleY();
    String name = pad.word(1).strip();
    return new Pad(
        name.isEmpty() ? List.of() : List.of(name),
        kind,
        Mm.tidy(x),
        Mm.tidy(y),
        Mm.tidy(own.widthMm()),
        Mm.tidy(own.heightMm()),
        Math.abs(Math.IEEEremainder(rotationDeg, 90)) < 0.01,
        kind == Kind.PLATED_HOLE ? drill() : Optional.empty());
  }

  /** The pad's box before rotation, its {@code at} at 0. */
  private Box plainBox() {
    Branch size = need("size");
    double w = positive(size, 1);
    double h = positive(size, 2);
    Branch offset = pad.branch("drill").flatMap(d -> d.branch("offset")).orElse(null);
    double dx = offset == null ? 0 : offset.number(1);
    double dy = offset == null ? 0 : offset.number(2);
    return new Box(dx - w / 2, dy - h / 2, dx + w / 2, dy + h / 2);
  }

  /** The box around a custom shape's own drawing; its size is that of the anchor alone. */
  private Optional<Box> shape() {
    if (!pad.word(3).equals("custom")) {
      return Optional.empty();
    }
    return pad.branch("primitives").flatMap(Outline::of).map(drawn -> drawn.join(plainBox()));
  }

  private Optional<Box> drill() {
    Optional<Branch> drill = pad.branch("drill");
    if (drill.isEmpty()) {
      return Optional.empty();
    }
    boolean oval = drill.get().words().contains("oval");
    int first = oval ? 2 : 1;
    if (drill.get().words().size() < first) {
      return Optional.empty();
    }
    double w = positive(drill.get(), first);
    double h = oval ? drill.get().number(first + 1, w) : w;
    return Optional.of(rotated(new Box(-w / 2, -h / 2, w / 2, h / 2)));
  }

  private Box rotated(Box box) {
    double cos = Math.cos(Math.toRadians(rotationDeg));
    double sin = Math.sin(Math.toRadians(rotationDeg));
    double x = box.middleX() * cos + box.middleY() * sin;
    double y = -box.middleX() * sin + box.middleY() * cos;
    double w = Math.abs(box.widthMm() * cos) + Math.abs(box.heightMm() * sin);
    double h = Math.abs(box.widthMm() * sin) + Math.abs(box.heightMm() * cos);
    return new Box(x - w / 2, y - h / 2, x + w / 2, y + h / 2);
  }

  private Branch need(String head) {
    return pad.branch(head)
        .orElseThrow(() -> new FootprintError(pad.place(), "this pad has no " + head));
  }

  private static double positive(Branch of, int index) {
    double value = of.number(index);
    if (value <= 0) {
      throw new FootprintError(of.place(), of.head() + " must be above 0, is " + value);
    }
    return value;
  }
}
