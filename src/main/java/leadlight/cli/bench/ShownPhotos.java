package leadlight.cli.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import leadlight.app.enrol.EnrolRun;
import leadlight.app.enrol.KnownJoints;
import leadlight.enrol.learn.Enrolment;
import picocli.CommandLine.Option;

/** The known joints that a bench is shown. */
final class ShownPhotos {

  @Option(
      names = "--sound",
      paramLabel = "PHOTO",
      arity = "1..*",
      description = "Rows known to be sound: prodded, or working.")
  private List<Path> sound = List.of();

  @Option(
      names = "--unsoldered",
      paramLabel = "PHOTO",
      arity = "1..*",
      description = "Rows set down and not yet soldered.")
  private List<Path> unsoldered = List.of();

  @Option(
      names = "--bare",
      paramLabel = "PHOTO",
      arity = "1..*",
      description = "Rows of lands without leads.")
  private List<Path> bare = List.of();

  @Option(
      names = "--faults",
      paramLabel = "FILE.csv",
      description = "Single known joints: photo,pin,state, photos named from the table's folder.")
  private Optional<Path> faults = Optional.empty();

  boolean given() {
    return !sound.isEmpty() || !unsoldered.isEmpty() || !bare.isEmpty() || faults.isPresent();
  }

  /** Shows all; says of each what was taken. */
  void show(EnrolRun run, Consumer<String> say) {
    sound.forEach(photo -> say.accept(run.show(photo, Enrolment.Kind.SOUND)));
    unsoldered.forEach(photo -> say.accept(run.show(photo, Enrolment.Kind.UNSOLDERED)));
    bare.forEach(photo -> say.accept(run.show(photo, Enrolment.Kind.BARE)));
    faults.ifPresent(
        table -> KnownJoints.read(table).forEach((p, pins) -> say.accept(run.show(p, pins))));
  }
}
