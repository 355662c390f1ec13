package leadlight.batch.list;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;

/**
 * Whether a picture file ends as its format ends: JPEG with EOI (ITU-T T.81, B.1.1.3), PNG with
 * IEND and its checksum (W3C PNG, 11.2.5). Other formats have no mark at their end.
 */
final class EndMark {

  private static final int[] JPEG = {0xff, 0xd9};
  private static final int[] PNG = {'I', 'E', 'N', 'D', 0xae, 0x42, 0x60, 0x82};

  private EndMark() {}

  static boolean ends(Path file) {
    try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "r")) {
      return endsWith(open, JPEG) || endsWith(open, PNG);
    } catch (IOException e) {
      return false;
    }
  }

  private static boolean endsWith(RandomAccessFile open, int[] mark) throws IOException {
    if (open.length() < mark.length) {
      return false;
    }
    open.seek(open.length() - mark.length);
    for (int expected : mark) {
      if (open.read() != expected) {
        return false;
      }
    }
    return true;
  }
}
