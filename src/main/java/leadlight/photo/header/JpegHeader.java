package leadlight.photo.header;

import java.nio.ByteBuffer;
import java.util.List;

/**
 * Walks the markers of a JPEG (ITU-T T.81, annex B) to the end of its first picture. What follows
 * that end, as further pictures and depth maps of phones do, is not looked at.
 */
final class JpegHeader {

  private static final int STANDALONE_TEM = 0x01;
  private static final int SOI = 0xd8;
  private static final int EOI = 0xd9;
  private static final int APP1 = 0xe1;
  private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};

  private final Source source;
  private final byte[] chunk = new byte[Source.CHUNK];
  private int width;
  private int height;
  private Exif exif = Exif.NONE;
  private boolean exifSeen;

  JpegHeader(Source source) {
    this.source = source;
  }

  Header read() {
    long at = 0;
    while (true) {
      at = nextMarker(at);
      int marker = source.at(at + 1, 1).get() & 0xff;
      if (marker == EOI) {
        return new Header("jpeg", width, height, 8, exif, List.of());
      }
      at += 2;
      if (marker != SOI && marker != STANDALONE_TEM) {
        int length = source.at(at, 2).getShort() & 0xffff;
        segment(marker, source.at(at, Math.max(2, length)).position(2).slice());
        at += Math.max(2, length);
      }
    }
  }

  /** Offset of the next 0xFF that starts a marker: neither stuffing, nor restart, nor fill. */
  private long nextMarker(long from) {
    int previous = 0;
    for (long at = from; at < source.size(); at += chunk.length) {
      int length = source.read(at, chunk);
      for (int i = 0; i < length; i++) {
        int value = chunk[i] & 0xff;
        if (previous == 0xff && value != 0 && value != 0xff && (value & 0xf8) != 0xd0) {
          return at + i - 1;
        }
        previous = value;
      }
    }
    throw source.cutShort();
  }

  private void segment(int marker, ByteBuffer body) {
    if (isFrame(marker)) {
      frame(marker, body);
    } else if (marker == APP1 && !exifSeen && holdsExif(body)) {
      exifSeen = true;
      byte[] block = new byte[body.limit() - EXIF.length];
      body.get(EXIF.length, block);
      exif = Exif.of(block);
    }
  }

  private static boolean isFrame(int marker) {
    return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
  }

  private void frame(int marker, ByteBuffer body) {
    if (body.limit() < 6) {
      throw source.damaged();
    }
    int bits = body.get(0);
    int components = body.get(5);
    if (width != 0) {
      throw source.damaged("it has two headers");
    }
    boolean walkable = marker <= 0xc2;
    if (bits != 8 || !walkable) {
      throw source.refused("is a rare kind of JPEG (" + bits + " bits); save it as PNG or TIFF");
    }
    if (components == 4) {
      throw source.refused(
          "is a CMYK JPEG, made for a printing press; save it with RGB colours, best from the"
              + " original photo");
    }
    if (components != 1 && components != 3) {
      throw source.damaged();
    }
    height = body.getShort(1) & 0xffff;
    width = body.getShort(3) & 0xffff;
  }

  private static boolean holdsExif(ByteBuffer body) {
    return body.limit() > EXIF.length
        && body.duplicate().limit(EXIF.length).equals(ByteBuffer.wrap(EXIF));
  }
}
