package leadlight.app.score;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.model.result.Settings;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.report.ReportWriter;
import leadlight.report.WrittenReport;
import leadlight.together.JoinedRow;
import leadlight.together.PlacedJoin;

/** Scores photos of one row together: joined, or against the photo taken before soldering. */
public final class TogetherRun {

  private final PhotoScorer scorer;
  private final AcceptanceSet limits;
  private final ReportWriter writer;
  private final Path out;
  private final Consumer<Told> told;

  public TogetherRun(
      Settings settings, AcceptanceSet limits, ReportWriter writer, Path out, Consumer<Told> told) {
    this.scorer = new PhotoScorer(settings, limits);
    this.limits = limits;
    this.writer = writer;
    this.out = out;
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
      report(new JoinedRow(limits).of(views), ".joined", open.get(0));
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
        report(result, "", open.get(0));
      } finally {
        open.forEach(Photo::close);
      }
    }
  }

  private JoinedRow.View view(Path file, List<Photo> open) {
    Photo photo = new PhotoReader().read(file);
    open.add(photo);
    return new JoinedRow.View(photo.frame(), scorer.score(photo));
  }

  private void report(JoinedRow.Result result, String behindName, Photo first) {
    WrittenReport written =
        writer.write(result.scored(), result.besides(), behindName, first.frame(), out);
    told.accept(new Told.Reported(result.scored(), result.besides(), written));
  }
}
