package leadlight.photo.jpeg;

/**
 * Entropy-coded bits up to the next marker (T.81, F.2.2.5): a zero behind 0xFF is stuffing and left
 * out. More bits than there are is damage, and so are whole bytes left over.
 */
final class BitFeed {

  private static final int CHUNK = 1 << 16;

  private final Bytes bytes;
  private final int lastZerosMax;
  private final byte[] chunk = new byte[CHUNK];
  private long chunkAt;
  private int chunkLength;
  private int next;

  private long held;
  private int count;

  /** Of the held bits, how many were made up behind the marker. */
  private int madeUp;

  private boolean atMarker;
  private boolean padded;

  /** Bytes of zeros in a row that were read last. */
  private int zeroRun;

  /**
   * Takes a file.
   *
   * @param lastZerosMax bytes of zeros that a whole picture may end in, before others fill it up
   */
  BitFeed(Bytes bytes, long from, int lastZerosMax) {
    this.bytes = bytes;
    this.lastZerosMax = lastZerosMax;
    seek(from);
  }

  /** Goes on at an offset of the file, with no bit held. */
  void seek(long offset) {
    chunkAt = offset;
    chunkLength = bytes.read(offset, chunk);
    next = 0;
    clear();
  }

  private void clear() {
    held = 0;
    count = 0;
    madeUp = 0;
    zeroRun = 0;
    atMarker = false;
  }

  /** Offset of the next unread byte; behind {@link #end()} that of the marker. */
  long offset() {
    return chunkAt + next;
  }

  /** The next 16 bits, without taking them; zeros behind the end. */
  int peek16() {
    if (count < 16) {
      fill();
    }
    return (int) (held >>> (count - 16)) & 0xffff;
  }

  void skip(int bits) {
    count -= bits;
    if (count < madeUp) {
      throw new JpegDamage("its data end early");
    }
  }

  /** Takes up to 16 bits as a number. */
  int take(int bits) {
    if (bits == 0) {
      return 0;
    }
    int value = peek16() >>> (16 - bits);
    skip(bits);
    return value;
  }

  /** Takes the bits of a value of a category (T.81, F.2.2.1, EXTEND). */
  int takeSigned(int category) {
    int value = take(category);
    return category == 0 || value >> (category - 1) != 0 ? value : value - (1 << category) + 1;
  }

  /** Checks that only padding is left, and stops at the marker. */
  void end() {
    if (count - madeUp >= 8 || !toMarker()) {
      throw new JpegDamage("more data stand in it than its size needs");
    }
    clear();
  }

  /**
   * The same at the end of a scan, where some cameras fill up with bytes of zeros. Of a sector that
   * was lost to zeros the picture took most of them for its own; then those left over are damage.
   * Some encoders pad with a whole byte of ones where no padding is needed.
   */
  void endOfScan() {
    int wholeBytes = (count - madeUp) / 8;
    boolean ones =
        wholeBytes > 0
            && (count - madeUp) % 8 == 0
            && (held >>> madeUp + 8 * (wholeBytes - 1) & 0xff) == 0xff;
    wholeBytes -= ones ? 1 : 0;
    long unread = held >>> madeUp;
    boolean zeros = (unread & (1L << (8 * wholeBytes)) - 1) == 0;
    int padding = wholeBytes;
    while (zeros && !atMarker) {
      int value = data();
      padding += value == 0 ? 1 : 0;
      zeros = value <= 0;
    }
    padded = ones || padding > 0;
    if (!zeros || padding > 0 && zeroRun - padding > lastZerosMax) {
      throw new JpegDamage("more data stand in it than its size needs");
    }
    clear();
  }

  /** Whether {@link #endOfScan()} passed bytes that no picture needs. */
  boolean padded() {
    return padded;
  }

  /** Takes the marker that {@link #end()} stopped at. */
  int takeMarker() {
    next++;
    nextAfterFill();
    int marker = byteOrEnd();
    clear();
    return marker;
  }

  private boolean toMarker() {
    if (atMarker) {
      return true;
    }
    int value = byteOrEnd();
    if (value == 0xff && nextAfterFill() != 0) {
      next--;
      atMarker = true;
    }
    return atMarker;
  }

  private void fill() {
    while (count <= 48) {
      int value = atMarker ? -1 : data();
      if (value < 0) {
        held <<= 8;
        madeUp += 8;
      } else {
        held = held << 8 | value;
      }
      count += 8;
    }
  }

  /** The next byte of data; -1 where a marker or the end of the file stands. */
  private int data() {
    int value = byteOrEnd();
    if (value != 0xff) {
      atMarker = value < 0;
      zeroRun = value > 0 ? 0 : value == 0 ? zeroRun + 1 : zeroRun;
      return value;
    }
    int follower = nextAfterFill();
    if (follower == 0) {
      next++;
      zeroRun = 0;
      return 0xff;
    }
    next--;
    atMarker = true;
    return -1;
  }

  /** The byte behind a 0xFF and its fill bytes, without taking it; the 0xFF is the last taken. */
  private int nextAfterFill() {
    int value = byteOrEnd();
    while (value == 0xff) {
      value = byteOrEnd();
    }
    if (value >= 0) {
      next--;
    }
    return value;
  }

  private int byteOrEnd() {
    if (next == chunkLength) {
      // One byte is kept, so that going back to the 0xFF of a marker stays within the chunk.
      int kept = chunkLength == 0 ? 0 : 1;
      chunkAt += chunkLength - kept;
      chunkLength = bytes.read(chunkAt, chunk);
      next = kept;
      if (chunkLength <= kept) {
        chunkLength = kept;
        return -1;
      }
    }
    return chunk[next++] & 0xff;
  }
}
