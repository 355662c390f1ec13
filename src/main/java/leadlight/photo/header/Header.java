package leadlight.photo.header;

import java.nio.ByteBuffer;
import java.util.List;
import leadlight.model.UserError;
import leadlight.model.remark.Note;

/**
 * What a picture file says of itself, read without decoding.
 *
 * @param format "jpeg", "png", "tiff", "bmp" or "webp"
 * @param widthPx as stored, before any turning
 * @param heightPx as stored
 * @param bitsPerChannel 8 or 16
 * @param exif orientation and capture time
 * @param notes what the user should know of it
 */
public record Header(
    String format, int widthPx, int heightPx, int bitsPerChannel, Exif exif, List<Note> notes) {

  private static final int LONGEST_MAGIC = 512;

  /**
   * Reads the header by content; the file's name is not looked at.
   *
   * @throws UserError if the file is of no readable kind, moving, cut short or damaged
   */
  public static Header of(Source source) {
    Header header = read(source, source.upTo(0, LONGEST_MAGIC));
    if (header.widthPx <= 0 || header.heightPx <= 0) {
      throw source.damaged();
    }
    return header;
  }

  private static Header read(Source source, ByteBuffer start) {
    if (starts(start, 0, 0xff, 0xd8, 0xff)) {
      return new JpegHeader(source).read();
    }
    if (starts(start, 0, 0x89, 'P', 'N', 'G', 0x0d, 0x0a, 0x1a, 0x0a)) {
      return new PngHeader(source).read();
    }
    if (starts(start, 0, 'R', 'I', 'F', 'F') && starts(start, 8, 'W', 'E', 'B', 'P')) {
      return new WebpHeader(source).read();
    }
    if (TiffHeader.fits(start)) {
      return TiffHeader.read(source);
    }
    if (BmpHeader.fits(start)) {
      return BmpHeader.read(source);
    }
    throw source.refused(ForeignFile.whatAndTodo(start));
  }

  /** Whether bytes stand at an offset. */
  static boolean starts(ByteBuffer start, int offset, int... bytes) {
    if (start.limit() < offset + bytes.length) {
      return false;
    }
    for (int i = 0; i < bytes.length; i++) {
      if ((start.get(offset + i) & 0xff) != bytes[i]) {
        return false;
      }
    }
    return true;
  }
}
