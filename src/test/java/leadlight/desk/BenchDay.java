package leadlight.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.Browser;
import leadlight.app.output.Reports;
import leadlight.connector.RowRequest;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.Presets;
import leadlight.page.PhotoPage;
import leadlight.page.words.PageContext;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.record.JobRecord;
import leadlight.report.ReportWriter;
import leadlight.report.words.ReportContext;
import leadlight.report.words.StatedLimits;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;

/** Six jobs from complaint to hand-back, played on the bench page with a fake camera. */
final class BenchDay {

  static final List<String> JOBS =
      List.of(
          "0501 base station Weir Lane",
          "0502 logger Mill Pond",
          "0503 logger Ferry Steps",
          "0504 base station Old Lock",
          "0505 base station Hill Farm",
          "0506 logger Reed Bank");

  private static final Path SAMPLES = Path.of("sample-images");
  private static final Path NUDGE = Path.of("src/test/resources/nudge");

  private final Path folder;
  private final List<Map<String, Object>> steps = new ArrayList<>();

  BenchDay(Path folder) {
    this.folder = folder;
  }

  Path record() {
    return folder.resolve("record");
  }

  Path out() {
    return folder.resolve("out");
  }

  /** Plays the day; what the browser saw. */
  JsonNode play(Path shots) throws IOException, InterruptedException {
    plan();
    return browse(shots, "en");
  }

  /** Looks at the bench as the day left it, in a language. */
  JsonNode look(Path shots, String language) throws IOException, InterruptedException {
    steps.clear();
    return browse(shots, language);
  }

  private JsonNode browse(Path shots, String language) throws IOException, InterruptedException {
    Browser.chromium();
    Files.createDirectories(shots);
    Files.createDirectories(out());
    Path plan = folder.resolve("plan.json");
    String picture = stream(SAMPLES.resolve("base-station-video-mixed.jpg")).toString();
    new ObjectMapper()
        .writeValue(
            plan.toFile(),
            Map.of(
                "language",
                language,
                "picture",
                picture,
                "steps",
                steps,
                "board",
                Map.of("job", JOBS.get(5), "stage", "as-received", "preset", "twelve")));
    try (JobRecord record = JobRecord.open(record());
        BenchServer server = BenchServer.start(setup(record, language))) {
      return Browser.run("bench.mjs", shots, List.of(server.address(), plan.toString()));
    }
  }

  private void plan() throws IOException {
    Path mixed = SAMPLES.resolve("base-station-video-mixed.jpg");
    Path good = SAMPLES.resolve("base-station-video-good.jpg");
    step(
        0,
        mixed,
        "as-received",
        act("lost"),
        act("take", "first"),
        act("twice", "6", 3),
        act("heat", 14));
    step(
        0,
        good,
        "after-rework",
        act("take"),
        act("looked", "microscope, 40x"),
        act("pass", "picture on a screen"),
        act("yes", ""));
    step(1, NUDGE.resolve("nudge-007-a.jpg"), "as-received", act("take"));
    step(
        1,
        NUDGE.resolve("nudge-007-i.jpg"),
        "as-received",
        act("push"),
        act("no", "a lead is loose"));
    step(
        2,
        SAMPLES.resolve("logger-display-bridge.jpg"),
        "as-received",
        act("take"),
        act("ok", 3),
        act("short", 11, 12),
        act("refused", "looks fine"),
        act("no", "bridges"));
    step(
        3,
        good,
        "final",
        act("take"),
        act("moves", 5),
        act("back", 5),
        act("open", 7),
        act("seen", 9, "through the microscope"),
        act("back", 9),
        act("refused", ""),
        act("back", 7),
        act("twice", "1", 7),
        act("pass", "all channels"),
        act("yes", "firm leads, microscope"));
    step(
        4,
        SAMPLES.resolve("base-station-port-unfit.jpg"),
        "as-received",
        act("take", "unfit"),
        act("no", "needs a sharp photo"));
    step(
        5,
        SAMPLES.resolve("logger-memory-starved.jpg"),
        "as-received",
        act("take"),
        act("seen", 7, "plenty of solder at the side"),
        act("back", 7),
        act("heat", 10),
        act("no", "starved"));
  }

