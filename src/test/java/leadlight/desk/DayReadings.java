package leadlight.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.PhotoShelf;
import leadlight.life.StandingPhoto;
import leadlight.model.Verdict;
import leadlight.photo.Photo;
import leadlight.record.said.RecordedJoint;
import leadlight.report.picture.AnnotatedPicture;
import leadlight.report.picture.LegPhotos;
import leadlight.report.words.ReportContext;
import leadlight.summary.board.BoardStanding;

/** What each file of the played day says of each pin, read as a stranger would. */
final class DayReadings {

  private DayReadings() {}

  /** Verdict by pin, as the record has it. */
  static Map<Integer, String> record(BoardStanding.Shot shot) {
    Map<Integer, String> pins = new TreeMap<>();
    for (RecordedJoint joint : shot.row().joints()) {
      pins.put(joint.pin(), joint.verdict().id());
    }
    return pins;
  }

  /** Verdict by pin of each file of a photo, by what the file is. */
  static Map<String, Map<Integer, String>> files(BoardStanding.Shot shot) throws IOException {
    Map<String, Map<Integer, String>> read = new LinkedHashMap<>();
    read.put("table", csv(beside(shot, ".csv")));
    read.put("report", json(shot.scoring().results()));
    String page = Files.readString(beside(shot, ".html"));
    read.put(
        "row of the page", found(page, "class=\"tab (?<is>[a-z-]+)\" id=\"tab-(?<pin>\\d+)\""));
    read.put(
        "photo of the page", found(page, "class=\"spot (?<is>[a-z-]+)\" id=\"spot-(?<pin>\\d+)\""));
    read.put(
        "panels of the page",
        found(page, "class=\"pin card (?<is>[a-z-]+)\" id=\"pin-(?<pin>\\d+)\""));
    return read;
  }

  private static Path beside(BoardStanding.Shot shot, String ending) {
    String json = shot.scoring().results().toString();
    return Path.of(json.substring(0, json.length() - ".json".length()) + ending);
  }

  private static Map<Integer, String> csv(Path file) throws IOException {
    Map<Integer, String> pins = new TreeMap<>();
    try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(file)) {
      reader.forEach(
          line -> pins.put(Integer.valueOf(line.getField("pin")), line.getField("verdict")));
    }
    return pins;
  }

  private static Map<Integer, String> json(Path file) throws IOException {
    Map<Integer, String> pins = new TreeMap<>();
    JsonNode tree = new ObjectMapper().readTree(file.toFile());
    tree.get("joints")
        .forEach(joint -> pins.put(joint.get("pin").asInt(), joint.get("verdict").asText()));
    return pins;
  }

  private static Map<Integer, String> found(String text, String pattern) {
    Map<Integer, String> pins = new TreeMap<>();
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    while (matcher.find()) {
      pins.put(Integer.valueOf(matcher.group("pin")), matcher.group("is"));
    }
    return pins;
  }

  /** The picture that lies beside the report. */
  static byte[] picture(BoardStanding.Shot shot) throws IOException {
    return Files.readAllBytes(beside(shot, ".annotated.png"));
  }

  /** The picture as it must be, made of the verdicts that count. */
  static byte[] pictureOf(BoardStanding.Shot shot, PhotoShelf shelf, ReportContext context) {
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    try (Photo photo = shelf.open(shot.scoring()).orElseThrow()) {
      return AnnotatedPicture.png(
          StandingPhoto.of(limits, photo, shot.scoring(), shot.row()),
          photo.frame(),
          LegPhotos.NONE,
          context);
    }
  }

  /** Pins that a customer's sheet names in its last list but one: what remains. */
  static Set<Integer> remaining(Path sheet) throws IOException {
    String text = Files.readString(sheet);
    int from = text.indexOf("<h2>What still needs work or was not inspected</h2>");
    Set<Integer> pins = new TreeSet<>();
    if (from >= 0) {
      Matcher contacts =
          Pattern.compile("Contacts? ([0-9\u2013, ]*[0-9])")
              .matcher(text.substring(from, text.indexOf("</section>", from)));
      while (contacts.find()) {
        for (String run : contacts.group(1).split(", ?", -1)) {
          String[] ends = run.split("\u2013", -1);
          int to = Integer.parseInt(ends[ends.length - 1].strip());
          for (int pin = Integer.parseInt(ends[0].strip()); pin <= to; pin++) {
            pins.add(pin);
          }
        }
      }
    }
    return pins;
  }

  /** Pins of a shot that a sheet may not pass over. */
  static Set<Integer> notSound(BoardStanding.Shot shot) {
    Set<Integer> pins = new TreeSet<>();
    record(shot)
        .forEach(
            (pin, verdict) -> {
              if (verdict.equals(Verdict.DEFECT.id()) || verdict.equals(Verdict.UNJUDGED.id())) {
                pins.add(pin);
              }
            });
    return pins;
  }

  /** Jobs of the summary in their order, and whether it says that they must not be handed back. */
  static Map<String, Boolean> jobs(Path summary) throws IOException {
    Map<String, Boolean> unfit = new LinkedHashMap<>();
    Matcher job =
        Pattern.compile("(?s)class=\"job\">.*?<bdi>(.*?)</bdi> <span class=\"stand\">(.*?)</span>")
            .matcher(Files.readString(summary));
    while (job.find()) {
      unfit.put(job.group(1), job.group(2).contains("not fit to hand back"));
    }
    return unfit;
  }

  /** Of each kind of row on the summary, by its number of leads: defects and unjudged by pin. */
  static Map<Integer, Map<String, String>> strips(Path summary) throws IOException {
    Map<Integer, Map<String, String>> strips = new TreeMap<>();
    Matcher strip =
        Pattern.compile("(?s)<h3>[^<]*, (\\d+) leads</h3>\\s*<div class=\"strip\">(.*?)</div>")
            .matcher(Files.readString(summary));
    while (strip.find()) {
      Map<String, String> lines = new LinkedHashMap<>();
      Matcher line = Pattern.compile("<tr><th>([^<]*)</th>(.*?)</tr>").matcher(strip.group(2));
      while (line.find()) {
        lines.merge(
            line.group(1),
            line.group(2).replaceAll("<[^>]*>", " ").strip().replaceAll(" +", " "),
            (part, next) -> part + " " + next);
      }
      strips.put(Integer.valueOf(strip.group(1)), lines);
    }
    return strips;
  }
}
