package leadlight.photo.jpeg;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/**
 * A scan header (T.81, B.2.3).
 *
 * @param components those that it sends, with their tables
 * @param from first coefficient, by its place in the data
 * @param to last coefficient
 * @param high bits left before it; 0 in a first scan
 * @param low bits left after it
 */
record Scan(List<Part> components, int from, int to, int high, int low) {

  private static final int BLOCKS_OF_A_UNIT_MAX = 10;

  /** A component with the numbers of its tables. */
  record Part(Component component, int dcTable, int acTable) {}

  static Scan of(Frame frame, ByteBuffer body) {
    int count = body.limit() == 0 ? 0 : body.get(0) & 0xff;
    if (count < 1 || count > frame.components().size() || body.limit() != 4 + 2 * count) {
      throw new JpegDamage("the header of a scan says what no JPEG can be");
    }
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int tables = body.get(2 + 2 * i) & 0xff;
      parts.add(new Part(frame.component(body.get(1 + 2 * i) & 0xff), tables >> 4 & 3, tables & 3));
    }
    int at = 1 + 2 * count;
    int bits = body.get(at + 2) & 0xff;
    Scan scan = new Scan(parts, body.get(at) & 0xff, body.get(at + 1) & 0xff, bits >> 4, bits & 15);
    scan.check(frame.progressive());
    return scan;
  }

  boolean interleaved() {
    return components.size() > 1;
  }

  private void check(boolean progressive) {
    int blocks =
        components.stream()
            .mapToInt(p -> p.component.sidewaysFactor * p.component.downFactor)
            .sum();
    long different = components.stream().map(Part::component).distinct().count();
    boolean fair =
        !progressive
            || (from <= to
                && to < 64
                && low <= 13
                && (from == 0 ? to == 0 : !interleaved())
                && (high == 0 || high == low + 1));
    if (!fair
        || different < components.size()
        || (interleaved() && blocks > BLOCKS_OF_A_UNIT_MAX)) {
      throw new JpegDamage("the header of a scan says what no JPEG can be");
    }
    for (Part part : components) {
      sent(part.component, progressive);
    }
  }

  /** Each bit of each coefficient is sent once and in order. */
  private void sent(Component component, boolean progressive) {
    int first = progressive ? from : 0;
    int last = progressive ? to : 63;
    int before = progressive && high > 0 ? high : -1;
    for (int k = first; k <= last; k++) {
      if (component.bitsLeft[k] != before || (k > 0 && progressive && component.bitsLeft[0] < 0)) {
        throw new JpegDamage("a scan of it is missing or stands twice");
      }
      component.bitsLeft[k] = progressive ? low : 0;
    }
  }
}
