package leadlight.photo.header;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlight.photo.limit.PhotoLimits;

/**
 * The directories of a TIFF structure (TIFF 6.0, section 2; BigTIFF) one after the other, each read
 * once, so that neither loops nor nesting cost time or depth. Values are read when asked for.
 */
final class Directories {

  private static final PhotoLimits.Chain LIMITS = PhotoLimits.standard().directories();

  /** Bytes of a value by its type, 1 to 18; 0 for types that do not exist. */
  private static final int[] SIZES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4, 0, 0, 8, 8, 8};

  private static final int TEXT = 2;
  private static final int UNDEFINED = 7;

  /** Bytes by offset; shorter where the file ends. */
  interface Piece {
    ByteBuffer upTo(long offset, int length);
  }

  /** A structure that is none, or that leads out of the file. */
  static final class Broken extends RuntimeException {

    private static final long serialVersionUID = 1;
  }

  private final Piece file;
  private final ByteOrder order;
  private final boolean big;
  private final List<Directory> chain = new ArrayList<>();

  private Directories(Piece file) {
    this.file = file;
    ByteBuffer head = need(0, 8, ByteOrder.BIG_ENDIAN);
    order = head.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
    int version = head.order(order).getShort(2);
    big = version == 43;
    if (head.get(0) != head.get(1) || (!big && version != 42)) {
      throw new Broken();
    }
    Set<Long> seen = new HashSet<>();
    long at = offset(big ? 8 : 4);
    while (at != 0) {
      if (!seen.add(at) || seen.size() > LIMITS.chainMax().value()) {
        throw new Broken();
      }
      at = read(at).map(this::offset).orElse(0L);
    }
  }

  /**
   * Reads the chain of directories.
   *
   * @throws Broken if it is none, has no end, or leads out of the file
   */
  static List<Directory> chain(Piece file) {
    return new Directories(file).chain;
  }

  /** Reads the directory at an offset into the chain; where the offset of the next one stands. */
  private Optional<Long> read(long at) {
    int countBytes = big ? 8 : 2;
    ByteBuffer counted = need(at, countBytes, order);
    long count = big ? counted.getLong(0) : counted.getShort(0) & 0xffff;
    int size = big ? 20 : 12;
    if (count < 0 || count > LIMITS.entriesMax().value()) {
      throw new Broken();
    }
    ByteBuffer entries = need(at + countBytes, (int) count * size, order);
    Map<Integer, Entry> byTag = new HashMap<>();
    for (int i = 0; i < count; i++) {
      int from = i * size;
      int tag = entries.getShort(from) & 0xffff;
      int type = entries.getShort(from + 2) & 0xffff;
      long values = big ? entries.getLong(from + 4) : entries.getInt(from + 4) & 0xffffffffL;
      byTag.putIfAbsent(tag, new Entry(type, values, at + countBytes + from + (big ? 12 : 8)));
    }
    chain.add(new Directory(byTag));
    long next = at + countBytes + (long) count * size;
    // Some writers leave the last offset out at the end of the file.
    return file.upTo(next, big ? 8 : 4).remaining() < (big ? 8 : 4)
        ? Optional.empty()
        : Optional.of(next);
  }

  private long offset(long at) {
    ByteBuffer bytes = need(at, big ? 8 : 4, order);
    return big ? bytes.getLong(0) : bytes.getInt(0) & 0xffffffffL;
  }

  private ByteBuffer need(long at, int length, ByteOrder by) {
    if (at < 0) {
      throw new Broken();
    }
    ByteBuffer bytes = file.upTo(at, length);
    if (bytes.remaining() < length) {
      throw new Broken();
    }
    return bytes.order(by);
  }

  /** What a tag is said to hold, and where its value or its value's offset stands. */
  private record Entry(int type, long count, long place) {}

  /** One directory. */
  final class Directory {

    private final Map<Integer, Entry> byTag;

    private Directory(Map<Integer, Entry> byTag) {
      this.byTag = byTag;
    }

    boolean has(int tag) {
      return byTag.containsKey(tag);
    }

    /** The first number of a tag. */
    long number(int tag, long otherwise) {
      long[] numbers = numbers(tag);
      return numbers.length == 0 ? otherwise : numbers[0];
    }

    /** All whole numbers of a tag, without a sign; none if it is not there or holds others. */
    long[] numbers(int tag) {
      Entry entry = byTag.get(tag);
      if (entry == null || entry.type >= SIZES.length || entry.type == TEXT) {
        return new long[0];
      }
      ByteBuffer bytes = bytes(entry);
      long[] numbers = new long[bytes.limit() / Math.max(1, SIZES[entry.type])];
      for (int i = 0; i < numbers.length; i++) {
        numbers[i] =
            switch (SIZES[entry.type]) {
              case 1 -> bytes.get() & 0xff;
              case 2 -> bytes.getShort() & 0xffff;
              case 4 -> bytes.getInt() & 0xffffffffL;
              default -> bytes.getLong();
            };
      }
      return numbers;
    }

    /** A tag's text, or "". */
    String text(int tag) {
      Entry entry = byTag.get(tag);
      boolean text = entry != null && (entry.type == TEXT || entry.type == UNDEFINED);
      return text ? StandardCharsets.ISO_8859_1.decode(bytes(entry)).toString() : "";
    }

    /** The directory that a tag points to, without those behind it. */
    Optional<Directory> at(int tag) {
      long at = number(tag, 0);
      if (at == 0) {
        return Optional.empty();
      }
      int before = chain.size();
      read(at);
      return Optional.of(chain.remove(before));
    }

    private ByteBuffer bytes(Entry entry) {
      int size = entry.type < SIZES.length ? SIZES[entry.type] : 0;
      if (size == 0 || entry.count < 0 || entry.count > LIMITS.valuesMax().value()) {
        throw new Broken();
      }
      int length = (int) entry.count * size;
      boolean inPlace = length <= (big ? 8 : 4);
      return need(inPlace ? entry.place : offset(entry.place), length, order);
    }
  }
}
