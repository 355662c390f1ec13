package leadlight.photo.header;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.photo.header.Directories.Directory;

/** The directories of a TIFF (TIFF 6.0; DNG 1.6 for its version tag). */
final class TiffHeader {

  private static final int NEW_SUBFILE_TYPE = 0x00fe;
  private static final int WIDTH = 0x0100;
  private static final int HEIGHT = 0x0101;
  private static final int BITS = 0x0102;
  private static final int PHOTOMETRIC = 0x0106;
  private static final int STRIP_OFFSETS = 0x0111;
  private static final int STRIP_COUNTS = 0x0117;
  private static final int SAMPLES = 0x0115;
  private static final int ROWS_OF_A_STRIP = 0x0116;
  private static final int PLANES = 0x011c;
  private static final int TILE_WIDTH = 0x0142;
  private static final int TILE_HEIGHT = 0x0143;
  private static final int TILE_OFFSETS = 0x0144;
  private static final int TILE_COUNTS = 0x0145;
  private static final int SUB_IFDS = 0x014a;
  private static final int SAMPLE_FORMAT = 0x0153;
  private static final int DNG_VERSION = 0xc612;
  private static final int CMYK = 5;
  private static final int REDUCED = 1;
  private static final int MASK = 4;

  /**
   * Deflate packs 1032 bytes into one at most (RFC 1951: 258 in two bits), LZW of 12 bits some
   * 1400; one byte is at least one pixel, or eight of black and white.
   */
  private static final int PIXELS_OF_A_BYTE_MAX = 8 * 1500;

  private final Source source;
  private final Directory first;

  private TiffHeader(Source source, Directory first) {
    this.source = source;
    this.first = first;
  }

  static boolean fits(ByteBuffer start) {
    return Header.starts(start, 0, 'I', 'I', '*', 0)
        || Header.starts(start, 0, 'M', 'M', 0, '*')
        || Header.starts(start, 0, 'I', 'I', '+', 0)
        || Header.starts(start, 0, 'M', 'M', 0, '+');
  }

  static Header read(Source source) {
    try {
      List<Directory> directories = Directories.chain(source::upTo);
      if (directories.isEmpty()) {
        throw source.damaged();
      }
      return new TiffHeader(source, directories.get(0)).header(directories);
    } catch (Directories.Broken e) {
      throw source.damaged();
    }
  }

  private Header header(List<Directory> directories) {
    refuseRaw();
    int bits = bits();
    int width = size(WIDTH);
    int height = size(HEIGHT);
    refuseMissing(width, height);
    long pages = directories.stream().filter(TiffHeader::isPage).count();
    List<Note> notes = pages > 1 ? List.of(new NoteOfPhoto.FirstPageOnly((int) pages)) : List.of();
    return new Header("tiff", width, height, bits, Exif.of(directories), notes);
  }

  private int size(int tag) {
    long size = first.number(tag, 0);
    if (size < 1 || size > Integer.MAX_VALUE) {
      throw source.damaged();
    }
    return (int) size;
  }

  private void refuseRaw() {
    boolean preview = (first.number(NEW_SUBFILE_TYPE, 0) & REDUCED) != 0;
    boolean canon = Header.starts(source.upTo(0, 10), 8, 'C', 'R');
    if (canon || first.has(DNG_VERSION) || (preview && first.has(SUB_IFDS))) {
      throw source.refused(ForeignFile.rawCameraFile());
    }
  }

  private int bits() {
    long most = Arrays.stream(first.numbers(BITS)).max().orElse(1);
    boolean whole = Arrays.stream(first.numbers(SAMPLE_FORMAT)).allMatch(f -> f == 1);
    if (!whole || !(most <= 8 || most == 16)) {
      throw source.refused(
          "is a TIFF of "
              + most
              + (whole ? "-bit values" : "-bit fractions or signed values")
              + "; save it with 8 or 16 bits a channel");
    }
    if (first.number(PHOTOMETRIC, 0) == CMYK) {
      throw source.refused("is a CMYK TIFF, made for a printing press; save it with RGB colours");
    }
    return most == 16 ? 16 : 8;
  }

  /** Refuses a file whose pieces are not as many as its size asks for, or lie beyond its end. */
  private void refuseMissing(int width, int height) {
    boolean tiled = first.has(TILE_OFFSETS);
    long[] offsets = first.numbers(tiled ? TILE_OFFSETS : STRIP_OFFSETS);
    long[] counts = first.numbers(tiled ? TILE_COUNTS : STRIP_COUNTS);
    long pieces =
        tiled
            ? pieces(width, TILE_WIDTH, width) * pieces(height, TILE_HEIGHT, height)
            : pieces(height, ROWS_OF_A_STRIP, height);
    long planes = first.number(PLANES, 1) == 2 ? first.number(SAMPLES, 1) : 1;
    if (offsets.length != counts.length || offsets.length != pieces * planes) {
      throw source.damaged();
    }
    double sum = 0;
    for (int i = 0; i < offsets.length; i++) {
      if (offsets[i] < 0 || counts[i] < 0 || offsets[i] > source.size() - counts[i]) {
        throw source.cutShort();
      }
      sum += counts[i];
    }
    if (width * (double) height > sum * PIXELS_OF_A_BYTE_MAX) {
      throw source.refused(
          "claims "
              + width
              + " x "
              + height
              + " px, more than its few bytes can hold; copy it"
              + " again, or save it as PNG");
    }
  }

  private long pieces(int size, int tag, int otherwise) {
    long of = first.number(tag, otherwise);
    if (of < 1) {
      throw source.damaged();
    }
    return (size + Math.min(of, size) - 1) / Math.min(of, size);
  }

  /** Pages are the chained directories that are neither a preview nor a mask. */
  private static boolean isPage(Directory directory) {
    return (directory.number(NEW_SUBFILE_TYPE, 0) & (REDUCED | MASK)) == 0;
  }
}
