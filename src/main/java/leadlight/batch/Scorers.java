package leadlight.batch;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import leadlight.batch.list.JobPhoto;
import leadlight.enrol.Bench;
import leadlight.model.Opinions;
import leadlight.model.result.Settings;
import leadlight.model.row.RowHint;
import leadlight.pipeline.PhotoScorer;
import leadlight.record.scoring.Method;

/** One scorer for each row and class that a run asks for. Safe for threads. */
final class Scorers {

  private final RunSetup setup;
  private final Optional<String> bench;
  private final Map<Settings, PhotoScorer> scorers = new ConcurrentHashMap<>();
  private final Map<Settings, Method> methods = new ConcurrentHashMap<>();

  Scorers(RunSetup setup) {
    this.setup = setup;
    this.bench = setup.bench().map(Bench::identity);
  }

  private Settings settings(JobPhoto photo) {
    return new Settings(
        photo.row(),
        photo.productClass(),
        setup.limits().id(),
        RowHint.of(Optional.empty(), photo.body()),
        setup.opinions());
  }

  Method method(JobPhoto photo) {
    return methods.computeIfAbsent(settings(photo), this::method);
  }

  private Method method(Settings settings) {
    return new Method(
        settings,
        setup.limits().sha256(),
        setup.context().toolVersion(),
        settings.opinions() == Opinions.MEASURES
            ? Optional.empty()
            : Optional.of(setup.context().reader()),
        bench);
  }

  PhotoScorer scorer(JobPhoto photo) {
    return scorers.computeIfAbsent(
        settings(photo), settings -> new PhotoScorer(settings, setup.limits(), setup.bench()));
  }
}
