package leadlight.archive;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import leadlight.app.output.Reports;
import leadlight.app.output.Version;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.model.result.Besides;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.pipeline.PhotoScorer;
import leadlight.reader.SecondReader;
import leadlight.report.json.JsonReport;
import leadlight.report.words.ReportContext;
import leadlight.text.Messages;
import leadlight.vision.Threads;
import org.apache.spark.api.java.function.MapFunction;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import scala.jdk.javaapi.CollectionConverters;

/**
 * One photo scored as {@code score} does, on any executor: the same function of photo and settings,
 * which keeps nothing of a photo. A photo that cannot be used is a row that says why.
 */
final class PhotoScoring implements MapFunction<Row, Row> {

  private static final long serialVersionUID = 1;

  /** What a row of results was made by: program, networks, and all of {@code models/}. */
  static String version() {
    return String.join("-", Version.number(), SecondReader.version(), ModelsHash.ofProgram());
  }

  @Override
  public Row call(Row line) {
    PhotoAsked asked = new PhotoAsked(line);
    try (PhotoAsked.Local photo = asked.local()) {
      Settings settings = asked.settings(Executor.LIMITS);
      PhotoScorer scorer = Executor.SCORERS.computeIfAbsent(settings, Executor::scorer);
      try (PhotoScorer.Open open = PhotoScorer.open(photo.file(), () -> scorer)) {
        return scored(line, open.scored());
      }
    } catch (UserError e) {
      return bad(line, "refused", e.getMessage());
    } catch (RuntimeException | Error e) {
      return bad(line, "fault", e.getClass().getSimpleName() + ": " + e.getMessage());
    }
  }

  private static Row scored(Row line, ScoredPhoto scored) {
    byte[] report = JsonReport.bytes(scored, Besides.NONE, Executor.CONTEXT);
    return RowFactory.create(
        line.getAs("asked"),
        line.getAs("photo"),
        line.getAs("site"),
        line.getAs("lamp"),
        scored.settings().row().connectorId(),
        scored.settings().productClass(),
        scored.settings().acceptanceSet(),
        scored.photo().sha256(),
        "scored",
        null,
        scored.row() instanceof RowOutcome.Found,
        scored.verdict().id(),
        JointRows.of(report),
        version());
  }

  private static Row bad(Row line, String outcome, String message) {
    return RowFactory.create(
        line.getAs("asked"),
        line.getAs("photo"),
        line.getAs("site"),
        line.getAs("lamp"),
        line.getAs("connector"),
        null,
        null,
        null,
        outcome,
        message,
        false,
        null,
        CollectionConverters.asScala(List.<Row>of()),
        version());
  }

  /** What a process keeps: data files and networks once, nothing of a photo. */
  private static final class Executor {

    static final AcceptanceSet LIMITS = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    static final ReportContext CONTEXT = Reports.context(LIMITS, Messages.of("en"));
    static final Map<Settings, PhotoScorer> SCORERS = new ConcurrentHashMap<>();

    static {
      // Spark gives each core its own photos.
      Threads.set(1);
    }

    static PhotoScorer scorer(Settings settings) {
      return new PhotoScorer(settings, LIMITS);
    }
  }
}
