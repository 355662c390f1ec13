package leadlight.batch.list;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * New and changed photos of a folder, once they are whole. The folder is looked at again and again:
 * notices from the system do not come from network shares, and folders that appear would be missed.
 *
 * <p>A photo counts as whole when its size and time have stood still for {@link #STILL_NS} and it
 * ends as its format ends; without such an end (a camera may put more behind it) when they have
 * stood still for {@link #DOUBTFUL_NS}. A file that a camera or a copying program still calls by
 * another ending is no photo until it is renamed.
 */
public final class Arrivals {

  static final long STILL_NS = 100_000_000L;
  static final long DOUBTFUL_NS = 2_000_000_000L;

  /** Job, board, stage, and a few folders more; deeper is a loop of links. */
  private static final int DEEPEST = 12;

  private record State(long size, FileTime time, long sinceNs, boolean taken) {}

  private final Path folder;
  private Map<Path, State> states = new HashMap<>();

  public Arrivals(Path folder) {
    this.folder = folder;
  }

  /**
   * Looks at the folder.
   *
   * @param nowNs a clock that never goes back, nanoseconds
   * @return photos that became whole since they were last taken, sorted
   * @throws IOException if the folder is gone or cannot be read
   */
  public List<Path> look(long nowNs) throws IOException {
    Map<Path, State> seen = new HashMap<>();
    List<Path> whole = new ArrayList<>();
    for (Path file : PictureTree.below(folder, DEEPEST)) {
      state(file, nowNs, seen, whole);
    }
    states = seen;
    return whole;
  }

  private void state(Path file, long nowNs, Map<Path, State> seen, List<Path> whole) {
    BasicFileAttributes now;
    try {
      now = Files.readAttributes(file, BasicFileAttributes.class);
    } catch (IOException e) {
      return; // Gone again, or renamed: what it is called now is seen by itself.
    }
    if (!now.isRegularFile()) {
      return;
    }
    State before = states.get(file);
    boolean same =
        before != null && before.size == now.size() && before.time.equals(now.lastModifiedTime());
    long since = same ? before.sinceNs : nowNs;
    boolean taken = same && before.taken;
    long still = nowNs - since;
    if (!taken
        && now.size() > 0
        && still >= STILL_NS
        && (still >= DOUBTFUL_NS || EndMark.ends(file))) {
      whole.add(file);
      taken = true;
    }
    seen.put(file, new State(now.size(), now.lastModifiedTime(), since, taken));
  }

  /** Makes a photo come again with the next look: it could not be dealt with. */
  public void putBack(Path file) {
    states.computeIfPresent(
        file, (path, state) -> new State(state.size, state.time, state.sinceNs, false));
  }

  /**
   * Whether a picture file ends as its format ends: JPEG with EOI (ITU-T T.81, B.1.1.3), PNG with
   * IEND and its checksum (W3C PNG, 11.2.5). Other formats have no mark at their end.
   */
  private static final class EndMark {

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
}
