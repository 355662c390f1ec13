package leadlight.summary.day;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadlight.model.Verdict;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.row.RowSpec;
import leadlight.record.JobRecord;
import leadlight.record.said.RecordedJoint;
import leadlight.record.said.RecordedRow;
import leadlight.record.scoring.RunPhoto;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import leadlight.summary.board.BoardStanding;

/** Gathers what a run comes to from the record, one photo at a time. */
public final class DayGatherer {

  private static final int MOST_REASONS = 12;

  private final JobRecord record;
  private final Search search;
  private final List<PhotoLine> photos = new ArrayList<>();
  private final Tally total = new Tally();
  private final Map<String, PinStrip> strips = new TreeMap<>();
  private final Map<String, Reason> reasons = new TreeMap<>();
  private final List<Retake> retakes = new ArrayList<>();

  private DayGatherer(JobRecord record, Search search) {
    this.record = record;
    this.search = search;
  }

  /** The summary of a run. */
  public static DaySummary of(JobRecord record, long run, Path folder) {
    return of(record, Search.ofRun(run), folder);
  }

  /** What the photos that are meant come to, whoever scored them: a run, the bench, by hand. */
  public static DaySummary of(JobRecord record, Search search, Path folder) {
    return new DayGatherer(record, search).gather(folder);
  }

  private DaySummary gather(Path folder) {
    record.scorings(search).forEach(this::add);
    search.run().ifPresent(run -> record.eachPhoto(run, this::refused));
    photos.sort(
        Comparator.comparing((PhotoLine line) -> line.subject().job())
            .thenComparing(line -> line.subject().board())
            .thenComparing(line -> line.subject().stage())
            .thenComparing(line -> line.subject().attempt())
            .thenComparing(PhotoLine::file)
            .thenComparing(PhotoLine::scoring));
    return new DaySummary(
        folder,
        jobs(),
        total,
        List.copyOf(strips.values()),
        reasonLines(),
        retakes,
        new DayRates(record, search).of(photos),
        new StagePairs(record).of(photos));
  }

  private void add(Scoring scoring) {
    RecordedRow row = record.row(scoring.id());
    RowSpec spec = scoring.method().settings().row();
    Tally tally = new Tally();
    tally.add(row.joints());
    total.add(tally);
    String connector = spec.connectorId() + ", " + spec.leads() + " leads";
    strips
        .computeIfAbsent(connector, key -> new PinStrip(spec.connectorId(), spec.leads()))
        .add(row.joints());
    for (RecordedJoint joint : row.joints()) {
      if (joint.verdict() == Verdict.UNJUDGED) {
        doubted(joint);
      }
    }
    Verdict verdict =
        row.joints().stream()
            .map(RecordedJoint::verdict)
            .reduce(Verdict::worse)
            .orElse(scoring.verdict());
    photos.add(
        new PhotoLine(
            scoring.id(),
            scoring.subject(),
            scoring.photo().file(),
            connector,
            verdict,
            tally,
            scoring.results(),
            scoring.rowReason(),
            scoring.fitness()));
    retake(scoring, tally);
  }

  /** Counts each topic of a joint's doubts once. */
  private void doubted(RecordedJoint joint) {
    Map<String, Doubt> topics = new LinkedHashMap<>();
    joint.standing().joint().doubts().forEach(doubt -> topics.putIfAbsent(doubt.topic(), doubt));
    topics.forEach(
        (topic, doubt) ->
            reasons.merge(
                topic,
                new Reason(doubt, 1),
                (sum, one) -> new Reason(sum.doubt(), sum.joints() + 1)));
  }

  private void retake(Scoring scoring, Tally tally) {
    Optional<Note> why =
        scoring
            .rowReason()
            .or(
                () ->
                    tally.count(Verdict.UNJUDGED) > 0
                        ? Stream.concat(scoring.fitness().stream(), scoring.rowNotes().stream())
                            .findFirst()
                        : Optional.empty());
    if (why.isPresent()) {
      retakes.add(new Retake(scoring.subject(), scoring.photo().file(), why, ""));
    }
  }

  private void refused(RunPhoto photo) {
    String file = photo.photo().getFileName().toString();
    photo
        .message()
        .ifPresent(why -> retakes.add(new Retake(photo.subject(), file, Optional.empty(), why)));
  }

  private List<JobLine> jobs() {
    Map<String, List<PhotoLine>> byJob = new LinkedHashMap<>();
    photos.forEach(
        line -> byJob.computeIfAbsent(line.subject().job(), job -> new ArrayList<>()).add(line));
    List<JobLine> jobs = new ArrayList<>();
    byJob.forEach((job, lines) -> jobs.add(job(job, lines)));
    jobs.sort(
        Comparator.comparing(JobLine::fit)
            .thenComparing(JobLine::verdict, Comparator.reverseOrder())
            .thenComparing(line -> -line.tally().count(Verdict.DEFECT))
            .thenComparing(line -> -line.tally().count(Verdict.UNJUDGED))
            .thenComparing(JobLine::job));
    return jobs;
  }

  private JobLine job(String job, List<PhotoLine> lines) {
    List<PhotoLine> last = DayRates.lastStages(lines);
    Tally tally = new Tally();
    last.forEach(line -> tally.add(line.tally()));
    List<BoardStanding> boards =
        lines.stream()
            .map(line -> line.subject().board())
            .distinct()
            .map(board -> standing(job, board))
            .toList();
    // Of legs, too, and of rows whose last photo is of another day.
    Verdict verdict =
        Stream.concat(
                last.stream().map(PhotoLine::verdict), boards.stream().map(BoardStanding::verdict))
            .reduce(Verdict::worse)
            .orElseThrow();
    return new JobLine(
        job, boards.size(), verdict, tally, lines, boards.stream().allMatch(DayGatherer::isFit));
  }

  /** How often a joint was heated forbids nothing, so that its limit does not matter here. */
  private BoardStanding standing(String job, String board) {
    return BoardStanding.of(record, job, board, Integer.MAX_VALUE);
  }

  /** A person's no counts, whatever the photos show. */
  private static boolean isFit(BoardStanding board) {
    return board.mayBeHandedBack()
        && board.open().stream()
            .noneMatch(point -> point.code() == BoardStanding.Code.NOT_HANDED_BACK);
  }

  private List<Reason> reasonLines() {
    return reasons.values().stream()
        .sorted(
            Comparator.comparingInt((Reason reason) -> reason.joints())
                .reversed()
                .thenComparing(reason -> reason.doubt().topic()))
        .limit(MOST_REASONS)
        .toList();
  }
}
