package leadlight.record.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Statement;
import leadlight.data.WholeFile;
import leadlight.model.UserError;

/** A copy of a record by SQLite's own backup interface, in its place only once it is whole. */
public final class Backup {

  private final Path folder;

  public Backup(Path folder) {
    this.folder = folder;
  }

  public void of(Database database) {
    if (!(database instanceof SqliteDatabase)) {
      throw new UserError(
          "a record on a server is copied by the server's own means: pg_dump -Fc -f FILE DATABASE;"
              + " or by \"leadlight record export FILE.jsonl\"");
    }
    Path target = folder.resolve(Database.FILE);
    if (Files.exists(target)) {
      throw new UserError(folder + " holds a record already; name a folder for the copy alone");
    }
    try {
      Files.createDirectories(folder);
      Path aside = Files.createTempFile(folder, Database.FILE, ".part");
      try {
        copy(database, aside);
        WholeFile.move(aside, target);
      } finally {
        Files.deleteIfExists(aside);
      }
    } catch (IOException e) {
      throw new UserError(
          "the copy in " + folder + " cannot be written; choose a folder that is yours");
    }
  }

  private static void copy(Database database, Path aside) {
    database.read(
        handle -> {
          String name = aside.toAbsolutePath().toString().replace("\"", "\"\"");
          try (Statement statement = handle.getConnection().createStatement()) {
            return statement.executeUpdate("backup to \"" + name + "\"");
          }
        });
  }
}
