package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadlight.data.Hash;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same photos give the same files wherever, in whatever order and by however many threads. */
class SameBytesTest {

  private static final String MIXED = "sample-images/base-station-video-mixed.jpg";
  private static final String GOOD = "sample-images/base-station-video-good.jpg";
  private static final Locale LOCALE = Locale.getDefault();
  private static final TimeZone ZONE = TimeZone.getDefault();

  @TempDir Path folder;

  @AfterEach
  void asBefore() {
    Locale.setDefault(LOCALE);
    TimeZone.setDefault(ZONE);
  }

  @Test
  void inAnyLocaleZoneFolderOrderAndNumberOfThreads() throws IOException {
    Map<String, String> plain = score("en-GB", "UTC", 1, MIXED, GOOD);
    assertThat(plain).hasSizeGreaterThanOrEqualTo(6);
    assertThat(score("de-DE", "Asia/Kolkata", 2, GOOD, MIXED)).isEqualTo(plain);
    assertThat(score("tr-TR", "America/St_Johns", 1, elsewhere(GOOD), elsewhere(MIXED)))
        .isEqualTo(plain);
    assertThat(score("ar-EG-u-nu-arab", "Pacific/Apia", 4, MIXED, GOOD)).isEqualTo(plain);
  }

  /** The same photo in a folder of another name and depth, by its whole path. */
  private String elsewhere(String photo) throws IOException {
    Path copy = folder.resolve("B\u00fcro 2/photos").resolve(Path.of(photo).getFileName());
    Files.createDirectories(copy.getParent());
    return Files.copy(Path.of(photo), copy).toAbsolutePath().toString();
  }

  private Map<String, String> score(String locale, String zone, int threads, String... photos)
      throws IOException {
    Locale.setDefault(Locale.forLanguageTag(locale));
    TimeZone.setDefault(TimeZone.getTimeZone(zone));
    Path out = Files.createDirectories(folder.resolve(locale).resolve("out"));
    List<String> arguments =
        Stream.concat(
                Stream.of(
                    "score",
                    "--leads",
                    "19",
                    "--pitch",
                    "0.5",
                    "--threads",
                    "" + threads,
                    "--out",
                    out.toString()),
                Stream.of(photos))
            .toList();
    Run.of(arguments.toArray(String[]::new));
    Map<String, String> hashes = new TreeMap<>();
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        hashes.put(out.relativize(file).toString(), Hash.sha256(file));
      }
    }
    return hashes;
  }
}
