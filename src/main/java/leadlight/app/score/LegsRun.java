package leadlight.app.score;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadlight.batch.Outcome;
import leadlight.batch.RunSetup;
import leadlight.batch.list.FolderName;
import leadlight.batch.list.JobPhoto;
import leadlight.connector.ConnectorLibrary;
import leadlight.data.Hash;
import leadlight.leg.ConnectorLegs;
import leadlight.leg.find.LegRequest;
import leadlight.life.LegsFile;
import leadlight.life.PhotoShelf;
import leadlight.model.BoardSide;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.JobRecord;
import leadlight.record.said.LegsSeen;
import leadlight.record.said.LifeEvent;
import leadlight.record.scoring.RunPhoto;
import leadlight.record.scoring.Subject;

/**
 * The photos of anchor legs of a run: judged into the run's folder, and noted in the lives of their
 * boards. One that is noted already, of the same board, stage, port and side, and was judged last
 * by the same, is left.
 */
public final class LegsRun {

  /** Enough of a hash to tell the photos of a day apart. */
  private static final int NAME_DIGITS = 8;

  private final JobRecord record;
  private final PhotoShelf shelf;
  private final RunSetup setup;
  private final Path folder;

  /**
   * Takes what all have in common.
   *
   * @param folder the run's own
   */
  public LegsRun(JobRecord record, PhotoShelf shelf, RunSetup setup, Path folder) {
    this.record = record;
    this.shelf = shelf;
    this.setup = setup;
    this.folder = folder;
  }

  /** In the order of the work, so that what is noted last is the last that was done. */
  public static List<JobPhoto> inOrder(List<JobPhoto> photos) {
    return photos.stream()
        .filter(photo -> photo.legs().isPresent())
        .sorted(
            Comparator.comparing((JobPhoto photo) -> photo.subject().stage())
                .thenComparing(photo -> photo.subject().attempt()))
        .toList();
  }

  /** Does one; what is wrong with a photo is an outcome, what is wrong with the record is not. */
  public Outcome take(JobPhoto photo) {
    Path json;
    try {
      String hash = hash(photo);
      Optional<LegsSeen> before = setup.again() ? Optional.empty() : noted(photo, hash);
      if (before.isPresent()) {
        return outcome(photo, RunPhoto.Outcome.UNCHANGED, before.get(), Optional.empty());
      }
      json = judged(photo, hash);
    } catch (UserError e) {
      return bad(photo, RunPhoto.Outcome.REFUSED, e.getMessage());
    } catch (RuntimeException | Error e) {
      return bad(photo, RunPhoto.Outcome.FAULT, photo.photo() + ": " + setup.faults().apply(e));
    }
    return outcome(photo, RunPhoto.Outcome.SCORED, noted(photo, json), Optional.of(json));
  }

  private static Outcome bad(JobPhoto photo, RunPhoto.Outcome kind, String line) {
    return new Outcome(photo, kind, Optional.empty(), Optional.empty(), Optional.of(line));
  }

  private static String hash(JobPhoto photo) {
    try {
      return Hash.sha256(photo.photo());
    } catch (IOException e) {
      throw new UserError(photo.photo() + " cannot be read; check the path");
    }
  }

  private LegsSeen.Work work(JobPhoto photo) {
    String how =
        "%s, class %d, %s, Leadlight %s"
            .formatted(
                photo.row().connectorId(),
                photo.productClass(),
                setup.limits().id(),
                setup.context().toolVersion());
    Subject subject = photo.subject();
    return new LegsSeen.Work(subject.stage().id(), subject.attempt(), how);
  }

  private Optional<LegsSeen> noted(JobPhoto photo, String hash) {
    Subject subject = photo.subject();
    LegsSeen.Work own = work(photo);
    return record.life(subject.job(), subject.board()).stream()
        .filter(event -> event.kind() == LifeEvent.Kind.LEGS)
        .map(LegsSeen::of)
        .filter(
            seen ->
                seen.sha256().equals(hash)
                    && seen.side().equals(side(photo).id())
                    && seen.port().equals(subject.port())
                    && seen.work().filter(work -> work.isOf(own)).isPresent())
        .reduce((before, after) -> after)
        .filter(seen -> seen.work().equals(Optional.of(own)));
  }

  private static BoardSide side(JobPhoto photo) {
    return photo.legs().orElseThrow();
  }

  /** Judges it into a folder of its own, for two photos may have one name. */
  private Path judged(JobPhoto photo, String hash) {
    Subject subject = photo.subject();
    Path place =
        folder
            .resolve(FolderName.of(subject.job()))
            .resolve(FolderName.of(subject.board()))
            .resolve(FolderName.of(subject.words()))
            .resolve(side(photo).id() + "-" + hash.substring(0, NAME_DIGITS));
    make(place);
    String connector = photo.row().connectorId();
    LegRequest request =
        new LegRequest(
            side(photo),
            ConnectorLegs.of(ConnectorLibrary.builtIn().find(connector)),
            true,
            LegRequest.LeadsAt.UNKNOWN);
    return new LegsFiles(setup.limits(), photo.productClass(), place)
        .write(photo.photo(), request)
        .json();
  }

  private LegsSeen noted(JobPhoto photo, Path json) {
    Subject subject = photo.subject();
    LegsSeen seen = LegsFile.seen(json, shelf).at(subject.port()).of(work(photo));
    record.add(
        subject.job(),
        subject.board(),
        LifeEvent.said(
            LifeEvent.Kind.LEGS, seen.words(), setup.person(), ZonedDateTime.now(setup.clock())));
    return seen;
  }

  private static void make(Path place) {
    try {
      Files.createDirectories(place);
    } catch (IOException e) {
      throw new UserError(place + " cannot be made; check its permissions and the disk");
    }
  }

  private static Outcome outcome(
      JobPhoto photo, RunPhoto.Outcome kind, LegsSeen seen, Optional<Path> json) {
    Verdict worst =
        seen.legs().stream()
            .map(LegsSeen.Leg::verdict)
            .reduce(Verdict::worse)
            .orElse(Verdict.UNJUDGED);
    return new Outcome(photo, kind, Optional.of(worst), json, Optional.empty());
  }
}
