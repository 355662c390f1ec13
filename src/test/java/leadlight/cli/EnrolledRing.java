package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The mock bench "ring", enrolled once by two photos of each kind and put where it is wanted. */
public final class EnrolledRing {

  private static final Path PICTURES = Path.of("src/test/resources/enrol");
  private static byte[] version;

  private EnrolledRing() {}

  static Path picture(String name) {
    return PICTURES.resolve(name + ".jpg");
  }

  /** Puts version 1 into a folder of benches. */
  public static synchronized void in(Path benches) {
    try {
      if (version == null) {
        version = enrolled();
      }
      Files.createDirectories(benches.resolve("ring"));
      Files.write(benches.resolve("ring/1.json"), version);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] enrolled() throws IOException {
    Path folder = Files.createTempDirectory("leadlight-ring");
    Run run =
        Run.of(
            "enrol",
            "ring",
            "--benches",
            folder,
            "--leads",
            19,
            "--pitch",
            0.5,
            "--sound",
            picture("sound-0"),
            picture("sound-1"),
            "--unsoldered",
            picture("unsoldered-0"),
            picture("unsoldered-1"));
    assertThat(run.err()).isEmpty();
    Path file = folder.resolve("ring/1.json");
    byte[] bytes = Files.readAllBytes(file);
    Files.delete(file);
    Files.delete(file.getParent());
    Files.delete(folder);
    return bytes;
  }
}
