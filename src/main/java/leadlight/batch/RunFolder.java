package leadlight.batch;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import leadlight.batch.list.FolderName;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.record.scoring.Subject;

/**
 * A folder that one run alone writes to, held by a lock that the system lets go when the run ends
 * in whatever way. Results are made in a corner of it and moved to their place when whole; which
 * place depends on the record, not on what a broken-off run may have left.
 */
final class RunFolder implements AutoCloseable {

  private static final DateTimeFormatter NAME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd_HHmmss", Locale.ROOT);
  private static final String LOCK = ".running";
  private static final String CORNER = ".unfinished";

  private final Path folder;
  private final FileChannel channel;
  private final AtomicInteger staged = new AtomicInteger();
  private final Set<String> taken = new HashSet<>();

  private RunFolder(Path folder, FileChannel channel) throws IOException {
    this.folder = folder;
    this.channel = channel;
    removeTree(folder.resolve(CORNER));
  }

  /** A new folder, named by the clock; one more is counted on if that name is taken. */
  static RunFolder create(Path out, ZonedDateTime now) {
    String name = NAME.format(now);
    try {
      Files.createDirectories(out);
      for (int count = 1; ; count++) {
        Path folder = out.resolve(count == 1 ? name : name + "-" + count);
        try {
          Files.createDirectory(folder);
          return hold(folder).orElseThrow(() -> cannot(folder));
        } catch (FileAlreadyExistsException e) {
          if (!Files.isDirectory(out)) {
            throw e;
          }
        }
      }
    } catch (IOException e) {
      throw cannot(out);
    }
  }

  /** A broken-off run's folder; empty if it is gone or its run is still alive. */
  static Optional<RunFolder> resume(Path folder) {
    try {
      return Files.isDirectory(folder) ? hold(folder) : Optional.empty();
    } catch (IOException e) {
      throw cannot(folder);
    }
  }

  private static Optional<RunFolder> hold(Path folder) throws IOException {
    FileChannel channel =
        FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    FileLock lock = null;
    try {
      lock = channel.tryLock();
    } catch (OverlappingFileLockException e) {
      // Held by this very program: as good as held by another.
    }
    if (lock == null) {
      channel.close();
      return Optional.empty();
    }
    return Optional.of(new RunFolder(folder, channel));
  }

  private static UserError cannot(Path folder) {
    return new UserError(
        folder
            + " cannot be written: it is not yours or its disk is full; make room or choose another"
            + " folder, then rerun");
  }

  Path folder() {
    return folder;
  }

  /** A fresh folder in the corner. */
  Path corner() {
    return folder.resolve(CORNER).resolve(Integer.toString(staged.incrementAndGet()));
  }

  /** A place that the record knows; no other photo will get it. */
  void keep(Path results) {
    taken.add(key(results));
  }

  /**
   * Moves the results of one photo to {@code JOB/BOARD/STAGE/}. Results of another photo with that
   * name stay, -2, -3 and so on is put behind the name.
   *
   * @param corner holds the files, all of whose names begin with the stem of {@code json}
   * @param json the JSON report among them
   * @return where that lies now
   */
  Path place(Path corner, Path json, Subject subject) {
    try {
      Path place =
          folder
              .resolve(FolderName.of(subject.job()))
              .resolve(FolderName.of(subject.board()))
              .resolve(FolderName.of(subject.words()));
      Files.createDirectories(place);
      String stem = stem(json);
      String free = stem;
      for (int count = 2; !taken.add(key(place.resolve(free + ".json"))); count++) {
        free = stem + "-" + count;
      }
      for (Path file : list(corner)) {
        String ending = file.getFileName().toString().substring(stem.length());
        WholeFile.move(file, place.resolve(free + ending));
      }
      Files.delete(corner);
      return place.resolve(free + ".json");
    } catch (IOException e) {
      throw cannot(folder);
    }
  }

  /** Takes back what {@link #place} put: another run had the same photo first. */
  void withdraw(Path json) {
    String stem = stem(json) + ".";
    try {
      for (Path file : list(json.getParent())) {
        if (file.getFileName().toString().startsWith(stem)) {
          Files.delete(file);
        }
      }
    } catch (IOException e) {
      throw cannot(folder);
    }
  }

  private static String stem(Path json) {
    String name = json.getFileName().toString();
    return name.substring(0, name.length() - ".json".length());
  }

  /** File systems that do not tell upper from lower case must not mix two photos up. */
  private static String key(Path results) {
    return results.toAbsolutePath().toString().toLowerCase(Locale.ROOT);
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  private static void removeTree(Path tree) throws IOException {
    if (!Files.exists(tree)) {
      return;
    }
    try (Stream<Path> files = Files.walk(tree)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  /** Removes the corner and lets the folder go. */
  @Override
  public void close() {
    try {
      removeTree(folder.resolve(CORNER));
      Files.deleteIfExists(folder.resolve(LOCK));
      channel.close();
    } catch (IOException e) {
      // The disk is gone or full; the lock goes with the program, the corner with the next try.
    }
  }
}
