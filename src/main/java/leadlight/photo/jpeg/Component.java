package leadlight.photo.jpeg;

import java.util.Arrays;

/**
 * One colour channel of a frame and, of each of its blocks, the coefficients that make the mean of
 * each row of pixels: those without sideways change.
 */
final class Component {

  /** Place of a coefficient, row * 8 + column, by its place in the data (T.81, figure 5). */
  static final int[] NATURAL = {
    0, 1, 8, 16, 9, 2, 3, 10, 17, 24, 32, 25, 18, 11, 4, 5, 12, 19, 26, 33, 40, 48, 41, 34, 27, 20,
    13, 6, 7, 14, 21, 28, 35, 42, 49, 56, 57, 50, 43, 36, 29, 22, 15, 23, 30, 37, 44, 51, 58, 59,
    52, 45, 38, 31, 39, 46, 53, 60, 61, 54, 47, 55, 62, 63
  };

  private static final int SIZE = 8;

  final int id;
  final int sidewaysFactor;
  final int downFactor;
  final int quantTable;

  /** Blocks that the picture needs, and with those that fill up its last units. */
  int blocksWide;

  int blocksHigh;
  int filledWide;
  int filledHigh;

  /** Eight values a block, in rows of filledWide. */
  short[] rowMeans = {};

  /** In a progressive picture: which coefficients of a block are known to be other than zero. */
  long[] other = {};

  /** Bits not yet sent of each coefficient; -1 before the first. */
  final int[] bitsLeft = new int[64];

  /** The divisors in force when it was first sent, as they stand in the data. */
  private int[] divisors = {};

  private BlockRange range;

  Component(int id, int sidewaysFactor, int downFactor, int quantTable) {
    this.id = id;
    this.sidewaysFactor = sidewaysFactor;
    this.downFactor = downFactor;
    this.quantTable = quantTable;
    Arrays.fill(bitsLeft, -1);
  }

  void layOut(Frame frame) {
    blocksWide = ceil(frame.width() * sidewaysFactor, SIZE * frame.mostSideways());
    blocksHigh = ceil(frame.height() * downFactor, SIZE * frame.mostDown());
    filledWide = frame.unitsWide() * sidewaysFactor;
    filledHigh = frame.unitsHigh() * downFactor;
  }

  void makeRoom(boolean progressive) {
    int blocks = filledWide * filledHigh;
    rowMeans = new short[blocks * SIZE];
    other = new long[progressive ? blocks : 0];
  }

  int[] divisors() {
    return divisors;
  }

  BlockRange range() {
    return range;
  }

  void divideBy(int[] table, JpegLimits.Range limits) {
    if (divisors.length == 0) {
      divisors = table;
      range = new BlockRange(table, limits);
    }
  }

  /** Notes a coefficient if it is one of those kept. */
  void note(int block, int place, int value) {
    int natural = NATURAL[place];
    if ((natural & 7) == 0) {
      rowMeans[block * SIZE + (natural >> 3)] = (short) value;
    }
  }

  /** Adds to the size of a coefficient that is other than zero, if it is one of those kept. */
  void grow(int block, int place, int by) {
    int natural = NATURAL[place];
    if ((natural & 7) == 0) {
      int at = block * SIZE + (natural >> 3);
      rowMeans[at] += (short) (rowMeans[at] < 0 ? -by : by);
    }
  }

  private static int ceil(int value, int by) {
    return (value + by - 1) / by;
  }
}
