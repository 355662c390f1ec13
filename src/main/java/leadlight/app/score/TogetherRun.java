package leadlight.app.score;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.photo.Deadline;
import leadlight.photo.Photo;
import leadlight.photo.PhotoFiles;
import leadlight.pipeline.PhotoScorer;
import leadlight.report.ReportWriter;
import leadlight.report.WrittenReport;
import leadlight.together.Burst;
import leadlight.together.JoinedRow;
import leadlight.together.PlacedJoin;
import leadlight.vision.Frame;

/** Scores photos of one row together: joined, or against the photo taken before soldering. */
public final class TogetherRun {

  private final PhotoScorer scorer;
  private final AcceptanceSet limits;
  private final ReportWriter writer;
  private final ResultPlace place;
  private final Consumer<Told> told;

  public TogetherRun(
      Settings settings,
      AcceptanceSet limits,
      ReportWriter writer,
      ResultPlace place,
      Consumer<Told> told) {
    this.scorer = new PhotoScorer(settings, limits);
    this.limits = limits;
    this.writer = writer;
    this.place = place;
    this.told = told;
  }

  /** All photos joined into the first. */
  public void sameRow(List<Path> files) {
    if (files.size() < 2) {
      throw new UserError("--same-row needs two photos or more of the row");
    }
    List<Photo> open = new ArrayList<>();
    try {
      List<JoinedRow.View> views = new ArrayList<>();
      for (Path file : files) {
        views.add(view(file, open));
      }
      report(new JoinedRow(limits).of(views), ".joined", open.get(0).frame());
    } finally {
      open.forEach(Photo::close);
    }
  }

  /** Each photo against the one taken before. */
  public void placed(List<Path> files, Path before) {
    for (Path file : files) {
      List<Photo> open = new ArrayList<>();
      try {
        JoinedRow.View after = view(file, open);
        JoinedRow.Result result = new PlacedJoin(limits).of(after, view(before, open));
        report(result, "", open.get(0).frame());
      } finally {
        open.forEach(Photo::close);
      }
    }
  }

  /**
   * The frames of a burst.
   *
   * @throws UserError if they are too few or too many
   */
  public static List<Path> frames(Path folder) {
    List<Path> files = PhotoFiles.in(folder);
    new Burst().check(folder.toString(), files.size());
    return files;
  }

  /** All pictures of a folder stacked. */
  public void burst(Path folder) {
    List<Path> files = frames(folder);
    List<Photo> open = new ArrayList<>();
    try {
      for (Path file : files) {
        open.add(new Deadline().read(file));
      }
      List<Burst.Shot> shots =
          open.stream().map(photo -> new Burst.Shot(photo.info(), photo.frame())).toList();
      try (Burst.Result result =
          new Burst().of(shots, (info, frame) -> scored(folder, info, frame))) {
        report(new JoinedRow.Result(result.scored(), result.besides()), ".burst", result.picture());
      }
    } finally {
      open.forEach(Photo::close);
    }
  }

  private ScoredPhoto scored(Path folder, PhotoInfo info, Frame frame) {
    return new Deadline()
        .within(folder.resolve(info.file()), () -> scorer.score(new Photo(info, frame, List.of())));
  }

  private JoinedRow.View view(Path file, List<Photo> open) {
    PhotoScorer.Open scored = PhotoScorer.open(file, () -> scorer);
    open.add(scored.photo());
    return new JoinedRow.View(scored.photo().frame(), scored.scored());
  }

  private void report(JoinedRow.Result result, String behindName, Frame first) {
    // With something behind the name they are no files that a record has proven.
    Path out = behindName.isEmpty() ? place.of(result.scored().photo()) : place.out();
    WrittenReport written = writer.write(result.scored(), result.besides(), behindName, first, out);
    Told.Reported report = new Told.Reported(result.scored(), result.besides(), written);
    told.accept(out.equals(place.out()) ? report : new Told.Beside(report, place.out()));
  }
}
