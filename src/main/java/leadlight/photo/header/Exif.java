package leadlight.photo.header;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leadlight.photo.header.Directories.Directory;

/**
 * What Leadlight takes from Exif 2.32.
 *
 * @param orientation 1 to 8; 1 if none or nonsense is said
 * @param takenAt ISO 8601
 */
public record Exif(int orientation, Optional<String> takenAt) {

  public static final Exif NONE = new Exif(1, Optional.empty());

  private static final int ORIENTATION = 0x0112;
  private static final int EXIF_DIRECTORY = 0x8769;
  private static final int DATE_TIME_ORIGINAL = 0x9003;
  private static final int SUB_SEC_TIME_ORIGINAL = 0x9291;
  private static final int OFFSET_TIME_ORIGINAL = 0x9011;
  private static final int MARK_LENGTH = 6;

  /** Reads an Exif block: a TIFF structure, with or without the mark "Exif" before it. */
  static Exif of(byte[] block) {
    boolean marked = block.length > MARK_LENGTH && block[0] == 'E' && block[1] == 'x';
    byte[] tiff = marked ? Arrays.copyOfRange(block, MARK_LENGTH, block.length) : block;
    try {
      return of(Directories.chain((at, length) -> piece(tiff, at, length)));
    } catch (Directories.Broken e) {
      // Broken metadata is no reason to refuse a whole picture.
      return NONE;
    }
  }

  /** From directories already read. */
  static Exif of(List<Directory> chain) {
    if (chain.isEmpty()) {
      return NONE;
    }
    Directory root = chain.get(0);
    long orientation = root.number(ORIENTATION, 1);
    return new Exif(orientation >= 1 && orientation <= 8 ? (int) orientation : 1, takenAt(root));
  }

  private static Optional<String> takenAt(Directory root) {
    try {
      return root.at(EXIF_DIRECTORY)
          .flatMap(
              exif ->
                  CaptureTime.iso(
                      exif.text(DATE_TIME_ORIGINAL),
                      exif.text(SUB_SEC_TIME_ORIGINAL),
                      exif.text(OFFSET_TIME_ORIGINAL)));
    } catch (Directories.Broken e) {
      return Optional.empty();
    }
  }

  private static ByteBuffer piece(byte[] block, long at, int length) {
    int from = (int) Math.min(at, block.length);
    return ByteBuffer.wrap(Arrays.copyOfRange(block, from, Math.min(block.length, from + length)));
  }
}
