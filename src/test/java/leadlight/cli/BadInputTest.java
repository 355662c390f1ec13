package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a user can get wrong: one line, status 2, nothing written. */
class BadInputTest {

  private static final Path SAMPLE = Path.of("sample-images/base-station-video-good.jpg");
  private static final Path PICTURES = Path.of("src/test/resources/photo");

  @TempDir private Path folder;

  private void assertRefused(Run run, String... parts) {
    assertThat(run.status()).as(run.err()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.err()).startsWith("leadlight: ").contains(parts);
    assertThat(folder.resolve("out"))
        .satisfiesAnyOf(
            out -> assertThat(out).doesNotExist(), out -> assertThat(out).isEmptyDirectory());
  }

  private Run score(Path photo) {
    return Run.of("score", photo, "--leads", 19, "--pitch", 0.5, "--out", folder.resolve("out"));
  }

  @Test
  void aMissingFile() {
    assertRefused(score(folder.resolve("none.jpg")), "none.jpg", "does not exist");
  }

  @Test
  void aFolderInsteadOfAFile() {
    assertRefused(score(folder), folder.toString(), "folder");
  }

  @Test
  void aFileWithoutContent() throws IOException {
    assertRefused(score(Files.createFile(folder.resolve("zero.jpg"))), "zero.jpg", "empty");
  }

  @Test
  void aPictureThatIsCutShort() throws IOException {
    byte[] whole = Files.readAllBytes(SAMPLE);
    Path cut = folder.resolve("cut.jpg");
    Files.write(cut, Arrays.copyOf(whole, whole.length / 2));

    assertRefused(score(cut), "cut.jpg");
  }

  @Test
  void aFileThatIsNoPicture() throws IOException {
    Path text = Files.writeString(folder.resolve("notes.jpg"), "not a picture at all\n");

    assertRefused(score(text), "notes.jpg");
  }

  @ParameterizedTest
  @CsvSource({"cmyk.jpg, CMYK", "moving.gif, GIF", "moving.png, moving", "moving.webp, moving"})
  void aKindOfPictureThatIsNoPhoto(String name, String word) {
    Run run = score(PICTURES.resolve(name));

    assertRefused(run, name);
    assertThat(run.err()).containsIgnoringCase(word);
  }

  @Test
  void aHeaderThatClaimsTenThousandMegapixels() throws IOException {
    Path huge = folder.resolve("huge.png");
    Files.write(huge, pngHeader(100_000, 100_000));

    assertRefused(score(huge), "huge.png", "100000");
  }

  private static byte[] pngHeader(int width, int height) throws IOException {
    ByteArrayOutputStream header = new ByteArrayOutputStream();
    DataOutputStream fields = new DataOutputStream(header);
    fields.writeInt(width);
    fields.writeInt(height);
    fields.write(new byte[] {8, 2, 0, 0, 0});
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    png.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
    addChunk(png, "IHDR", header.toByteArray());
    addChunk(png, "IDAT", new byte[4000]);
    addChunk(png, "IEND", new byte[0]);
    return png.toByteArray();
  }

  private static void addChunk(ByteArrayOutputStream png, String type, byte[] content)
      throws IOException {
    CRC32 crc = new CRC32();
    crc.update(type.getBytes(StandardCharsets.US_ASCII));
    crc.update(content);
    DataOutputStream chunk = new DataOutputStream(png);
    chunk.writeInt(content.length);
    chunk.writeBytes(type);
    chunk.write(content);
    chunk.writeInt((int) crc.getValue());
  }

  @Test
  void anOutputFolderThatIsAFile() throws IOException {
    Path file = Files.createFile(folder.resolve("taken"));

    Run run = Run.of("score", SAMPLE, "--leads", 19, "--pitch", 0.5, "--out", file);

    assertRefused(run, file.toString(), "is a file");
  }

  @Test
  void anUnknownConnectorIsAnsweredWithTheNearest() {
    Run run = Run.of("score", SAMPLE, "--connector", "usb-c16", "--out", folder.resolve("out"));

    assertRefused(run, "\"usb-c16\"", "usb-c-16");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--leads 2 --pitch 0.5 | --leads must be 3 to 500, is 2",
        "--leads 19 --pitch 0 | --pitch must be 0.1 to 10.0 mm, is 0.0",
        "--leads 19 --pitch -0.5 | --pitch must be 0.1 to 10.0 mm, is -0.5",
        "--leads 19 --pitch NaN | --pitch must be 0.1 to 10.0 mm, is NaN",
        "--leads 19 --pitch 500 | --pitch must be 0.1 to 10.0 mm, is 500.0",
        "--leads 19 | say which row",
        "--pitch 0.5 | 19 leads show; if that is right, say --leads 19",
        "--leads x --pitch 0.5 | --leads: 'x' is not a whole number",
        "--leads 19 --pitch 0.5 --lead-width 0.6 | --lead-width must be above 0 and below",
        "--leads 19 --pitch 0.5 --land-width NaN | --land-width must be above 0 and below",
        "--leads 19 --pitch 0.5 --row 2 | --row goes with --connector",
        "--connector usb-c-16 --pitch 0.5 | --connector brings its own pitch",
        "--connector usb-c-16 --leads 19 | has 12 leads, not 19",
        "--connector usb-c-16 --row 2 | --row must be 1 to 1",
        "--leads 19 --pitch 0.5 --class 4 | --class must be 1, 2 or 3, is 4",
        "--leads 19 --pitch 0.5 --limits none | no limits named \"none\"",
        "--leads 19 --pitch 0.5 --near 1 | --near must be X,Y in pixels, is 1",
        "--leads 19 --pitch 0.5 --near 1,b | --near must be X,Y in pixels, is 1,b",
        "--leads 19 --pitch 0.5 --box 1,2,3 | --box must be X,Y,W,H in pixels, is 1,2,3",
        "--leads 19 --pitch 0.5 --box 1,2,0,4 | --box must have a width and a height",
        "--leads 19 --pitch 0.5 --near 1,2 --box 1,2,3,4 | --near or --box, not both",
        "--leads 19 --pitch 0.5 --threads 0 | --threads must be 1 to 256, is 0"
      })
  void nonsenseOptions(String options, String message) {
    String all = "score " + SAMPLE + " --out " + folder.resolve("out") + " " + options;

    assertRefused(Run.of((Object[]) all.split(" ")), message);
  }

  @Test
  void oneBadPhotoIsNamedAndTheOthersGoOn() {
    Run run =
        Run.of(
            "score",
            folder.resolve("none.jpg"),
            SAMPLE,
            "--leads",
            19,
            "--pitch",
            0.5,
            "--out",
            folder.resolve("out"));

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.out()).contains("base-station-video-good.jpg: ");
    assertThat(folder.resolve("out/base-station-video-good.json")).exists();
  }
}
