package leadlight.cli.quality;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.app.quality.GradeFiles;
import leadlight.app.quality.JointPictures;
import leadlight.app.quality.ScoredJoints;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.PageShow;
import leadlight.cli.terminal.Streams;
import leadlight.quality.agreement.AgreePages;
import leadlight.quality.agreement.AgreementStudy;
import leadlight.quality.agreement.Ordered;
import leadlight.quality.grades.Grade;
import leadlight.quality.grades.Grades;
import leadlight.quality.grades.Reading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight agree}: how well graders agree, with each other and with the truth. */
@Command(
    name = "agree",
    description = {
      "Compares graders: the tool, inspectors, trainees, a reference; any number of repeats.",
      "Reads CSV tables (columns item, grader, verdict; trial and finding if there), folders of "
          + "Leadlight's CSV reports (grader leadlight) and folders of truth files (grader truth). "
          + "Joints of photos are items called \"NAME.jpg pin 3\"."
    },
    mixinStandardHelpOptions = true)
public final class AgreeCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "GRADES", arity = "1..*", description = "Tables and folders.")
  private List<Path> inputs;

  @Option(names = "--reference", paramLabel = "GRADER", description = "Who is right by definition.")
  private Optional<String> reference = Optional.empty();

  @Mixin private VerdictWords words;

  @Option(names = "--as-given", description = "Compare verdicts as given, not good and bad.")
  private boolean asGiven;

  @Option(
      names = "--order",
      paramLabel = "BEST,...,WORST",
      hideParamSyntax = true,
      split = ",",
      description =
          "Adds weighted kappa over these verdicts, best first, linear weights; three or more.")
  private List<String> order = List.of();

  @Option(names = "--squared", description = "Squared weights instead of linear ones.")
  private boolean squared;

  @Option(
      names = "--photos",
      paramLabel = "DIR",
      description = "Photos, to show divided joints; with --reports.")
  private Optional<Path> photos = Optional.empty();

  @Option(
      names = "--reports",
      paramLabel = "DIR",
      description = "CSV reports that say where the joints of --photos are.")
  private Optional<Path> reports = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports/agree",
      description = "Folder for pages and tables (default: ${DEFAULT-VALUE}).")
  private Path out;

  public AgreeCommand(Streams streams) {
    this.streams = streams;
  }

  private Optional<Ordered> order() {
    return order.isEmpty() ? Optional.empty() : Optional.of(new Ordered(order, squared));
  }

  @Override
  public Integer call() {
    Reading reading = words.reading(asGiven);
    List<Grade> grades =
        inputs.stream().flatMap(p -> GradeFiles.read(p, reading).stream()).toList();
    AgreementStudy study = new AgreementStudy(Grades.of(grades), reading, reference);
    JointPictures pictures =
        new JointPictures(
            photos.orElse(Path.of("")), reports.map(ScoredJoints::in).orElse(List.of()));
    PageShow.write(AgreePages.page(study, order(), pictures::of), out, "agreement", streams);
    return ExitStatus.GOOD.code();
  }
}
