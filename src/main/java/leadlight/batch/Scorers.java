package leadlight.batch;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import leadlight.grade.AcceptanceSet;
import leadlight.model.Settings;
import leadlight.pipeline.PhotoScorer;
import leadlight.record.Method;

/** One scorer for each row and class that a run asks for. Safe for threads. */
final class Scorers {

  private final AcceptanceSet limits;
  private final String toolVersion;
  private final Map<Settings, PhotoScorer> scorers = new ConcurrentHashMap<>();
  private final Map<Settings, Method> methods = new ConcurrentHashMap<>();

  Scorers(AcceptanceSet limits, String toolVersion) {
    this.limits = limits;
    this.toolVersion = toolVersion;
  }

  private Settings settings(JobPhoto photo) {
    return new Settings(photo.row(), photo.productClass(), limits.id(), Optional.empty());
  }

  Method method(JobPhoto photo) {
    return methods.computeIfAbsent(
        settings(photo), settings -> new Method(settings, limits.sha256(), toolVersion));
  }

  PhotoScorer scorer(JobPhoto photo) {
    return scorers.computeIfAbsent(settings(photo), settings -> new PhotoScorer(settings, limits));
  }
}
