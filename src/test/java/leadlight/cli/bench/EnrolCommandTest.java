package leadlight.cli.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.awt.image.RescaleOp;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import leadlight.cli.EnrolledRing;
import leadlight.cli.Run;
import leadlight.enrol.Bench;
import leadlight.enrol.BenchFolder;
import leadlight.enrol.RowLook;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.joint.BenchOpinion.Side;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bench is shown photos right and wrong; its README says what they show. */
class EnrolCommandTest {

  private static final Path PICTURES = Path.of("src/test/resources/enrol");

  @TempDir private Path folder;

  @AfterEach
  void noPictureStaysInNativeMemory() {
    assertThat(Frame.live()).isZero();
  }

  private static Path picture(String name) {
    return PICTURES.resolve(name + ".jpg");
  }

  private Run enrol(Object... more) {
    List<Object> args = new ArrayList<>(List.of("enrol", "ring", "--benches", folder));
    args.addAll(List.of("--leads", 19, "--pitch", 0.5));
    args.addAll(Arrays.asList(more));
    return Run.of(args.toArray());
  }

  private Run enrolled() {
    return enrol(
        "--sound",
        picture("sound-0"),
        picture("sound-1"),
        "--unsoldered",
        picture("unsoldered-0"),
        picture("unsoldered-1"));
  }

  private Run score(String photo, Object... more) {
    List<Object> args = new ArrayList<>(List.of("score", picture(photo), "--out", folder));
    args.addAll(List.of("--leads", 19, "--pitch", 0.5, "--bench", "ring", "--benches", folder));
    args.addAll(Arrays.asList(more));
    return Run.of(args.toArray());
  }

  private static String inOneLine(Run run) {
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void twoPhotosOfEachKindProveAShareAndTheReportNamesTheBench() throws IOException {
    Run run = enrolled();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("bench ring, version 1")
        .contains(
            "below all 38 unsoldered joints of 2 photos shown: up to 8 % of such joints may pass")
        .contains("counted by photos, up to 78 %");

    Run scored = score("mixed-0");
    assertThat(inOneLine(scored)).contains("judged as enrolled on bench ring, version 1: 38");
    assertThat(Files.readString(folder.resolve("mixed-0.json"))).contains("\"as-enrolled\"");
    assertThat(Files.readString(folder.resolve("mixed-0.html"))).contains("bench ring");
  }

  @Test
  void theSidesOfAMixedPhotoAreAsItsPictureShows() {
    EnrolledRing.in(folder);
    Map<Integer, Side> sides = sides();
    int soldered = 0;
    for (int pin = 1; pin <= 19; pin++) {
      if (List.of(1, 3, 8, 14).contains(pin)) {
        assertThat(sides.get(pin)).as("open, pin " + pin).isEqualTo(Side.UNSOLDERED);
      } else if (pin == 5) {
        assertThat(sides.get(pin)).as("a bare land").isEqualTo(Side.UNLIKE_SHOWN);
      } else if (List.of(6, 15).contains(pin)) {
        assertThat(sides.get(pin)).as("no fillet, pin " + pin).isNotEqualTo(Side.SOLDERED);
      } else {
        assertThat(sides.get(pin)).as("sound, pin " + pin).isIn(Side.SOLDERED, Side.BETWEEN);
        soldered += sides.get(pin) == Side.SOLDERED ? 1 : 0;
      }
    }
    assertThat(soldered).as("of 12 sound ones").isGreaterThanOrEqualTo(11);
  }

  /** By pin, as the bench sees the mixed photo. */
  private Map<Integer, Side> sides() {
    RowSpec row = RowSpec.plain(19, 0.5, OptionalDouble.empty(), OptionalDouble.empty());
    Settings settings =
        new Settings(row, 2, AcceptanceSet.DEFAULT_ID, Optional.empty(), Opinions.BOTH);
    PhotoScorer scorer = new PhotoScorer(settings, AcceptanceSet.load(AcceptanceSet.DEFAULT_ID));
    Map<Integer, Side> sides = new TreeMap<>();
    try (Photo photo = new PhotoReader().read(picture("mixed-0"))) {
      ScoredPhoto scored = scorer.score(photo);
      RowLook look = scorer.look(photo, scored, (RowOutcome.Found) scored.row());
      new Bench(BenchFolder.find(folder, "ring"))
          .of(look)
          .opinions()
          .forEach(it -> sides.put(sides.size() + 1, it.side()));
    }
    return sides;
  }

  @Test
  void theFileKeepsItsSchema() throws IOException {
    EnrolledRing.in(folder);
    String schema = Files.readString(Path.of("models/schema/enrolment.schema.json"));
    assertThat(
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema, InputFormat.JSON)
                .validate(Files.readString(folder.resolve("ring/1.json")), InputFormat.JSON))
        .isEmpty();
  }

