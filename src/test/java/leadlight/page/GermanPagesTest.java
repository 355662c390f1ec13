package leadlight.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import leadlight.model.EveryRemark;
import leadlight.model.FindingKind;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.Unit;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.LimitCheck;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.remark.Reason;
import leadlight.model.remark.Remark;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Method;
import leadlight.record.scoring.NewScoring;
import leadlight.record.scoring.RunStart;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import leadlight.summary.day.DayGatherer;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * German pages hold no English: every doubt, note, finding and signal is put on a page, and its
 * text is searched for English words. The pages lie in {@code target/pages} to be looked at.
 */
class GermanPagesTest {

  private static final Path SEEN = Path.of("target/pages");
  private static final ZonedDateTime NOON =
      ZonedDateTime.of(2026, 3, 1, 12, 0, 0, 0, ZoneId.of("Europe/Berlin"));

  /** Words that English text of this trade can hardly do without, and that German has not. */
  private static final Set<String> ENGLISH =
      Set.of(
          "the",
          "and",
          "of",
          "with",
          "from",
          "is",
          "are",
          "not",
          "this",
          "that",
          "or",
          "by",
          "be",
          "has",
          "have",
          "its",
          "it",
          "on",
          "at",
          "to",
          "for",
          "lead",
          "leads",
          "joint",
          "joints",
          "row",
          "photo",
          "picture",
          "shows",
          "memory",
          "published",
          "calculated",
          "practice",
          "source",
          "table",
          "class",
          "missing",
          "bridge",
          "excess",
          "solder",
          "look",
          "prod",
          "measure",
          "usual",
          "sure",
          "likely",
          "chance",
          "seen",
          "judged",
          "defect",
          "sound",
          "acceptable",
          "possibly",
          "between",
          "ground",
          "supply",
          "words",
          "received",
          "rework");

  private static final Pattern WORD = Pattern.compile("\\p{L}+");
  private static final Pattern SHOWN_IN_TAGS =
      Pattern.compile("(?:alt|title|aria-label)=\"([^\"]*)\"");

  @TempDir private Path folder;

  @AfterAll
  static void release() {
    ScoredRow.closeAll();
  }

  private static List<Remark> remarks(Class<? extends Remark> type) {
    return EveryRemark.samples().stream()
        .filter(type::isInstance)
        .filter(it -> !(it instanceof Doubt.Earlier) && !(it instanceof NoteOfJoint.Earlier))
        .toList();
  }

  private static List<Note> notes() {
    return remarks(Note.class).stream().map(Note.class::cast).toList();
  }

  private static ScoredPhoto with(
      List<GradedJoint> joints, Verdict verdict, List<Note> rowNotes, List<Note> fitness) {
    ScoredPhoto found = ScoredRow.SCORED;
    return new ScoredPhoto(
        found.photo(),
        found.settings(),
        found.row(),
        found.view(),
        joints,
        verdict,
        rowNotes,
        fitness,
        found.notVisible(),
        found.cautions());
  }

  /** Every doubt on some joint, every note on the photo. */
  private static ScoredPhoto doubtful() {
    List<GradedJoint> joints = new ArrayList<>(ScoredRow.SCORED.joints());
    List<Remark> doubts = remarks(Doubt.class);
    for (int pin = 1; pin <= joints.size(); pin++) {
      List<Doubt> mine = new ArrayList<>();
      for (int i = pin - 1; i < doubts.size(); i += joints.size()) {
        mine.add((Doubt) doubts.get(i));
      }
      ScoredRow.set(joints, pin, Verdict.UNJUDGED, List.of(), mine.toArray(new Doubt[0]));
    }
    return with(
        joints,
        Verdict.UNJUDGED,
        List.of(new NoteOfRow.AlikeThroughout(), new NoteOfRow.Unfamiliar()),
        notes());
  }

