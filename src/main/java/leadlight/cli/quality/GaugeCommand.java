package leadlight.cli.quality;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.app.quality.GaugePhotos;
import leadlight.cli.option.Limits;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.PageShow;
import leadlight.cli.terminal.Streams;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.grade.limits.Feature;
import leadlight.grade.limits.JointGeometry;
import leadlight.model.UserError;
import leadlight.quality.gauge.ClassLimit;
import leadlight.quality.gauge.GaugeInput;
import leadlight.quality.gauge.GaugePages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight gauge}: whether this microscope and lamp are good enough. */
@Command(
    name = "gauge",
    description = {
      "Repeat photos of the same boards: how far readings and verdicts repeat.",
      "READINGS.csv has columns part, operator, trial, measure, value (day and verdict if there). "
          + "With --reports it lists photos instead: columns photo, board, operator (day if "
          + "there), and the readings come from their CSV reports. What is called operator may be "
          + "a lamp or a set-up."
    },
    mixinStandardHelpOptions = true)
public final class GaugeCommand implements Callable<Integer> {

  private static final String OVERHANG = "side_overhang_mm";

  private static final Pattern TOLERANCE =
      Pattern.compile("(\\w+)=(-?\\d*\\.?\\d*)\\.\\.(\\d*\\.?\\d+)");

  private final Streams streams;

  @Parameters(paramLabel = "READINGS.csv", description = "Readings, or photos with --reports.")
  private Path file;

  @Option(
      names = "--reports",
      paramLabel = "DIR",
      description = "CSV reports of the photos listed.")
  private Optional<Path> reports = Optional.empty();

  @Option(
      names = "--operator-is",
      paramLabel = "WORD",
      defaultValue = "operator",
      description = "What was exchanged, as lamp or microscope (default: ${DEFAULT-VALUE}).")
  private String word;

  @Option(
      names = "--lead-width",
      paramLabel = "MM",
      description = "Lead width for limits that are shares of it; by default as measured.")
  private Optional<Double> leadWidth = Optional.empty();

  @Option(
      names = "--tolerance",
      paramLabel = "MEASURE=LOW..HIGH",
      description = "A tolerance of your own, held against 6 sigma; =..HIGH against 3.")
  private List<String> tolerances = List.of();

  @Option(
      names = "--known",
      paramLabel = "KNOWN.csv",
      description =
          "Known values (part, measure, value), of scenes, a printed scale or a graticule: bias "
              + "and linearity.")
  private Optional<Path> reference = Optional.empty();

  @Mixin private Limits limits;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports/gauge",
      description = "Folder for pages and tables (default: ${DEFAULT-VALUE}).")
  private Path out;

  public GaugeCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    GaugeInput read =
        reports.map(r -> GaugePhotos.read(file, r)).orElseGet(() -> GaugeInput.read(file));
    GaugeInput input = reference.map(read::with).orElse(read);
    PageShow.write(
        GaugePages.page(input, classLimits(input), Set.of("unjudged"), word),
        out,
        "gauge",
        streams);
    return ExitStatus.GOOD.code();
  }

  private List<ClassLimit> classLimits(GaugeInput input) {
    OptionalDouble width = leadWidth.map(OptionalDouble::of).orElse(input.mean("lead_width_mm"));
    List<ClassLimit> found =
        new ArrayList<>(tolerances.stream().map(GaugeCommand::tolerance).toList());
    if (width.isEmpty() || !(width.getAsDouble() > 0) || !input.measures().contains(OVERHANG)) {
      return found;
    }
    OptionalDouble none = OptionalDouble.empty();
    JointGeometry joint = new JointGeometry(width, none, none, none, none);
    AcceptanceSet set = limits.load();
    for (int productClass = 1; productClass <= 3; productClass++) {
      int of = productClass;
      set.limit(Feature.SIDE_OVERHANG, productClass, joint)
          .ifPresent(l -> found.add(new ClassLimit(OVERHANG, of, l.value(), l.basis().words())));
    }
    return found;
  }

  private static ClassLimit tolerance(String text) {
    Matcher parts = TOLERANCE.matcher(text);
    if (!parts.matches()) {
      throw new UserError("--tolerance " + text + " is none; write it as land_width_mm=0.20..0.30");
    }
    double upper = Double.parseDouble(parts.group(3));
    OptionalDouble lower =
        parts.group(2).isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(parts.group(2)));
    if (!(lower.orElse(0) < upper)) {
      throw new UserError("--tolerance " + text + " leaves nothing; the lower limit comes first");
    }
    return new ClassLimit(parts.group(1), 0, lower, upper, "as given");
  }
}
