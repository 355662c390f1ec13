package leadlight.photo.header;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Walks the chunks of a WebP (RFC 9649). */
final class WebpHeader {

  private static final int RIFF_HEAD = 12;
  private static final int CHUNK_HEAD = 8;
  private static final int ANIMATION = 0x02;
  private static final int FOURTEEN_BITS = 0x3fff;
  private static final int EXIF_BYTES_MAX = 1 << 20;

  private final Source source;
  private int width;
  private int height;
  private Exif exif = Exif.NONE;

  WebpHeader(Source source) {
    this.source = source;
  }

  Header read() {
    long end = CHUNK_HEAD + u32(little(4, 4), 0);
    if (end > source.size()) {
      throw source.cutShort();
    }
    long at = RIFF_HEAD;
    while (at + CHUNK_HEAD <= end) {
      ByteBuffer head = little(at, CHUNK_HEAD);
      long length = u32(head, 4);
      chunk(StandardCharsets.ISO_8859_1.decode(head.limit(4)).toString(), at + CHUNK_HEAD, length);
      at += CHUNK_HEAD + length + (length & 1);
    }
    return new Header("webp", width, height, 8, exif, List.of());
  }

  private void chunk(String type, long at, long length) {
    switch (type) {
      case "VP8X" -> {
        ByteBuffer body = little(at, 10);
        if ((body.get(0) & ANIMATION) != 0) {
          throw source.refused("is a moving picture; save one picture of it as WebP or PNG");
        }
        size((body.getInt(4) & 0xffffff) + 1, (body.getInt(6) >>> 8) + 1);
      }
      case "VP8 " -> {
        ByteBuffer body = little(at, 10);
        size(body.getShort(6) & FOURTEEN_BITS, body.getShort(8) & FOURTEEN_BITS);
      }
      case "VP8L" -> {
        int packed = little(at, 5).order(ByteOrder.LITTLE_ENDIAN).getInt(1);
        size((packed & FOURTEEN_BITS) + 1, (packed >>> 14 & FOURTEEN_BITS) + 1);
      }
      case "EXIF" -> {
        if (length <= EXIF_BYTES_MAX) {
          exif = Exif.of(source.at(at, (int) length).array());
        }
      }
      default -> {}
    }
  }

  /** The first chunk that says a size is right: an extended file repeats it in its picture. */
  private void size(int saidWidth, int saidHeight) {
    if (width == 0) {
      width = saidWidth;
      height = saidHeight;
    }
  }

  private ByteBuffer little(long at, int length) {
    return source.at(at, length).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static long u32(ByteBuffer bytes, int at) {
    return bytes.getInt(at) & 0xffffffffL;
  }
}
