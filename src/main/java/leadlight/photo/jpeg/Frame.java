package leadlight.photo.jpeg;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/**
 * A frame header (T.81, B.2.2).
 *
 * @param progressive true for T.81, annex G; else sequential
 * @param components one for grey, three for colour
 */
record Frame(boolean progressive, int width, int height, List<Component> components) {

  private static final int MOST_FACTOR = 4;

  static Frame of(boolean progressive, ByteBuffer body) {
    if (body.limit() < 6 || body.limit() < 6 + 3 * (body.get(5) & 0xff)) {
      throw new JpegDamage("its header is cut short");
    }
    List<Component> components = new ArrayList<>();
    for (int i = 0; i < (body.get(5) & 0xff); i++) {
      int at = 6 + 3 * i;
      int factors = body.get(at + 1) & 0xff;
      Component component =
          new Component(body.get(at) & 0xff, factors >> 4, factors & 15, body.get(at + 2) & 0xff);
      if (factors >> 4 < 1
          || factors >> 4 > MOST_FACTOR
          || (factors & 15) < 1
          || (factors & 15) > MOST_FACTOR
          || component.quantTable > 3) {
        throw new JpegDamage("its header says what no JPEG can be");
      }
      components.add(component);
    }
    Frame frame =
        new Frame(progressive, body.getShort(3) & 0xffff, body.getShort(1) & 0xffff, components);
    components.forEach(component -> component.layOut(frame));
    return frame;
  }

  int mostSideways() {
    return components.stream().mapToInt(c -> c.sidewaysFactor).max().orElse(1);
  }

  int mostDown() {
    return components.stream().mapToInt(c -> c.downFactor).max().orElse(1);
  }

  int unitsWide() {
    return (width + 8 * mostSideways() - 1) / (8 * mostSideways());
  }

  int unitsHigh() {
    return (height + 8 * mostDown() - 1) / (8 * mostDown());
  }

  Component component(int id) {
    return components.stream()
        .filter(component -> component.id == id)
        .findFirst()
        .orElseThrow(() -> new JpegDamage("a scan names a colour that its header does not have"));
  }
}
