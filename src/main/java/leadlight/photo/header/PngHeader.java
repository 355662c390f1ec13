package leadlight.photo.header;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.CRC32;

/**
 * Walks the chunks of a PNG (ISO/IEC 15948; third edition for eXIf and acTL) to its end and checks
 * their sums, so that the decoder never meets an altered file.
 */
final class PngHeader {

  private static final int SIGNATURE = 8;
  private static final int FRAMING = 12;
  private static final int EXIF_BYTES_MAX = 1 << 20;

  private final Source source;
  private final byte[] piece = new byte[Source.CHUNK];
  private int width;
  private int height;
  private int bits;
  private Exif exif = Exif.NONE;

  PngHeader(Source source) {
    this.source = source;
  }

  Header read() {
    long at = SIGNATURE;
    while (true) {
      ByteBuffer head = source.at(at, 8);
      long length = head.getInt(0) & 0xffffffffL;
      String type = StandardCharsets.ISO_8859_1.decode(head.position(4)).toString();
      if (at == SIGNATURE != "IHDR".equals(type)) {
        // The first chunk is the header, and there is no other.
        throw source.damaged();
      }
      if (at + FRAMING + length > source.size()) {
        throw source.cutShort();
      }
      if ("IEND".equals(type)) {
        return new Header("png", width, height, bits == 16 ? 16 : 8, exif, List.of());
      }
      refuseAltered(at + 4, length + 4);
      chunk(type, at + 8, length);
      at += FRAMING + length;
    }
  }

  /** Compares a chunk's type and data with the check value behind them. */
  private void refuseAltered(long from, long length) {
    CRC32 sum = new CRC32();
    long end = from + length;
    for (long at = from; at < end; at += piece.length) {
      sum.update(piece, 0, (int) Math.min(source.read(at, piece), end - at));
    }
    if ((int) sum.getValue() != source.at(end, 4).getInt()) {
      throw source.damaged();
    }
  }

  private void chunk(String type, long at, long length) {
    switch (type) {
      case "IHDR" -> {
        ByteBuffer body = source.at(at, 9);
        width = body.getInt();
        height = body.getInt();
        bits = body.get();
      }
      case "acTL" -> throw source.refused("is a moving picture; save one picture of it as PNG");
      case "eXIf" -> {
        if (length <= EXIF_BYTES_MAX) {
          exif = Exif.of(source.at(at, (int) length).array());
        }
      }
      default -> {}
    }
  }
}
