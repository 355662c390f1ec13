package leadlight.pipeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import leadlight.joint.JointMeter;
import leadlight.model.Opinions;
import leadlight.model.joint.Familiarity;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.reader.SecondReader;
import leadlight.row.RowFinder;
import leadlight.row.RowSearch;
import leadlight.rowcheck.CountCheck;
import leadlight.rowcheck.FirstPin;
import leadlight.rowcheck.RowCheck;
import leadlight.rowcheck.RowEye;

/**
 * From a photo to its row with each joint measured and read: the row is looked for, checked by what
 * its places show, and counted from its true first lead before anything is graded.
 */
public final class RowReading {

  private final Settings settings;
  private final JointMeter meter;
  private final RowFinder finder = new RowFinder();
  private final RowCheck check;
  private final FirstPin count;
  private final CountCheck leadCount;

  public RowReading(Settings settings, JointMeter meter) {
    this.settings = settings;
    this.meter = meter;
    RowEye eye = new RowEye(meter, settings);
    this.count = new FirstPin(eye);
    this.leadCount = new CountCheck(settings.row());
    this.check = new RowCheck(eye, count);
  }

  /** The row of a photo, in its place. */
  ReadRow found(Photo photo) {
    return inPlace(photo, meant(photo));
  }

  /** The second reader is asked unless the measures alone are wanted. */
  ReadRow read(Photo photo, RowOutcome outcome) {
    if (!(outcome instanceof RowOutcome.Found found)) {
      return ReadRow.none(outcome);
    }
    JointMeter.CutRow cut = meter.cut(photo.frame(), settings.row(), found);
    if (settings.opinions() == Opinions.MEASURES) {
      return ReadRow.of(found, cut);
    }
    AtomicReference<JointMeter.MeasuredRow> measured = new AtomicReference<>();
    AtomicReference<SecondReader.ReadRow> readings = new AtomicReference<>();
    Stream.<Runnable>of(
            () -> readings.set(SecondReader.builtIn().read(cut.pictures())),
            () -> measured.set(cut.measured()))
        .parallel()
        .forEach(Runnable::run);
    List<Joint> joints = new ArrayList<>();
    for (int i = 0; i < readings.get().joints().size(); i++) {
      joints.add(measured.get().joints().get(i).readAs(readings.get().joints().get(i)));
    }
    return new ReadRow(
        found,
        Optional.of(cut),
        Optional.of(measured.get().view()),
        joints,
        new Familiarity(readings.get().unfamiliar(), true));
  }

  /** The row that seems meant, or another that shows joints where that one does not. */
  private ReadRow meant(Photo photo) {
    try (RowSearch search = finder.search(photo.frame(), settings.row(), settings.hint())) {
      ReadRow row = read(photo, search.outcome());
      if (settings.opinions() == Opinions.MEASURES) {
        return row;
      }
      List<Reading> readings =
          row.joints().stream().map(joint -> joint.byReader().orElseThrow()).toList();
      RowOutcome better =
          check.better(photo, search, row.outcome(), readings, row.make().unfamiliar());
      return instead(photo, row, better);
    }
  }

  /** The row counted from its true first lead, by what the reader sees and by its metal. */
  private ReadRow inPlace(Photo photo, ReadRow row) {
    return counted(photo, inStep(photo, row));
  }

  /** Where a row found there would be scored. */
  public RowOutcome inPlace(Photo photo, RowOutcome.Found row) {
    return inPlace(photo, read(photo, row)).outcome();
  }

  /** The row as it is, or counted anew, or none if another number of leads shows. */
  private ReadRow counted(Photo photo, ReadRow row) {
    return row.outcome() instanceof RowOutcome.Found found
        ? instead(photo, row, leadCount.checked(photo, found))
        : row;
  }

  private ReadRow inStep(Photo photo, ReadRow row) {
    return settings.opinions() != Opinions.MEASURES
            && row.outcome() instanceof RowOutcome.Found found
            && count.mayBeOut(row.joints())
        ? instead(photo, row, count.inStep(photo, found))
        : row;
  }

  private ReadRow instead(Photo photo, ReadRow row, RowOutcome other) {
    return other.equals(row.outcome()) ? row : read(photo, other);
  }
}
