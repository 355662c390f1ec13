package leadlight.life;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leadlight.record.JobRecord;

/** Results that a record has proven; others of the same photo go beside them. */
public final class ProvenResults {

  private final List<Path> folders;

  /** Those of a photo, by the hash of its bytes. */
  public static ProvenResults of(JobRecord record, String sha256) {
    return new ProvenResults(record.resultsOf(sha256).stream().map(Path::getParent).toList());
  }

  private ProvenResults(List<Path> folders) {
    this.folders = folders;
  }

  /** The folder, or, if such results lie there, the first of its folders 2, 3 ... without any. */
  public Path free(Path out) {
    Path free = out;
    for (int n = 2; areIn(free); n++) {
      free = out.resolve(Integer.toString(n));
    }
    return free;
  }

  boolean areIn(Path out) {
    return folders.stream().anyMatch(folder -> isSameFolder(out, folder));
  }

  /** Also if one is named by another way to it; a folder that is not there holds nothing. */
  static boolean isSameFolder(Path out, Path before) {
    try {
      return Files.isSameFile(out, before);
    } catch (IOException e) {
      return out.toAbsolutePath().normalize().equals(before.toAbsolutePath().normalize());
    }
  }
}
