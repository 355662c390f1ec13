package leadlight.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import leadlight.batch.list.JobPhoto;
import leadlight.data.Hash;
import leadlight.enrol.Bench;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowHint;
import leadlight.pipeline.PhotoScorer;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Method;
import leadlight.record.scoring.NewScoring;
import leadlight.record.scoring.RunPhoto;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import leadlight.record.scoring.Subject;
import leadlight.report.ReportWriter;
import leadlight.report.WrittenReport;

/**
 * Brings one photo into the run: looks whether that was done before, scores it, makes its results
 * in the corner of the run's folder; and then, in turn, moves these to their place and records
 * them, in this order, so that what the record knows is there.
 */
final class PhotoWork {

  private final RunSetup setup;
  private final Scorers scorers;
  private final ReportWriter writer;
  private final JobRecord record;
  private final RunFolder folder;
  private final long run;
  private final Set<String> done = ConcurrentHashMap.newKeySet();

  PhotoWork(RunSetup setup, JobRecord record, RunFolder folder, long run) {
    this.setup = setup;
    this.scorers = new Scorers(setup);
    this.writer = new ReportWriter(setup.context(), setup.page());
    this.record = record;
    this.folder = folder;
    this.run = run;
  }

  /** Learns what this run did before it was broken off. */
  void remember() {
    record.each(Search.ofRun(run), scoring -> folder.keep(scoring.results()));
    record.eachPhoto(
        run,
        photo -> {
          if (photo.outcome() == RunPhoto.Outcome.SCORED) {
            done.add(key(photo.photo(), photo.subject(), photo.methodKey()));
          }
        });
  }

  private static String key(Path photo, Subject subject, String methodKey) {
    return photo.toAbsolutePath() + "\n" + subject + "\n" + methodKey;
  }

  /**
   * Does the part that any thread may do.
   *
   * @return the part to be done in turn. Throws {@link UserError} if results or record cannot be
   *     written; a photo that cannot be used is an outcome.
   */
  Supplier<Outcome> begin(JobPhoto photo) {
    Method method = scorers.method(photo);
    Optional<Scoring> before = before(photo, method);
    boolean lost = before.isPresent() && !Files.exists(before.get().results());
    boolean ours = done.contains(key(photo.photo(), photo.subject(), method.key()));
    if (before.isPresent() && !lost && (ours || !setup.again())) {
      return () -> unchanged(photo, method, before.get(), ours);
    }
    PhotoScorer.Open open;
    try {
      open = PhotoScorer.open(photo.photo(), () -> scorers.scorer(photo));
    } catch (UserError e) {
      return () -> failed(photo, method, RunPhoto.Outcome.REFUSED, e.getMessage());
    } catch (RuntimeException | Error e) {
      return fault(photo, method, e);
    }
    try (open) {
      return made(photo, method, open, setup.again() || lost);
    } catch (UserError e) {
      throw e;
    } catch (RuntimeException | Error e) {
      return fault(photo, method, e);
    }
  }

  /** An equal scoring, if the photo can be read; what is wrong with one that cannot comes later. */
  private Optional<Scoring> before(JobPhoto photo, Method method) {
    try {
      String file = photo.photo().getFileName().toString();
      return record.find(photo.subject(), file, Hash.sha256(photo.photo()), method);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private Supplier<Outcome> made(
      JobPhoto photo, Method method, PhotoScorer.Open open, boolean again) {
    ScoredPhoto scored = open.scored();
    Path corner = folder.corner();
    WrittenReport written = writer.write(scored, open.photo().frame(), corner);
    ZonedDateTime now = ZonedDateTime.now(setup.clock());
    return () -> {
      Path json = folder.place(corner, written.json(), photo.subject());
      long id =
          record.add(
              run,
              new NewScoring(
                  photo.subject(),
                  photo.photo(),
                  scored,
                  method,
                  json,
                  setup.person(),
                  now,
                  again));
      return kept(photo, json, id);
    };
  }

  /** Another run may have recorded the same photo since {@link #begin} looked; then that counts. */
  private Outcome kept(JobPhoto photo, Path json, long id) {
    Path results = record.results(id);
    boolean ours = results.equals(json.toAbsolutePath());
    if (!ours) {
      folder.withdraw(json);
    }
    return new Outcome(
        photo,
        ours ? RunPhoto.Outcome.SCORED : RunPhoto.Outcome.UNCHANGED,
        Optional.of(record.verdict(record.scoring(id))),
        Optional.of(results),
        Optional.empty());
  }

  private Outcome unchanged(JobPhoto photo, Method method, Scoring before, boolean ours) {
    if (!ours) {
      OptionalLong id = OptionalLong.of(before.id());
      put(photo, method, RunPhoto.Outcome.UNCHANGED, id, Optional.empty());
    }
    return new Outcome(
        photo,
        RunPhoto.Outcome.UNCHANGED,
        Optional.of(record.verdict(before)),
        Optional.of(before.results()),
        Optional.empty());
  }

  private Supplier<Outcome> fault(JobPhoto photo, Method method, Throwable e) {
    String line = photo.photo() + ": " + setup.faults().apply(e);
    return () -> failed(photo, method, RunPhoto.Outcome.FAULT, line);
  }

  private Outcome failed(JobPhoto photo, Method method, RunPhoto.Outcome kind, String message) {
    put(photo, method, kind, OptionalLong.empty(), Optional.of(message));
    return new Outcome(photo, kind, Optional.empty(), Optional.empty(), Optional.of(message));
  }

  private void put(
      JobPhoto photo,
      Method method,
      RunPhoto.Outcome kind,
      OptionalLong scoring,
      Optional<String> message) {
    record.put(
        run, new RunPhoto(photo.photo(), photo.subject(), method.key(), kind, scoring, message));
  }

  /** One scorer for each row and class that a run asks for. Safe for threads. */
  private static final class Scorers {

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
}
