package leadlight.fuzz;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import leadlight.batch.list.Defaults;
import leadlight.batch.list.JobList;
import leadlight.connector.ConnectorLibrary;
import leadlight.connector.RowRequest;
import leadlight.connector.footprint.FootprintImport;
import leadlight.drill.set.OpenSet;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.quality.Table;
import leadlight.quality.agreement.AgreementStudy;
import leadlight.quality.chart.ChartData;
import leadlight.quality.chart.ChartKind;
import leadlight.quality.chart.ControlChart;
import leadlight.quality.gauge.GaugeInput;
import leadlight.quality.gauge.GaugePages;
import leadlight.quality.grades.Grades;
import leadlight.quality.grades.Reading;
import leadlight.record.JobRecord;
import leadlight.vision.Frame;

/**
 * One class a target, as Jazzer wants them: {@code fuzzerTestOneInput} takes bytes. What a user can
 * hand in ends in a result or in a {@link UserError}; anything else is thrown on and is a find.
 */
public final class FuzzTargets {

  private FuzzTargets() {}

  /** What is done with bytes. */
  private interface Work {
    void run() throws IOException;
  }

  private static void mayRefuse(Work work) {
    try {
      work.run();
    } catch (UserError e) {
      if (e.getMessage() == null || e.getMessage().isBlank()) {
        throw new IllegalStateException("a refusal without words", e);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A picture file, read and decoded. */
  public static final class Intake {

    private static final PhotoReader READER = new PhotoReader();

    private Intake() {}

    public static void fuzzerTestOneInput(byte[] file) {
      mayRefuse(
          () -> {
            try (Photo photo = READER.read(Scratch.write("photo", file))) {
              if (photo.frame().widthPx() != photo.info().widthPx()) {
                throw new IllegalStateException("a photo that is not what it says");
              }
            }
          });
      if (Frame.live() != 0) {
        throw new IllegalStateException("a picture was not given back");
      }
    }
  }

  /** A block of Exif metadata in a picture that is whole: it costs the metadata at most. */
  public static final class Metadata {

    private static final PhotoReader READER = new PhotoReader();
    private static final byte[] WHOLE = resource("/photo/grey.jpg");
    private static final int LONGEST = 65_525;

    private Metadata() {}

    public static void fuzzerTestOneInput(byte[] block) {
      byte[] exif = Arrays.copyOf(block, Math.min(block.length, LONGEST));
      ByteBuffer jpeg = ByteBuffer.allocate(WHOLE.length + 10 + exif.length);
      jpeg.put(WHOLE, 0, 2).put((byte) 0xff).put((byte) 0xe1).putShort((short) (8 + exif.length));
      jpeg.put(new byte[] {'E', 'x', 'i', 'f', 0, 0}).put(exif).put(WHOLE, 2, WHOLE.length - 2);
      READER.read(Scratch.write("metadata.jpg", jpeg.array())).close();
    }
  }

  /** A footprint file. */
  public static final class Footprint {

    private Footprint() {}

    public static void fuzzerTestOneInput(byte[] file) {
      mayRefuse(() -> FootprintImport.of(Scratch.write("own.kicad_mod", file), Optional.of("own")));
    }
  }

  /** A connector file. */
  public static final class Connector {

    private static final ConnectorLibrary LIBRARY = ConnectorLibrary.builtIn();

    private Connector() {}

    public static void fuzzerTestOneInput(byte[] file) {
      mayRefuse(
          () -> {
            leadlight.connector.Connector own =
                LIBRARY.find(Scratch.write("own.json", file).toString());
            if (own.rows().isEmpty()) {
              throw new IllegalStateException("a connector without a row");
            }
          });
    }
  }

  /** A file of limits. */
  public static final class Limits {

    private Limits() {}

    public static void fuzzerTestOneInput(byte[] file) {
      mayRefuse(() -> AcceptanceSet.load(Scratch.write("limits.json", file).toString()));
    }
  }

  /** A list of photos and jobs. */
  public static final class Manifest {

    private static final OptionalInt NO_NUMBER = OptionalInt.empty();
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final Defaults DEFAULTS =
        new Defaults(
            new RowRequest(Optional.empty(), NO_NUMBER, NO_NUMBER, NONE, NONE, NONE, false, false),
            Optional.empty(),
            2);

    private Manifest() {}

    public static void fuzzerTestOneInput(byte[] file) {
      mayRefuse(() -> JobList.read(Scratch.write("day.csv", file), DEFAULTS));
    }
  }

  /** Tables of grades, readings and counts; the first byte says which. */
  public static final class Csv {

    private static final Reading WORDS =
        new Reading(Set.of("0", "bad"), Set.of("1", "good"), Set.of("unjudged"), false);

    private Csv() {}

    public static void fuzzerTestOneInput(byte[] kindAndFile) {
      if (kindAndFile.length == 0) {
        return;
      }
      Path file =
          Scratch.write("table.csv", Arrays.copyOfRange(kindAndFile, 1, kindAndFile.length));
      mayRefuse(
          () -> {
            switch (kindAndFile[0] & 3) {
              case 0 ->
                  new AgreementStudy(Grades.of(Grades.read(file, WORDS)), WORDS, Optional.empty())
                      .system();
              case 1 ->
                  GaugePages.page(GaugeInput.read(file), List.of(), Set.of("unjudged"), "operator");
              default ->
                  ControlChart.of(
                      ChartKind.P,
                      ChartData.read(Table.read(file), ChartKind.P, "group", WORDS).groups(),
                      true);
            }
          });
    }
  }

  /** The file of a practice deck, beside one card's picture. */
  public static final class PracticeSet {

    private static final Path CARD = Scratch.write("card-001.jpg", resource("/photo/grey.jpg"));

    private PracticeSet() {}

    public static void fuzzerTestOneInput(byte[] file) {
      Scratch.write("deck.json", file);
      mayRefuse(() -> OpenSet.read(CARD.getParent()).set().joints());
    }
  }

  /** A complete export, read back into a new record. */
  public static final class Import {

    private Import() {}

    public static void fuzzerTestOneInput(byte[] file) {
      Path folder = Scratch.cleared("record");
      mayRefuse(
          () -> {
            try (BufferedReader lines =
                new BufferedReader(
                    new InputStreamReader(
                        new ByteArrayInputStream(file), StandardCharsets.UTF_8))) {
              JobRecord.importInto(folder, lines, "all.jsonl");
            }
            try (JobRecord made = JobRecord.open(folder)) {
              made.scorings(leadlight.record.scoring.Search.all());
            }
          });
    }
  }

  private static byte[] resource(String name) {
    try {
      return Files.readAllBytes(Path.of("src/test/resources" + name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
