package leadlight.photo;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import leadlight.model.Note;
import leadlight.model.UserError;
import org.apache.commons.imaging.ImagingException;
import org.apache.commons.imaging.bytesource.ByteSource;
import org.apache.commons.imaging.formats.tiff.TiffDirectory;
import org.apache.commons.imaging.formats.tiff.TiffField;

/** The directories of a TIFF (TIFF 6.0; DNG 1.6 for its version tag). */
final class TiffHeader {

  private static final int NEW_SUBFILE_TYPE = 0x00fe;
  private static final int WIDTH = 0x0100;
  private static final int HEIGHT = 0x0101;
  private static final int BITS = 0x0102;
  private static final int PHOTOMETRIC = 0x0106;
  private static final int STRIP_OFFSETS = 0x0111;
  private static final int STRIP_COUNTS = 0x0117;
  private static final int TILE_OFFSETS = 0x0144;
  private static final int TILE_COUNTS = 0x0145;
  private static final int SUB_IFDS = 0x014a;
  private static final int SAMPLE_FORMAT = 0x0153;
  private static final int DNG_VERSION = 0xc612;
  private static final int CMYK = 5;
  private static final int REDUCED = 1;
  private static final int MASK = 4;

  private final Source source;
  private final TiffDirectory first;

  private TiffHeader(Source source, TiffDirectory first) {
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
      List<TiffDirectory> directories = Exif.directories(ByteSource.path(source.file()));
      return new TiffHeader(source, directories.get(0)).header(directories);
    } catch (UserError e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      // The library signals a broken structure in many ways.
      throw source.damaged();
    }
  }

  private Header header(List<TiffDirectory> directories) throws ImagingException {
    refuseRaw();
    int bits = bits();
    refuseMissing(STRIP_OFFSETS, STRIP_COUNTS);
    refuseMissing(TILE_OFFSETS, TILE_COUNTS);
    long pages = directories.stream().filter(TiffHeader::isPage).count();
    List<Note> notes = pages > 1 ? List.of(new Note.FirstPageOnly((int) pages)) : List.of();
    return new Header(
        "tiff",
        number(first, WIDTH, 0),
        number(first, HEIGHT, 0),
        bits,
        Exif.of(directories),
        notes);
  }

  private void refuseRaw() throws ImagingException {
    boolean preview = (number(first, NEW_SUBFILE_TYPE, 0) & REDUCED) != 0;
    boolean canon = Header.starts(source.upTo(0, 10), 8, 'C', 'R');
    if (canon || has(DNG_VERSION) || (preview && has(SUB_IFDS))) {
      throw source.refused(ForeignFile.rawCameraFile());
    }
  }

  private int bits() throws ImagingException {
    int[] bits = numbers(first, BITS, 1);
    int most = Arrays.stream(bits).max().orElse(1);
    boolean whole = Arrays.stream(numbers(first, SAMPLE_FORMAT, 1)).allMatch(f -> f == 1);
    if (!whole || !(most <= 8 || most == 16)) {
      throw source.refused(
          "is a TIFF of "
              + most
              + (whole ? "-bit values" : "-bit fractions or signed values")
              + "; save it with 8 or 16 bits a channel");
    }
    if (number(first, PHOTOMETRIC, 0) == CMYK) {
      throw source.refused("is a CMYK TIFF, made for a printing press; save it with RGB colours");
    }
    return most == 16 ? 16 : 8;
  }

  /** Refuses a file that ends before its picture's data do. */
  private void refuseMissing(int offsetsTag, int countsTag) throws ImagingException {
    int[] offsets = numbers(first, offsetsTag, 0);
    int[] counts = numbers(first, countsTag, 0);
    for (int i = 0; i < Math.min(offsets.length, counts.length); i++) {
      if ((offsets[i] & 0xffffffffL) + (counts[i] & 0xffffffffL) > source.size()) {
        throw source.cutShort();
      }
    }
  }

  /** Pages are the chained directories that are neither a preview nor a mask. */
  private static boolean isPage(TiffDirectory directory) {
    try {
      return directory.type >= 0
          && (number(directory, NEW_SUBFILE_TYPE, 0) & (REDUCED | MASK)) == 0;
    } catch (ImagingException e) {
      return false;
    }
  }

  private boolean has(int tag) {
    return first.getDirectoryEntries().stream().anyMatch(f -> f.getTag() == tag);
  }

  private static int number(TiffDirectory directory, int tag, int otherwise)
      throws ImagingException {
    return numbers(directory, tag, otherwise)[0];
  }

  private static int[] numbers(TiffDirectory directory, int tag, int otherwise)
      throws ImagingException {
    for (TiffField field : directory.getDirectoryEntries()) {
      if (field.getTag() == tag) {
        return field.getIntArrayValue();
      }
    }
    return new int[] {otherwise};
  }
}
