package leadlight.photo.limit;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The entropy-coded units of a JPEG of one baseline scan without restart markers, by their bits
 * (T.81, F.2): enough to lose one, double one or exchange two, which keeps every code whole.
 */
final class CodedUnits {

  private final byte[] file;
  private final int dataAt;
  private final int dataEnd;
  private final BitSet bits = new BitSet();

  /** Where each unit begins, in bits; behind the last one its end. */
  private final List<Integer> starts = new ArrayList<>();

  /** Symbol by length << 16 | code, of each table by its class and number. */
  private final Map<Integer, Map<Integer, Integer>> codes = new HashMap<>();

  private int unitsWide;
  private int unitsHigh;

  /** Blocks of a unit, each as its two tables. */
  private final List<int[]> blocks = new ArrayList<>();

  private final Map<Integer, Integer> blocksOf = new HashMap<>();
  private int at;

  CodedUnits(byte[] file) {
    this.file = file.clone();
    int from = 2;
    int scan = 0;
    while (scan == 0) {
      int marker = file[from + 1] & 0xff;
      int length = two(from + 2);
      switch (marker) {
        case 0xc4 -> codes(from + 4, from + 2 + length);
        case 0xc0, 0xc1 -> frame(from + 4);
        case 0xda -> scan = scan(from + 4);
        default -> {}
      }
      from += 2 + length;
    }
    dataAt = from;
    int end = from;
    int count = 0;
    while (file[end] != (byte) 0xff || file[end + 1] == 0) {
      for (int i = 7; i >= 0; i--) {
        bits.set(count++, (file[end] >> i & 1) != 0);
      }
      end += file[end] == (byte) 0xff ? 2 : 1;
    }
    dataEnd = end;
    for (int unit = 0; unit < unitsWide * unitsHigh; unit++) {
      starts.add(at);
      blocks.forEach(tables -> block(tables[0], tables[1]));
    }
    starts.add(at);
  }

  private int two(int offset) {
    return (file[offset] & 0xff) << 8 | file[offset + 1] & 0xff;
  }

  private void codes(int from, int to) {
    int next = from;
    while (next < to) {
      Map<Integer, Integer> table = new HashMap<>();
      codes.put(file[next] & 0xff, table);
      int symbol = next + 17;
      int code = 0;
      for (int length = 1; length <= 16; length++, code <<= 1) {
        for (int i = 0; i < file[next + length]; i++) {
          table.put(length << 16 | code++, file[symbol++] & 0xff);
        }
      }
      next = symbol;
    }
  }

  private void frame(int from) {
    int wide = 1;
    int high = 1;
    for (int c = 0; c < file[from + 5]; c++) {
      int factors = file[from + 7 + 3 * c];
      wide = Math.max(wide, factors >> 4);
      high = Math.max(high, factors & 15);
      blocksOf.put((int) file[from + 6 + 3 * c], (factors >> 4) * (factors & 15));
    }
    unitsWide = (two(from + 3) + 8 * wide - 1) / (8 * wide);
    unitsHigh = (two(from + 1) + 8 * high - 1) / (8 * high);
  }

  private int scan(int from) {
    for (int c = 0; c < file[from]; c++) {
      int tables = file[from + 2 + 2 * c];
      for (int i = 0; i < blocksOf.get((int) file[from + 1 + 2 * c]); i++) {
        blocks.add(new int[] {tables >> 4, 16 + (tables & 15)});
      }
    }
    return from;
  }

  private void block(int means, int others) {
    int category = symbol(means);
    at += category;
    for (int k = 1; k < 64; k++) {
      int symbol = symbol(others);
      at += symbol & 15;
      k += symbol == 0 ? 63 : symbol >> 4;
    }
  }

  private int symbol(int table) {
    int code = 0;
    for (int length = 1; length <= 16; length++) {
      code = code << 1 | (bits.get(at++) ? 1 : 0);
      Integer symbol = codes.get(table).get(length << 16 | code);
      if (symbol != null) {
        return symbol;
      }
    }
    throw new IllegalArgumentException("no code at bit " + at);
  }

  int wide() {
    return unitsWide;
  }

  int high() {
    return unitsHigh;
  }

  /** The file with these units in place of its own. */
  byte[] with(List<Integer> units) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(file, 0, dataAt);
    int held = 0;
    int count = 0;
    for (int unit : units) {
      for (int bit = starts.get(unit); bit < starts.get(unit + 1); bit++) {
        held = held << 1 | (bits.get(bit) ? 1 : 0);
        if (++count % 8 == 0) {
          put(out, held);
        }
      }
    }
    for (; count % 8 != 0; count++) {
      held = held << 1 | 1;
      if (count % 8 == 7) {
        put(out, held);
      }
    }
    out.write(file, dataEnd, file.length - dataEnd);
    return out.toByteArray();
  }

  private static void put(ByteArrayOutputStream out, int value) {
    out.write(value);
    if ((value & 0xff) == 0xff) {
      out.write(0);
    }
  }

  List<Integer> all() {
    List<Integer> units = new ArrayList<>();
    for (int i = 0; i < unitsWide * unitsHigh; i++) {
      units.add(i);
    }
    return units;
  }

  boolean isWhole() {
    return Arrays.equals(with(all()), file);
  }
}
