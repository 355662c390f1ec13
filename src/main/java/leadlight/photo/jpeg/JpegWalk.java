package leadlight.photo.jpeg;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;

/** Walks a whole JPEG and its entropy-coded data; says what is damaged, if anything is. */
public final class JpegWalk {

  private static final int SOI = 0xd8;
  private static final int EOI = 0xd9;
  private static final int SOS = 0xda;
  private static final int DQT = 0xdb;
  private static final int DHT = 0xc4;
  private static final int APP0 = 0xe0;
  private static final int JFIF = 0x4a464946;
  private static final int DRI = 0xdd;
  private static final int SOF0 = 0xc0;
  private static final int SOF1 = 0xc1;
  private static final int SOF2 = 0xc2;

  private final Bytes bytes;
  private final JpegLimits limits;
  private final BitFeed bits;
  private final HuffmanTable[] dc = new HuffmanTable[4];
  private final HuffmanTable[] ac = new HuffmanTable[4];
  private final int[][] divisors = new int[4][];
  private int interval;
  private int scans;
  private Frame frame;
  private boolean unusual;

  /**
   * What a walk showed.
   *
   * @param damage in words that go on from "is damaged: "; empty if the picture is whole
   * @param unusual whole, but filled up, or of a version that decoders remark upon
   */
  public record Look(Optional<String> damage, boolean unusual) {}

  private JpegWalk(Bytes bytes, JpegLimits limits) {
    this.bytes = bytes;
    this.limits = limits;
    this.bits = new BitFeed(bytes, 0, limits.lastZerosMax());
    for (int i = 0; i < 2; i++) {
      dc[i] = HuffmanTable.usual(false, i == 1);
      ac[i] = HuffmanTable.usual(true, i == 1);
    }
  }

  /**
   * Walks a file.
   *
   * <p>The file must be a Huffman-coded JPEG of 8 bits with one or three components whose size is
   * within the limits: memory is taken by the frame's size, 16 to 24 bytes a block of 64 pixels.
   */
  public static Look at(Bytes bytes, JpegLimits limits) {
    try {
      JpegWalk walk = new JpegWalk(bytes, limits);
      walk.walk();
      return new Look(Optional.empty(), walk.unusual);
    } catch (JpegDamage e) {
      return new Look(Optional.of(e.getMessage()), true);
    }
  }

  private void walk() {
    long at = 0;
    while (true) {
      at = marker(at);
      int marker = read(at + 1, 1).get(0) & 0xff;
      at += 2;
      if (marker == EOI) {
        end();
        return;
      }
      if (marker == SOI || marker == 0x01) {
        continue;
      }
      int length = read(at, 2).getShort(0) & 0xffff;
      if (length < 2) {
        throw new JpegDamage("its header says what no JPEG can be");
      }
      ByteBuffer body = read(at + 2, length - 2);
      at += length;
      if (marker == SOS) {
        at = scan(body, at);
      } else {
        segment(marker, body);
      }
    }
  }

  private void end() {
    if (frame == null) {
      throw new JpegDamage("its header is missing");
    }
    for (Component component : frame.components()) {
      for (int left : component.bitsLeft) {
        if (left > 0 || component.bitsLeft[0] < 0) {
          throw new JpegDamage("a scan of it is missing or stands twice");
        }
      }
    }
    if (SeamTest.anyIn(frame.components(), limits.seam())) {
      throw new JpegDamage("a part of it is brighter or darker than its data can mean");
    }
  }

  private long scan(ByteBuffer body, long at) {
    if (frame == null) {
      throw new JpegDamage("its header is missing");
    }
    if (++scans > limits.scansMax()) {
      throw new JpegDamage("it has more than " + limits.scansMax() + " scans");
    }
    Scan scan = Scan.of(frame, body);
    for (Scan.Part part : scan.components()) {
      if (divisors[part.component().quantTable] == null) {
        throw new JpegDamage("a table of divisors is missing");
      }
      part.component().divideBy(divisors[part.component().quantTable], limits.range());
    }
    bits.seek(at);
    ScanWalk.Tables tables = new ScanWalk.Tables(dc, ac, interval);
    new ScanWalk(frame, scan, tables, bits).run();
    long end = bits.offset();
    unusual |= bits.padded();
    if (bits.padded() && (read(marker(end) + 1, 1).get(0) & 0xff) != EOI) {
      throw new JpegDamage("more data stand in it than its size needs");
    }
    return end;
  }

  private void segment(int marker, ByteBuffer body) {
    switch (marker) {
      case SOF0, SOF1, SOF2 -> frame(marker, body);
      case DHT -> codes(body);
      case DQT -> divisors(body);
      case APP0 -> jfif(body);
      case DRI -> interval = need(body, 2).getShort() & 0xffff;
      default -> {}
    }
  }

  private void frame(int marker, ByteBuffer body) {
    if (frame != null) {
      throw new JpegDamage("it has two headers");
    }
    frame = Frame.of(marker == SOF2, body);
    frame.components().forEach(component -> component.makeRoom(frame.progressive()));
  }

  /** There are versions 1 and 2 (JFIF 1.02); some writers leave a 0 there, which harms nothing. */
  private void jfif(ByteBuffer body) {
    boolean marked = body.limit() >= 6 && body.getInt(0) == JFIF && body.get(4) == 0;
    if (marked && (body.get(5) & 0xff) > 2) {
      throw new JpegDamage("its header says what no JPEG can be");
    }
    unusual |= marked && body.get(5) != 1;
  }

  private void codes(ByteBuffer body) {
    while (body.hasRemaining()) {
      int which = need(body, 17).get() & 0xff;
      int[] counts = values(body, 16);
      HuffmanTable table =
          new HuffmanTable(counts, values(need(body, 0), Arrays.stream(counts).sum()));
      (which >> 4 == 0 ? dc : ac)[which & 3] = table;
    }
  }

  private void divisors(ByteBuffer body) {
    while (body.hasRemaining()) {
      int which = need(body, 1).get() & 0xff;
      boolean wide = which >> 4 != 0;
      int[] table = new int[64];
      need(body, wide ? 128 : 64);
      for (int i = 0; i < 64; i++) {
        table[i] = wide ? body.getShort() & 0xffff : body.get() & 0xff;
        if (table[i] == 0) {
          throw new JpegDamage("a table of divisors holds a zero");
        }
      }
      divisors[which & 3] = table;
    }
  }

  private static int[] values(ByteBuffer body, int count) {
    need(body, count);
    int[] values = new int[count];
    for (int i = 0; i < count; i++) {
      values[i] = body.get() & 0xff;
    }
    return values;
  }

  private static ByteBuffer need(ByteBuffer body, int length) {
    if (body.remaining() < length) {
      throw new JpegDamage("a table is cut short");
    }
    return body;
  }

  /** Offset of the 0xFF of the marker that must follow here, past fill bytes. */
  private long marker(long from) {
    byte[] two = new byte[2];
    long at = from;
    while (bytes.read(at, two) == 2 && two[0] == (byte) 0xff) {
      if (two[1] != (byte) 0xff) {
        return at;
      }
      at++;
    }
    throw new JpegDamage(
        at == from ? "bytes stand between its parts that belong to none" : "its data end early");
  }

  private ByteBuffer read(long at, int length) {
    byte[] piece = new byte[length];
    if (bytes.read(at, piece) < length) {
      throw new JpegDamage("its data end early");
    }
    return ByteBuffer.wrap(piece);
  }
}
