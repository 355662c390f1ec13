package leadlight.photo.jpeg;

import java.util.Arrays;
import java.util.List;

/** Decodes the blocks of one scan, interval by interval (T.81, E.2, F.2, G.2). */
final class ScanWalk {

  private static final int MARKER_RST0 = 0xd0;

  private final Frame frame;
  private final Scan scan;
  private final Tables tables;
  private final BitFeed bits;
  private final int[] before = new int[4];
  private final int[] values = new int[64];
  private int blocksToSkip;

  /** Tables by class and number, and the units between restart markers; 0 for none. */
  record Tables(HuffmanTable[] dc, HuffmanTable[] ac, int interval) {}

  ScanWalk(Frame frame, Scan scan, Tables tables, BitFeed bits) {
    this.frame = frame;
    this.scan = scan;
    this.tables = tables;
    this.bits = bits;
  }

  /** Takes all units that the frame's size asks for; the feed then stands at a marker. */
  void run() {
    Component first = scan.components().get(0).component();
    int wide = scan.interleaved() ? frame.unitsWide() : first.blocksWide;
    int units = wide * (scan.interleaved() ? frame.unitsHigh() : first.blocksHigh);
    for (int unit = 0; unit < units; unit++) {
      if (tables.interval > 0 && unit > 0 && unit % tables.interval == 0) {
        restart(unit / tables.interval - 1);
      }
      unit(unit % wide, unit / wide);
    }
    noneSkipped();
    bits.endOfScan();
  }

  private void noneSkipped() {
    if (blocksToSkip > 0) {
      throw new JpegDamage("its data say more blocks than its size needs");
    }
  }

  private void restart(int number) {
    noneSkipped();
    bits.end();
    if (bits.takeMarker() != MARKER_RST0 + (number & 7)) {
      throw new JpegDamage("a restart marker is missing or out of turn");
    }
    Arrays.fill(before, 0);
  }

  private void unit(int x, int y) {
    List<Scan.Part> parts = scan.components();
    for (int i = 0; i < parts.size(); i++) {
      Component component = parts.get(i).component();
      if (!scan.interleaved()) {
        block(i, y * component.filledWide + x);
        continue;
      }
      for (int v = 0; v < component.downFactor; v++) {
        int row = (y * component.downFactor + v) * component.filledWide;
        for (int h = 0; h < component.sidewaysFactor; h++) {
          block(i, row + x * component.sidewaysFactor + h);
        }
      }
    }
  }

  private void block(int part, int block) {
    Component component = scan.components().get(part).component();
    if (!frame.progressive()) {
      mean(part, component, block, 0);
      sequential(scan.components().get(part), block);
    } else if (scan.from() == 0) {
      if (scan.high() == 0) {
        mean(part, component, block, scan.low());
      } else if (bits.take(1) != 0) {
        component.rowMeans[block * 8] |= (short) (1 << scan.low());
      }
    } else if (scan.high() == 0) {
      firstBits(scan.components().get(part), block);
    } else {
      nextBits(scan.components().get(part), block);
    }
  }

  private void mean(int part, Component component, int block, int low) {
    int category = table(tables.dc, scan.components().get(part).dcTable()).next(bits);
    if (category > 11) {
      throw new JpegDamage("a value stands in it that is too large");
    }
    before[part] += bits.takeSigned(category);
    if (Math.abs(before[part]) > 1 << 14) {
      throw new JpegDamage("a value stands in it that is too large");
    }
    component.note(block, 0, before[part] << low);
  }

  private void sequential(Scan.Part part, int block) {
    HuffmanTable table = table(tables.ac, part.acTable());
    boolean zeros = false;
    Arrays.fill(values, 0);
    values[0] = part.component().rowMeans[block * 8];
    for (int k = 1; k < 64; k++) {
      int symbol = table.next(bits);
      int category = symbol & 15;
      int run = symbol >> 4;
      if (category == 0 && run != 15) {
        // Sixteen zeros are only coded where something else follows.
        if (run > 0 || zeros) {
          throw new JpegDamage("a code stands in it that its kind does not have");
        }
        break;
      }
      zeros = category == 0;
      k = step(k, run, category);
      int value = bits.takeSigned(category);
      values[Component.NATURAL[k]] = value;
      part.component().note(block, k, value);
    }
    if (part.component().range().isBeyond(values)) {
      throw new JpegDamage("a block of it holds what no picture can");
    }
  }

  private static int step(int k, int run, int category) {
    if (k + run > 63 || category > 10) {
      throw new JpegDamage("a block of it is longer than a block can be");
    }
    return k + run;
  }

  private void firstBits(Scan.Part part, int block) {
    if (blocksToSkip > 0) {
      blocksToSkip--;
      return;
    }
    HuffmanTable table = table(tables.ac, part.acTable());
    for (int k = scan.from(); k <= scan.to(); k++) {
      int symbol = table.next(bits);
      int category = symbol & 15;
      int run = symbol >> 4;
      if (category == 0 && run != 15) {
        blocksToSkip = (1 << run) + bits.take(run) - 1;
        return;
      }
      k = within(step(k, run, category));
      if (category > 0) {
        part.component().other[block] |= 1L << k;
        part.component().note(block, k, bits.takeSigned(category) << scan.low());
      }
    }
  }

  private int within(int k) {
    if (k > scan.to()) {
      throw new JpegDamage("a block of it is longer than a block can be");
    }
    return k;
  }

  private void nextBits(Scan.Part part, int block) {
    int k = scan.from();
    if (blocksToSkip == 0) {
      HuffmanTable table = table(tables.ac, part.acTable());
      while (k <= scan.to()) {
        int symbol = table.next(bits);
        int category = symbol & 15;
        int run = symbol >> 4;
        if (category > 1) {
          throw new JpegDamage("a code stands in it that its kind does not have");
        }
        if (category == 0 && run != 15) {
          blocksToSkip = (1 << run) + bits.take(run);
          break;
        }
        boolean negative = category == 1 && bits.take(1) == 0;
        k = correct(part.component(), block, k, run);
        if (category == 1) {
          within(k);
          part.component().other[block] |= 1L << k;
          part.component().note(block, k, (negative ? -1 : 1) << scan.low());
        }
        k++;
      }
    }
    if (blocksToSkip > 0) {
      correct(part.component(), block, k, Integer.MAX_VALUE);
      blocksToSkip--;
    }
  }

  /** Refines what is known on the way past {@code zeros} others; where it stopped. */
  private int correct(Component component, int block, int from, int zeros) {
    int left = zeros;
    int k = from;
    for (; k <= scan.to(); k++) {
      if ((component.other[block] & 1L << k) == 0) {
        if (left-- == 0) {
          break;
        }
      } else if (bits.take(1) != 0) {
        component.grow(block, k, 1 << scan.low());
      }
    }
    return k;
  }

  private static HuffmanTable table(HuffmanTable[] tables, int number) {
    if (tables[number] == null) {
      throw new JpegDamage("a table of codes is missing");
    }
    return tables[number];
  }
}
