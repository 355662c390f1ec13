package leadlight.app.score;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import leadlight.connector.ConnectorLibrary;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.leg.ConnectorLegs;
import leadlight.leg.LegJoin;
import leadlight.leg.LegScorer;
import leadlight.leg.find.LegRequest;
import leadlight.model.BoardSide;
import leadlight.model.UserError;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.Besides;
import leadlight.model.result.LegSet;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.report.ReportWriter;
import leadlight.report.WrittenReport;
import leadlight.report.picture.LegPhotos;
import leadlight.vision.Frame;

/** One connector, one answer: the photo of its row and the photos of its anchor legs. */
public final class ConnectorRun {

  private final Settings settings;
  private final AcceptanceSet limits;
  private final ReportWriter writer;
  private final Path out;

  public ConnectorRun(Settings settings, AcceptanceSet limits, ReportWriter writer, Path out) {
    this.settings = settings;
    this.limits = limits;
    this.writer = writer;
    this.out = out;
  }

  /**
   * Scores row and legs and writes one report.
   *
   * @param solder photos of the legs from the solder side
   * @param component the same from the component side
   * @param leadsAt where in them the connector's leads are
   */
  public Told.Reported score(
      List<Path> rows, List<Path> solder, List<Path> component, LegRequest.LeadsAt leadsAt) {
    if (rows.size() != 1) {
      throw new UserError("--legs goes with the photo of one row; " + rows.size() + " are named");
    }
    List<LegRequest.Leg> legs = legs();
    List<Photo> open = new ArrayList<>();
    try {
      Photo row = opened(rows.get(0), open);
      List<LegSet.Shown> shown = new ArrayList<>();
      List<Frame> pictures = new ArrayList<>();
      for (Path file : solder) {
        shown.add(legs(file, BoardSide.SOLDER, legs, leadsAt, open, pictures));
      }
      for (Path file : component) {
        shown.add(legs(file, BoardSide.COMPONENT, legs, leadsAt, open, pictures));
      }
      refuseTwice(row, shown);
      LegSet set = LegJoin.of(shown, legs.size());
      ScoredPhoto scored = with(new PhotoScorer(settings, limits).score(row), set);
      WrittenReport written =
          writer.connector(scored, new LegPhotos(set, pictures), row.frame(), out);
      return new Told.Reported(scored, Besides.of(set), written);
    } finally {
      open.forEach(Photo::close);
    }
  }

  private List<LegRequest.Leg> legs() {
    String id = settings.row().connectorId();
    ConnectorLibrary library = ConnectorLibrary.builtIn();
    if (!library.ids().contains(id)) {
      throw new UserError("--legs needs a connector whose legs are known: name it by --connector");
    }
    return ConnectorLegs.of(library.find(id));
  }

  private static Photo opened(Path file, List<Photo> open) {
    Photo photo = new PhotoReader().read(file);
    open.add(photo);
    return photo;
  }

  private LegSet.Shown legs(
      Path file,
      BoardSide side,
      List<LegRequest.Leg> legs,
      LegRequest.LeadsAt leadsAt,
      List<Photo> open,
      List<Frame> pictures) {
    Photo photo = opened(file, open);
    pictures.add(photo.frame());
    LegRequest request = new LegRequest(side, legs, legs.size() > 1, leadsAt);
    return new LegSet.Shown(
        photo.info(),
        side,
        new LegScorer(limits, settings.productClass()).score(photo.frame(), request));
  }

  private static void refuseTwice(Photo row, List<LegSet.Shown> shown) {
    List<String> seen = new ArrayList<>(List.of(row.info().sha256()));
    for (LegSet.Shown photo : shown) {
      if (seen.contains(photo.photo().sha256())) {
        throw new UserError(
            String.format(
                Locale.ROOT,
                "%s is named twice; row and legs, and each side, need photos of their own",
                photo.photo().file()));
      }
      seen.add(photo.photo().sha256());
    }
  }

  /** The row's result with the verdict of the whole connector. */
  private static ScoredPhoto with(ScoredPhoto row, LegSet legs) {
    return new ScoredPhoto(
        row.photo(),
        row.settings(),
        row.row(),
        row.view(),
        row.joints(),
        row.verdict().worse(legs.verdict()),
        row.rowNotes(),
        row.fitness(),
        Stream.concat(row.notVisible().stream(), Stream.of(new NoteOfRow.LegsOfPhotographs()))
            .toList(),
        row.cautions());
  }
}
