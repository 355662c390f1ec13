package leadlight.cli.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.Optional;
import leadlight.app.score.LegsFiles;
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
 * boards. One that is noted already, of the same board, stage, port and side, is left.
 */
final class LegPhotos {

  private final JobRecord record;
  private final PhotoShelf shelf;
  private final RunSetup setup;
  private final Path folder;

  /**
   * Takes what all have in common.
   *
   * @param folder the run's own
   */
  LegPhotos(JobRecord record, PhotoShelf shelf, RunSetup setup, Path folder) {
    this.record = record;
    this.shelf = shelf;
    this.setup = setup;
    this.folder = folder;
  }

  /** Does one; what is wrong with a photo is an outcome. */
  Outcome take(JobPhoto photo) {
    try {
      Optional<LegsSeen> before = setup.again() ? Optional.empty() : noted(photo);
      return before.isPresent()
          ? outcome(photo, RunPhoto.Outcome.UNCHANGED, before.get(), Optional.empty())
          : judged(photo);
    } catch (UserError e) {
      return new Outcome(
          photo,
          RunPhoto.Outcome.REFUSED,
          Optional.empty(),
          Optional.empty(),
          Optional.of(e.getMessage()));
    }
  }

  private Optional<LegsSeen> noted(JobPhoto photo) {
    String hash;
    try {
      hash = Hash.sha256(photo.photo());
    } catch (IOException e) {
      throw new UserError(photo.photo() + " cannot be read; check the path");
    }
    Subject subject = photo.subject();
    return record.life(subject.job(), subject.board()).stream()
        .filter(event -> event.kind() == LifeEvent.Kind.LEGS)
        .map(LegsSeen::of)
        .filter(
            seen ->
                seen.sha256().equals(hash)
                    && seen.side().equals(side(photo).id())
                    && seen.port().equals(subject.port())
                    && seen.stage().equals(Optional.of(subject.stage().id())))
        .findFirst();
  }

  private static BoardSide side(JobPhoto photo) {
    return photo.legs().orElseThrow();
  }

  private Outcome judged(JobPhoto photo) {
    Subject subject = photo.subject();
    Path place =
        folder
            .resolve(FolderName.of(subject.job()))
            .resolve(FolderName.of(subject.board()))
            .resolve(FolderName.of(subject.words()));
    make(place);
    String connector = photo.row().connectorId();
    LegRequest request =
        new LegRequest(
            side(photo),
            ConnectorLegs.of(ConnectorLibrary.builtIn().find(connector)),
            true,
            LegRequest.LeadsAt.UNKNOWN);
    Path json =
        new LegsFiles(setup.limits(), photo.productClass(), place)
            .write(photo.photo(), request)
            .json();
    LegsSeen seen = LegsFile.seen(json, shelf).at(subject.port()).atStage(subject.stage().id());
    record.add(
        subject.job(),
        subject.board(),
        LifeEvent.said(
            LifeEvent.Kind.LEGS, seen.words(), setup.person(), ZonedDateTime.now(setup.clock())));
    return outcome(photo, RunPhoto.Outcome.SCORED, seen, Optional.of(json));
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