  private static List<Object> act(Object... parts) {
    return List.of(parts);
  }

  @SafeVarargs
  private void step(int job, Path picture, String stage, List<Object>... acts) throws IOException {
    Map<String, Object> step = new LinkedHashMap<>();
    step.put("job", JOBS.get(job));
    step.put("stage", stage);
    step.put("preset", List.of("port", "twelve", "sixteen", "port", "port", "twelve").get(job));
    step.put("picture", stream(picture).toString());
    if (stage.equals("as-received")) {
      step.put("complaint", "no picture since the storm");
      step.put("serial", "RL-" + job);
    } else {
      step.put("part", "video port, lot 7");
    }
    step.put("acts", List.of(acts));
    steps.add(step);
  }

  /**
   * The picture as the fake camera reads it: two equal frames of uncompressed video, Y'CbCr 4:2:0
   * of limited range (ITU-R BT.601-7, table 3). Two a second, for each costs the machine drawing.
   */
  private Path stream(Path picture) throws IOException {
    Path stream = folder.resolve(picture.getFileName().toString().replace(".jpg", ".y4m"));
    try (Photo photo = new PhotoReader().read(picture)) {
      int wide = photo.frame().widthPx();
      int width = wide & ~1;
      int height = photo.frame().heightPx() & ~1;
      byte[] rgb = photo.frame().rgb();
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      out.writeBytes(ascii("YUV4MPEG2 W%d H%d F2:1 Ip A1:1\n".formatted(width, height)));
      for (int frame = 0; frame < 2; frame++) {
        out.writeBytes(ascii("FRAME\n"));
        plane(out, rgb, new int[] {wide, width, height, 1}, 16, 65.481, 128.553, 24.966);
        plane(out, rgb, new int[] {wide, width, height, 2}, 128, -37.797, -74.203, 112);
        plane(out, rgb, new int[] {wide, width, height, 2}, 128, 112, -93.786, -18.214);
      }
      Files.write(stream, out.toByteArray());
    }
    return stream;
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  /** One plane; the size is the picture's width, width and height of the video, and the step. */
  private static void plane(
      ByteArrayOutputStream out, byte[] rgb, int[] size, double zero, double... by) {
    for (int y = 0; y < size[2]; y += size[3]) {
      for (int x = 0; x < size[1]; x += size[3]) {
        int at = 3 * (y * size[0] + x);
        double sum = 0;
        for (int c = 0; c < 3; c++) {
          sum += by[c] * (rgb[at + c] & 0xff);
        }
        out.write((int) Math.round(zero + sum / 255));
      }
    }
  }

  /** What all reports of the day say. */
  static ReportContext context(String language) {
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    return new ReportContext("test", "test", Reports.stated(limits), Messages.of(language));
  }

  private BenchSetup setup(JobRecord record, String language) {
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    ReportContext context = context(language);
    PhotoPage page =
        new PhotoPage(
            new PageContext(
                "test",
                new StatedLimits(limits.id(), true, limits.name(), limits.notes()),
                Messages.of(language),
                LengthUnit.MM,
                Optional.empty()));
    return new BenchSetup(
        record,
        record(),
        out(),
        Optional.empty(),
        RowRequest.NONE,
        2,
        new Presets(List.of(row("port", 19), row("twelve", 12), row("sixteen", 16))),
        limits,
        new ReportWriter(context, page::html),
        Messages.of(language),
        "Ada",
        Clock.systemDefaultZone(),
        Optional.empty());
  }

  private static Presets.Preset row(String word, int leads) {
    return new Presets.Preset(
        word,
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.of(leads),
        OptionalDouble.of(0.5),
        2,
        Optional.of("ring"),
        Optional.empty());
  }
}