  /** Fit for nothing: each joint for the same reason. */
  private static ScoredPhoto unfit() {
    List<GradedJoint> joints = new ArrayList<>(ScoredRow.SCORED.joints());
    for (int pin = 1; pin <= joints.size(); pin++) {
      ScoredRow.set(joints, pin, Verdict.UNJUDGED, List.of(), new Doubt.Blurred(0.213));
    }
    return with(
        joints,
        Verdict.UNJUDGED,
        List.of(),
        List.of(new NoteOfPhoto.SoftForPitch(9.3, 0.213, true), new NoteOfPhoto.LowContrast()));
  }

  /** Every finding, every signal, a limit, and grounds. */
  private static ScoredPhoto bad() {
    List<GradedJoint> joints = new ArrayList<>(ScoredRow.SCORED.joints());
    List<Reason> signals = signals();
    int pin = 1;
    for (FindingKind kind : FindingKind.values()) {
      Finding finding = finding(kind, pin, signals);
      GradedJoint old = joints.get(pin - 1);
      joints.set(
          pin - 1,
          new GradedJoint(
              old.joint(),
              Verdict.DEFECT,
              List.of(finding),
              List.of(overhang()),
              List.of(),
              List.of()));
      pin++;
    }
    GradedJoint old = joints.get(pin - 1);
    List<Note> grounds =
        notes().stream().filter(GermanPagesTest::ground).collect(Collectors.toList());
    joints.set(
        pin - 1,
        new GradedJoint(
            old.joint(), Verdict.ACCEPTABLE, List.of(), List.of(overhang()), List.of(), grounds));
    return with(joints, Verdict.DEFECT, List.of(), List.of());
  }

  private static boolean ground(Note note) {
    return Messages.of("en").has("note." + note.code() + ".brief");
  }

  private static Finding finding(FindingKind kind, int pin, List<Reason> signals) {
    boolean lack = kind == FindingKind.OPEN || kind == FindingKind.INSUFFICIENT;
    return new Finding(
        kind,
        kind == FindingKind.BRIDGE ? List.of(pin, pin + 1) : List.of(pin),
        Verdict.DEFECT,
        0.995,
        lack ? OptionalDouble.of(0.7) : OptionalDouble.empty(),
        Optional.of(new NoteOfJoint.AgainstLimit(0.162, 0.022, 0.1)),
        kind == FindingKind.OPEN ? signals : List.of(),
        "clause of the limits file",
        "");
  }

  private static LimitCheck overhang() {
    return new LimitCheck(
        Measure.SIDE_OVERHANG, new Quantity(0.05, 0.01, Unit.MM), 0.1, true, 0.99, "the clause");
  }

  /** Each signal above and below its usual value, by itself and against its row. */
  private static List<Reason> signals() {
    List<Reason> signals = new ArrayList<>();
    for (String key : new TreeSet<>(Messages.of("en").keys())) {
      if (key.startsWith("signal.") && key.endsWith(".more")) {
        String name = key.substring("signal.".length(), key.length() - ".more".length());
        signals.add(new Reason(name, 2, 1, 1));
      } else if (key.startsWith("signal.") && key.endsWith(".less")) {
        String name = key.substring("signal.".length(), key.length() - ".less".length());
        signals.add(new Reason("row_" + name, 1, 2, 1));
      }
    }
    return signals;
  }

  private static ScoredPhoto without(Note reason) {
    ScoredPhoto found = ScoredRow.SCORED;
    return new ScoredPhoto(
        found.photo(),
        found.settings(),
        new RowOutcome.NotFound(reason, List.of()),
        Optional.empty(),
        List.of(),
        Verdict.UNJUDGED,
        List.of(),
        List.of(new NoteOfPhoto.NoEdges()),
        found.notVisible(),
        found.cautions());
  }

  private static byte[] page(ScoredPhoto scored) {
    return new PhotoPage(ScoredRow.context("de", LengthUnit.MM)).html(scored, ScoredRow.frame());
  }

  /** What a person can read of a page, but for names of files. */
  private static String readable(byte[] html) {
    String page = new String(html, StandardCharsets.UTF_8);
    String body =
        page.substring(page.indexOf("</head>")).replaceAll("(?s)<script>.*?</script>", " ");
    String inTags =
        SHOWN_IN_TAGS
            .matcher(body)
            .results()
            .map(it -> it.group(1))
            .collect(Collectors.joining(" "));
    return (body.replaceAll("<[^>]*>", " ") + " " + inTags)
        .replace(ScoredRow.SCORED.photo().file(), " ")
        .replace("\u00ad", "");
  }

