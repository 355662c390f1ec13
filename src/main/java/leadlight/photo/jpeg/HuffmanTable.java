package leadlight.photo.jpeg;

import java.util.Arrays;
import java.util.HexFormat;

/** A Huffman table (T.81, annex C). */
final class HuffmanTable {

  private static final int LOOK = 9;

  /** Code length << 8 | symbol by the next nine bits; 0 where the code is longer. */
  private final short[] quick = new short[1 << LOOK];

  private final int[] endOfLength = new int[18];
  private final int[] indexOffset = new int[17];
  private final int[] symbols;

  /**
   * Builds a table.
   *
   * @param counts codes of each length, 1 to 16
   * @param symbols in the order of their codes
   * @throws JpegDamage if the codes do not fit or a symbol stands twice
   */
  HuffmanTable(int[] counts, int[] symbols) {
    this.symbols = symbols.clone();
    if (Arrays.stream(symbols).distinct().count() != symbols.length) {
      throw new JpegDamage("a symbol stands twice in a table of codes");
    }
    int code = 0;
    int index = 0;
    for (int length = 1; length <= 16; length++) {
      indexOffset[length] = index - code;
      for (int i = 0; i < counts[length - 1]; i++) {
        quick(code++, length, symbols[index++]);
      }
      if (code > 1 << length) {
        throw new JpegDamage("a table of codes holds more than fit");
      }
      endOfLength[length] = code;
      code <<= 1;
    }
  }

  private void quick(int code, int length, int symbol) {
    if (length <= LOOK && code < 1 << length) {
      int from = code << (LOOK - length);
      Arrays.fill(quick, from, from + (1 << (LOOK - length)), (short) (length << 8 | symbol));
    }
  }

  int next(BitFeed bits) {
    int peeked = bits.peek16();
    int known = quick[peeked >>> (16 - LOOK)];
    if (known != 0) {
      bits.skip(known >> 8);
      return known & 0xff;
    }
    for (int length = LOOK + 1; length <= 16; length++) {
      int code = peeked >>> (16 - length);
      if (code < endOfLength[length] && code + indexOffset[length] >= 0) {
        bits.skip(length);
        return symbols[code + indexOffset[length]];
      }
    }
    throw new JpegDamage("a code stands in it that its tables do not have");
  }

  /**
   * The tables of T.81, K.3.3, which streams without tables of their own mean.
   *
   * @param ac true for coefficients, false for the blocks' means
   * @param chroma true for the colour's
   */
  static HuffmanTable usual(boolean ac, boolean chroma) {
    String counts = ac ? (chroma ? AC1_COUNTS : AC0_COUNTS) : (chroma ? DC1_COUNTS : DC0_COUNTS);
    return new HuffmanTable(
        bytes(counts), ac ? bytes(chroma ? AC1 : AC0) : bytes("000102030405060708090a0b"));
  }

  private static int[] bytes(String hex) {
    byte[] parsed = HexFormat.of().parseHex(hex);
    int[] values = new int[parsed.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = parsed[i] & 0xff;
    }
    return values;
  }

  private static final String DC0_COUNTS = "00010501010101010100000000000000";
  private static final String DC1_COUNTS = "00030101010101010101010000000000";
  private static final String AC0_COUNTS = "0002010303020403050504040000017d";
  private static final String AC1_COUNTS = "00020102040403040705040400010277";
  private static final String AC0 =
      "01020300041105122131410613516107227114328191a1082342b1c11552d1f02433627282090a16"
          + "1718191a25262728292a3435363738393a434445464748494a535455565758595a63646566676869"
          + "6a737475767778797a838485868788898a92939495969798999aa2a3a4a5a6a7a8a9aab2b3b4b5b6"
          + "b7b8b9bac2c3c4c5c6c7c8c9cad2d3d4d5d6d7d8d9dae1e2e3e4e5e6e7e8e9eaf1f2f3f4f5f6f7f8"
          + "f9fa";
  private static final String AC1 =
      "000102031104052131061241510761711322328108144291a1b1c109233352f0156272d10a162434"
          + "e125f11718191a262728292a35363738393a434445464748494a535455565758595a636465666768"
          + "696a737475767778797a82838485868788898a92939495969798999aa2a3a4a5a6a7a8a9aab2b3b4"
          + "b5b6b7b8b9bac2c3c4c5c6c7c8c9cad2d3d4d5d6d7d8d9dae2e3e4e5e6e7e8e9eaf2f3f4f5f6f7f8"
          + "f9fa";
}
