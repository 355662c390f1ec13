package leadlight.photo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.imaging.FormatCompliance;
import org.apache.commons.imaging.ImagingException;
import org.apache.commons.imaging.bytesource.ByteSource;
import org.apache.commons.imaging.formats.tiff.TiffDirectory;
import org.apache.commons.imaging.formats.tiff.TiffField;
import org.apache.commons.imaging.formats.tiff.TiffReader;
import org.apache.commons.imaging.formats.tiff.constants.TiffDirectoryConstants;

/**
 * What Leadlight takes from Exif 2.32.
 *
 * @param orientation 1 to 8; 1 if none or nonsense is said
 * @param takenAt ISO 8601
 */
record Exif(int orientation, Optional<String> takenAt) {

  static final Exif NONE = new Exif(1, Optional.empty());

  private static final int ORIENTATION = 0x0112;
  private static final int DATE_TIME_ORIGINAL = 0x9003;
  private static final int SUB_SEC_TIME_ORIGINAL = 0x9291;
  private static final int OFFSET_TIME_ORIGINAL = 0x9011;
  private static final int MARK_LENGTH = 6;

  /** Reads an Exif block: a TIFF structure, with or without the mark "Exif" before it. */
  static Exif of(byte[] block) {
    boolean marked = block.length > MARK_LENGTH && block[0] == 'E' && block[1] == 'x';
    byte[] tiff = marked ? Arrays.copyOfRange(block, MARK_LENGTH, block.length) : block;
    try {
      return of(directories(ByteSource.array(tiff)));
    } catch (IOException | RuntimeException e) {
      // Broken metadata is no reason to refuse a whole picture, and the library signals it in
      // many ways.
      return NONE;
    }
  }

  /** All directories of a TIFF structure, its pictures left alone. */
  static List<TiffDirectory> directories(ByteSource tiff) throws IOException {
    return new TiffReader(false)
        .readDirectories(tiff, false, FormatCompliance.getDefault())
        .directories;
  }

  /** From directories already read. */
  static Exif of(List<TiffDirectory> directories) {
    int orientation = 1;
    Optional<String> time = Optional.empty();
    for (TiffDirectory directory : directories) {
      if (directory.type == TiffDirectoryConstants.DIRECTORY_TYPE_ROOT) {
        orientation = orientation(directory);
      } else if (directory.type == TiffDirectoryConstants.DIRECTORY_TYPE_EXIF) {
        time =
            CaptureTime.iso(
                text(directory, DATE_TIME_ORIGINAL),
                text(directory, SUB_SEC_TIME_ORIGINAL),
                text(directory, OFFSET_TIME_ORIGINAL));
      }
    }
    return new Exif(orientation, time);
  }

  private static int orientation(TiffDirectory directory) {
    return value(directory, ORIENTATION)
        .filter(Number.class::isInstance)
        .map(n -> ((Number) n).intValue())
        .filter(n -> n >= 1 && n <= 8)
        .orElse(1);
  }

  private static String text(TiffDirectory directory, int tag) {
    Object value = value(directory, tag).orElse("");
    if (value instanceof String[] several && several.length > 0) {
      return several[0];
    }
    if (value instanceof byte[] bytes) {
      return new String(bytes, StandardCharsets.ISO_8859_1);
    }
    return value instanceof String one ? one : "";
  }

  private static Optional<Object> value(TiffDirectory directory, int tag) {
    try {
      for (TiffField field : directory.getDirectoryEntries()) {
        if (field.getTag() == tag) {
          return Optional.ofNullable(field.getValue());
        }
      }
      return Optional.empty();
    } catch (ImagingException e) {
      return Optional.empty();
    }
  }
}
