package leadlight.summary.day;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import leadlight.data.Cells;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.scoring.Subject;
import leadlight.text.Sentences;

/** A run as tables (RFC 4180, UTF-8); no cell runs as a formula in a spreadsheet. */
public final class SummaryTables {

  private static final Sentences SENTENCES = Sentences.english();

  private SummaryTables() {}

  /** One line a photo, jobs worst first. */
  public static void photos(DaySummary summary, OutputStream out) throws IOException {
    try (CsvWriter csv = writer(out)) {
      List<String> header =
          new ArrayList<>(
              List.of(
                  "job",
                  "board",
                  "stage",
                  "attempt",
                  "photo",
                  "connector",
                  "verdict",
                  "joints",
                  "acceptable",
                  "process_indicator",
                  "unjudged",
                  "defect",
                  "row_reason"));
      for (FindingKind kind : FindingKind.values()) {
        header.add(kind.id().replace('-', '_'));
      }
      csv.writeRecord(header);
      for (JobLine job : summary.jobs()) {
        for (PhotoLine photo : job.photos()) {
          csv.writeRecord(line(photo));
        }
      }
    }
  }

  private static List<String> line(PhotoLine photo) {
    List<String> line = new ArrayList<>(of(photo.subject()));
    line.add(Cells.harmless(photo.file()));
    line.add(Cells.harmless(photo.connector()));
    line.add(photo.verdict().id());
    line.add("" + photo.tally().joints());
    for (Verdict verdict :
        List.of(Verdict.ACCEPTABLE, Verdict.PROCESS_INDICATOR, Verdict.UNJUDGED, Verdict.DEFECT)) {
      line.add("" + photo.tally().count(verdict));
    }
    line.add(Cells.harmless(photo.rowReason().map(SENTENCES::of).orElse("")));
    for (FindingKind kind : FindingKind.values()) {
      line.add("" + photo.tally().findings().getOrDefault(kind, 0));
    }
    return line;
  }

  /** One line a pin that was looked at twice. */
  public static void changes(DaySummary summary, OutputStream out) throws IOException {
    try (CsvWriter csv = writer(out)) {
      csv.writeRecord(
          "job",
          "board",
          "stage",
          "attempt",
          "photo_before",
          "photo_after",
          "pin",
          "before",
          "after",
          "change");
      for (BeforeAfter pair : summary.changes()) {
        for (PinChange change : pair.changes()) {
          List<String> line = new ArrayList<>(of(pair.after().subject()));
          line.add(Cells.harmless(pair.before().file()));
          line.add(Cells.harmless(pair.after().file()));
          line.add("" + change.pin());
          line.add(change.before().text());
          line.add(change.after().text());
          line.add(change.kind().name().toLowerCase(java.util.Locale.ROOT));
          csv.writeRecord(line);
        }
      }
    }
  }

  private static List<String> of(Subject subject) {
    return List.of(
        Cells.harmless(subject.job()),
        Cells.harmless(subject.board()),
        subject.stage().id(),
        "" + subject.attempt());
  }

  private static CsvWriter writer(OutputStream out) {
    return CsvWriter.builder()
        .lineDelimiter(LineDelimiter.CRLF)
        .build(new OutputStreamWriter(out, StandardCharsets.UTF_8));
  }
}