  @Test
  void soundAndUnsolderedInOtherLightProveNothing() throws IOException {
    Path dark = folder.resolve("dark.png");
    Path darker = folder.resolve("darker.png");
    darkened("unsoldered-0", dark);
    darkened("unsoldered-1", darker);
    Run run =
        enrol("--sound", picture("sound-0"), picture("sound-1"), "--unsoldered", dark, darker);
    assertThat(run.out())
        .contains("Not enough was shown yet")
        .contains("sound and unsoldered differ in light");
    assertThat(inOneLine(score("mixed-0"))).contains("has not been shown enough to vouch");
  }

  private static void darkened(String name, Path to) throws IOException {
    BufferedImage picture = ImageIO.read(picture(name).toFile());
    ImageIO.write(new RescaleOp(0.4f, 0, null).filter(picture, null), "png", to.toFile());
  }

  @Test
  void theSamePhotosGiveTheSameBytes() throws IOException {
    enrolled();
    byte[] first = Files.readAllBytes(folder.resolve("ring/1.json"));
    enrolAnewInOtherOrder();
    String second = Files.readString(folder.resolve("ring/2.json"));
    assertThat(second.replace("\"version\": 2", "\"version\": 1")).isEqualTo(new String(first));
  }

  private void enrolAnewInOtherOrder() {
    enrol(
        "--anew",
        "--unsoldered",
        picture("unsoldered-1"),
        picture("unsoldered-0"),
        "--sound",
        picture("sound-1"),
        picture("sound-0"));
  }

  @Test
  void aPhotoOfAnotherBenchIsNotJudgedAsEnrolled() {
    EnrolledRing.in(folder);
    assertThat(inOneLine(score("other-bench"))).contains("not judged as enrolled on bench ring");
  }

  @Test
  void onePhotoOfAKindVouchesForNothingAndSaysWhatIsMissing() {
    Run run = enrol("--sound", picture("sound-0"), picture("sound-1"));
    assertThat(run.out())
        .contains("Not enough was shown yet; until then the general rules stay")
        .contains("2 photo(s) of unsoldered rows")
        .contains("29 more unsoldered joints, in the light you work in");
    assertThat(inOneLine(score("mixed-0"))).contains("has not been shown enough to vouch");
  }

  @Test
  void soundAndUnsolderedSwappedAreRefusedWhereGeneralOpinionsCount() {
    Run run =
        enrol(
            "--unsoldered",
            picture("sound-0"),
            picture("sound-1"),
            "--sound",
            picture("unsoldered-0"),
            picture("unsoldered-1"));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("sound and unsoldered look swapped");
    assertThat(folder.resolve("ring")).doesNotExist();
  }

