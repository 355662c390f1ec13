package leadlight.photo.header;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import java.util.Set;

/** The two headers of a BMP (Microsoft's BITMAPFILEHEADER, BITMAPCOREHEADER, BITMAPINFOHEADER). */
final class BmpHeader {

  private static final int CORE = 12;
  private static final int LARGEST = 124;
  private static final int INFO_END = 34;
  private static final Set<Integer> BITS = Set.of(1, 4, 8, 16, 24, 32);

  private BmpHeader() {}

  static boolean fits(ByteBuffer start) {
    if (!Header.starts(start, 0, 'B', 'M') || start.limit() < INFO_END) {
      return false;
    }
    int headSize = little(start).getInt(14);
    return headSize >= CORE && headSize <= LARGEST;
  }

  static Header read(Source source) {
    ByteBuffer head = little(source.at(0, INFO_END));
    boolean core = head.getInt(14) == CORE;
    int width = core ? head.getShort(18) & 0xffff : head.getInt(18);
    int height = Math.abs(core ? head.getShort(20) & 0xffff : head.getInt(22));
    int bitsPerPixel = 0xffff & head.getShort(core ? 24 : 28);
    if (!core && isRunLength(head.getInt(30))) {
      throw source.refused("is a run-length packed BMP, which hides missing data; save it as PNG");
    }
    if (!BITS.contains(bitsPerPixel)) {
      throw source.damaged();
    }
    double stride = Math.floor((width * (double) bitsPerPixel + 31) / 32) * 4;
    if ((head.getInt(10) & 0xffffffffL) + stride * height > source.size()) {
      throw source.cutShort();
    }
    return new Header("bmp", width, height, 8, Exif.NONE, List.of());
  }

  private static boolean isRunLength(int compression) {
    return compression == 1 || compression == 2;
  }

  private static ByteBuffer little(ByteBuffer bytes) {
    return bytes.duplicate().order(ByteOrder.LITTLE_ENDIAN);
  }
}
