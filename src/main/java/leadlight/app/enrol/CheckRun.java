package leadlight.app.enrol;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.enrol.CheckBook;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.quality.Page;
import leadlight.quality.chart.Individuals;
import leadlight.quality.chart.IndividualsPages;
import leadlight.text.Sentences;

/** Takes the daily photo of a bench's check board, and charts it. */
public final class CheckRun {

  private final String bench;
  private final Path benches;
  private final PhotoScorer scorer;

  public CheckRun(String bench, Path benches, Settings settings, AcceptanceSet limits) {
    this.bench = bench;
    this.benches = benches;
    this.scorer = new PhotoScorer(settings, limits);
  }

  /**
   * What the photos came to.
   *
   * @param asItWas false where the bench is to be looked at
   * @param aside where the series before is kept, if a new one was begun
   */
  public record Checked(Page page, boolean asItWas, Optional<Path> aside) {}

  /**
   * Whether the bench is as it was.
   *
   * @param anew whether the photos begin a new series, as after a lamp was changed on purpose
   */
  public Checked check(List<Path> photos, boolean anew) {
    CheckBook book = anew ? CheckBook.empty() : CheckBook.in(benches, bench);
    int before = book.checks().size();
    for (Path photo : photos) {
      book = with(book, photo);
    }
    Optional<Path> aside = anew ? CheckBook.putAside(benches, bench) : Optional.empty();
    book.write(benches, bench);
    List<Individuals> charts = charts(book);
    List<String> signals = new ArrayList<>();
    charts.forEach(
        chart -> chart.since(before).forEach(rule -> signals.add(chart.name() + ": " + rule)));
    boolean limits = book.checks().size() > CheckBook.baseline();
    String result =
        !limits
            ? "%d check photos of %d that set the limits"
                .formatted(book.checks().size(), CheckBook.baseline())
            : signals.isEmpty()
                ? "the bench is as it was"
                : "the bench is not as it was ("
                    + String.join("; ", signals)
                    + "): look at lamp, focus and exposure; until then --no-bench";
    Page page = IndividualsPages.page("bench " + bench + ", check board", result, charts);
    return new Checked(page, !limits || signals.isEmpty(), aside);
  }

  private static List<Individuals> charts(CheckBook book) {
    List<String> labels = book.checks().stream().map(CheckBook.Check::file).toList();
    List<Individuals> charts = new ArrayList<>();
    book.figures()
        .forEach(
            (name, values) ->
                charts.add(
                    Individuals.of(
                        name, labels, values, CheckBook.baseline(), CheckBook.isDistance(name))));
    return charts;
  }

  private CheckBook with(CheckBook book, Path file) {
    try (Photo photo = new PhotoReader().read(file)) {
      ScoredPhoto scored = scorer.score(photo);
      if (scored.row() instanceof RowOutcome.NotFound none) {
        throw new UserError(file + ": " + Sentences.english().of(none.reason()));
      }
      return book.and(
          scored.photo().file(),
          scored.photo().sha256(),
          scorer.look(photo, scored, (RowOutcome.Found) scored.row()));
    }
  }
}