  @Test
  void theSamePhotoTwiceIsRefused() {
    Run run = enrol("--sound", picture("sound-0"), picture("sound-0"));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.err()).contains("which was shown already");
  }

  @Test
  void aCopySavedAgainIsTheSamePhoto() throws IOException {
    Path copy = folder.resolve("copy.png");
    ImageIO.write(ImageIO.read(picture("sound-0").toFile()), "png", copy.toFile());
    Path again = folder.resolve("again.jpg");
    ImageIO.write(ImageIO.read(copy.toFile()), "jpg", again.toFile());
    Run run = enrol("--sound", picture("sound-0"), again);
    assertThat(run.err()).contains("again.jpg shows the same as sound-0.jpg");
  }

  @Test
  void blurredJointsAreNotLearnedFrom() throws IOException {
    BufferedImage soft = ImageIO.read(picture("sound-0").toFile());
    float[] box = new float[81];
    Arrays.fill(box, 1f / box.length);
    for (int i = 0; i < 2; i++) {
      soft = new ConvolveOp(new Kernel(9, 9, box), ConvolveOp.EDGE_NO_OP, null).filter(soft, null);
    }
    Path blurred = folder.resolve("blurred.png");
    ImageIO.write(soft, "png", blurred.toFile());
    Run run = enrol("--sound", blurred);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("blurred.png");
    assertThat(folder.resolve("ring")).doesNotExist();
  }

  @Test
  void twoKnownJointsAreTakenButVouchForNothing() throws IOException {
    Path photo = folder.resolve("mixed-0.jpg");
    Files.copy(picture("mixed-0"), photo);
    Path table = folder.resolve("known.csv");
    Files.writeString(table, "photo,pin,state\nmixed-0.jpg,3,unsoldered\nmixed-0.jpg,4,sound\n");
    Run run = enrol("--faults", table);
    assertThat(run.out()).contains("2 of 2 joints taken").contains("28 more unsoldered joints");
  }

  @Test
  void aPinNamedTwiceIsRefusedWithLineAndPhoto() throws IOException {
    Path table = folder.resolve("known.csv");
    Files.writeString(table, "photo,pin,state\nmixed-0.jpg,3,unsoldered\n./mixed-0.jpg,3,sound\n");
    Run run = enrol("--faults", table);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.err()).contains("line 3: pin 3 of ./mixed-0.jpg is named twice");
  }

  @Test
  void aCopyOfWhichOtherPinsAreNamedIsTheSamePhoto() throws IOException {
    Files.copy(picture("sound-0"), folder.resolve("sound-0.jpg"));
    BufferedImage picture = ImageIO.read(picture("sound-0").toFile());
    ImageIO.write(picture, "jpg", folder.resolve("again.jpg").toFile());
    StringBuilder known = new StringBuilder("photo,pin,state\n");
    for (int pin = 1; pin <= 19; pin++) {
      known.append(pin < 10 ? "sound-0.jpg," : "again.jpg,").append(pin).append(",sound\n");
    }
    Path table = folder.resolve("known.csv");
    Files.writeString(table, known);
    Run run = enrol("--faults", table);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("again.jpg shows the same as sound-0.jpg");
  }

  @Test
  void oneThingIsAskedAtATime() {
    for (List<Object> asked :
        List.<List<Object>>of(
            List.of("--show", "--undo"),
            List.of("--show", "--compare", 1),
            List.of("--undo", "--anew"),
            List.of("--show", "--sound", picture("sound-0")),
            List.of("--anew", "--check", picture("sound-0"), "--sound", picture("sound-1")))) {
      Run run = enrol(asked.toArray());
      assertThat(run.status()).as(asked.toString()).isEqualTo(2);
      assertThat(run.errLines()).hasSize(1);
      assertThat(run.err())
          .contains("ask for one thing at a time")
          .contains("--check (with --anew or without) or --default");
    }
  }

  @Test
  void aTableWithAnotherWordNamesItsLine() throws IOException {
    Path table = folder.resolve("known.csv");
    Files.writeString(table, "photo,pin,state\nmixed-0.jpg,3,bad\n");
    assertThat(enrol("--faults", table).err())
        .contains("line 2: state must be sound or unsoldered");
  }

  @Test
  void aPictureWithoutARowIsRefused() throws IOException {
    Path blank = folder.resolve("blank.png");
    ImageIO.write(new BufferedImage(400, 200, BufferedImage.TYPE_INT_RGB), "png", blank.toFile());
    Run run = enrol("--sound", blank);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines()).hasSize(1);
  }

  @Test
  void photosAreAddedComparedAndTakenBack() {
    enrol("--sound", picture("sound-0"), picture("sound-1"));
    enrol("--unsoldered", picture("unsoldered-0"), picture("unsoldered-1"));
    assertThat(enrol("--compare", 1).out())
        .contains("version 1 to 2")
        .contains("added: unsoldered-0.jpg")
        .contains("vouches: not yet, now to 8 %");
    assertThat(enrol("--compare", 7).err()).contains("has no version 7; there is 1, 2");
    assertThat(enrol("--undo").out()).contains("taken back").contains("bench ring, version 1");
    assertThat(folder.resolve("ring/2.taken-back.json")).exists();
    assertThat(enrol("--unsoldered", picture("unsoldered-0")).out())
        .as("reports name versions, so none is given twice")
        .contains("bench ring, version 3");
  }

  @Test
  void opinionsOtherThanThoseEnrolledByAreRefused() {
    EnrolledRing.in(folder);
    assertThat(score("mixed-0", "--no-reader").err()).contains("was enrolled by opinions \"both\"");
  }

  @Test
  void aBenchThatWasNeverEnrolledIsRefused() {
    assertThat(score("mixed-0").err()).contains("no bench \"ring\"");
  }
}