  private static Set<String> english(String text) {
    return WORD.matcher(text)
        .results()
        .map(MatchResult::group)
        .map(word -> word.toLowerCase(Locale.ROOT))
        .filter(ENGLISH::contains)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static void check(String name, byte[] html) throws IOException {
    Files.createDirectories(SEEN);
    Files.write(SEEN.resolve("de-" + name + ".html"), html);
    String text = readable(html);
    assertThat(text).contains("Lötstelle").hasSizeGreaterThan(1000);
    assertThat(english(text)).as(name).isEmpty();
  }

  @Test
  void theSearchFindsEnglishWhereItIs() {
    byte[] html =
        new PhotoPage(ScoredRow.context("en", LengthUnit.MM)).html(bad(), ScoredRow.frame());
    assertThat(english(readable(html))).contains("the", "of", "lead", "sure", "published");
  }

  @Test
  void aPhotoThatIsUnfitIsToldSoInGerman() throws IOException {
    check("unfit", page(unfit()));
  }

  @Test
  void everyDoubtAndEveryNoteIsToldInGerman() throws IOException {
    check("doubtful", page(doubtful()));
  }

  @Test
  void everyFindingSignalAndGroundIsToldInGerman() throws IOException {
    check("bad", page(bad()));
  }

  @Test
  void aPhotoWithoutARowIsToldSoInGerman() throws IOException {
    check("not-found", page(without(new NoteOfRow.OtherCount(19, 20))));
  }

  @Test
  void theCustomersSheetIsGermanAsPageAndAsPdf() throws IOException {
    for (ScoredPhoto now : List.of(bad(), doubtful(), without(new NoteOfRow.NoRow(19)))) {
      CustomerSheet sheet =
          new CustomerSheet(
              ScoredRow.context("de", LengthUnit.MM),
              CustomerSheetTest.request("A-1", "B-2", Optional.empty()),
              Optional.of(new CustomerSheet.Shot(bad(), ScoredRow.frame())),
              new CustomerSheet.Shot(now, ScoredRow.frame()));
      Files.createDirectories(SEEN);
      Files.write(SEEN.resolve("de-sheet.html"), sheet.html());
      assertThat(english(readable(sheet.html()))).isEmpty();
      try (PDDocument document = Loader.loadPDF(sheet.pdf())) {
        String text = new PDFTextStripper().getText(document);
        assertThat(text).contains("Kontakt");
        assertThat(english(text)).isEmpty();
      }
    }
  }

  @Test
  void theDaysPageIsGerman() throws IOException {
    Path photo = Files.writeString(folder.resolve("a.jpg"), "pixels");
    Path results = Files.writeString(folder.resolve("a.json"), "{}");
    Method method =
        new Method(ScoredRow.SCORED.settings(), "a".repeat(64), "test", Optional.empty());
    try (JobRecord record = JobRecord.open(folder.resolve("record"))) {
      long run = record.startRun(new RunStart(folder, "source", "Ada", NOON, "test"));
      List<ScoredPhoto> stages = List.of(bad(), doubtful(), ScoredRow.withAllVerdicts());
      for (int i = 0; i < stages.size(); i++) {
        Subject subject = new Subject("0412", "7", Stage.values()[i], 1);
        record.add(run, scoring(subject, photo, stages.get(i), method, results));
      }
      Subject other = new Subject("0413", "1", Stage.AFTER_REWORK, 2);
      record.add(run, scoring(other, photo, without(new NoteOfRow.NoRow(19)), method, results));
      byte[] html = DayPage.html(DayGatherer.of(record, run, folder), "test", Messages.of("de"));
      check("day", html);
      assertThat(readable(html)).contains("nach der Nacharbeit 2", "möglicherweise Lotbrücke: ");
    }
  }

  private static NewScoring scoring(
      Subject subject, Path photo, ScoredPhoto scored, Method method, Path results) {
    return new NewScoring(subject, photo, scored, method, results, "Ada", NOON, false);
  }
}
