package leadlight.archive;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import leadlight.data.Hash;

/**
 * Which data files a program reads by: the begin of a hash of all of {@code models/} with its
 * names, each file as the class path gives it. So another reader file, limit or card is another
 * version by itself.
 */
final class ModelsHash {

  private static final String ROOT = "models/";
  private static final int DIGITS = 8;

  private ModelsHash() {}

  /** That of this program; made once. */
  static String ofProgram() {
    return Holder.HASH;
  }

  private static final class Holder {
    static final String HASH = of(ModelsHash.class.getClassLoader());
  }

  /** That of what a loader finds. */
  static String of(ClassLoader loader) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    try {
      for (String name : names(loader)) {
        try (InputStream in = loader.getResourceAsStream(ROOT + name)) {
          String line = name + " " + Hash.sha256(in.readAllBytes()) + "\n";
          all.writeBytes(line.getBytes(StandardCharsets.UTF_8));
        }
      }
    } catch (IOException | URISyntaxException e) {
      throw new IllegalStateException("models/ cannot be read", e);
    }
    return Hash.sha256(all.toByteArray()).substring(0, DIGITS);
  }

  private static SortedSet<String> names(ClassLoader loader)
      throws IOException, URISyntaxException {
    SortedSet<String> names = new TreeSet<>();
    for (URL root : Collections.list(loader.getResources(ROOT))) {
      URI at = root.toURI();
      if (at.getScheme().equals("jar")) {
        try (FileSystem jar = FileSystems.newFileSystem(at, Map.<String, Object>of())) {
          add(jar.getPath("/" + ROOT), names);
        }
      } else {
        add(Path.of(at), names);
      }
    }
    return names;
  }

  private static void add(Path root, SortedSet<String> names) {
    try (Stream<Path> files = Files.walk(root)) {
      files
          .filter(Files::isRegularFile)
          .forEach(file -> names.add(root.relativize(file).toString().replace('\\', '/')));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
