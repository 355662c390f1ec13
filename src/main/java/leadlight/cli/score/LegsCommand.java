package leadlight.cli.score;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import leadlight.app.output.OutputFolder;
import leadlight.app.score.LegsFiles;
import leadlight.cli.option.GuardedLimits;
import leadlight.cli.option.NumberList;
import leadlight.cli.option.ProductClass;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.connector.ConnectorLibrary;
import leadlight.leg.ConnectorLegs;
import leadlight.leg.find.LegRequest;
import leadlight.model.BoardSide;
import leadlight.model.UserError;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight legs}: the anchor legs of a connector. */
@Command(
    name = "legs",
    description = {
      "Judges the anchor legs of a connector in a photo of one side of the board; writes "
          + "PHOTO.legs.json and PHOTO.legs.png.",
      "Legs are numbered as the component side shows them with the connector's leads above: the "
          + "pair nearest to the leads first, from left to right."
    },
    mixinStandardHelpOptions = true)
public final class LegsCommand implements Callable<Integer> {

  /** No leg of a board connector is as large; common practice, no source. */
  private static final double MOST_MM = 20;

  private final Streams streams;

  @Parameters(paramLabel = "PHOTO", arity = "1..*", description = "Photos of one side.")
  private List<Path> photos;

  @Option(
      names = "--side",
      required = true,
      paramLabel = "component|solder",
      description = "The side of the board that the photos show.")
  private BoardSide side;

  @Option(
      names = "--connector",
      paramLabel = "ID|FILE",
      description = "The connector: an id (\"leadlight connector list\") or a .json file.")
  private String connector;

  @Option(
      names = "--land-size",
      paramLabel = "W,H",
      description = "Without a connector: width and height of the land, millimetres.")
  private String landSize;

  @Option(
      names = "--hole-size",
      paramLabel = "W,H",
      description = "Without a connector: width and height of the hole, millimetres.")
  private String holeSize;

  @Option(names = "--leg", paramLabel = "N", description = "The photos show this leg alone.")
  private Integer leg;

  @Option(
      names = "--towards-leads",
      paramLabel = "above|below|left|right",
      description = "Where in the photo the connector's leads are, seen from its legs.")
  private LegRequest.LeadsAt leadsAt = LegRequest.LeadsAt.UNKNOWN;

  @Mixin private ProductClass productClass;

  @Mixin private GuardedLimits limits;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports",
      description = "Folder for the results (default: ${DEFAULT-VALUE}).")
  private Path out;

  public LegsCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    LegRequest request = request();
    LegsFiles files = new LegsFiles(limits.load(), productClass.number(), out);
    OutputFolder.make(out);
    ExitStatus worst = ExitStatus.GOOD;
    for (Path file : photos) {
      worst = worst.worse(one(file, request, files));
    }
    return worst.code();
  }

  private ExitStatus one(Path file, LegRequest request, LegsFiles files) {
    try {
      LegsFiles.Written written = files.write(file, request);
      written.report().lines().forEach(streams.out()::println);
      streams.out().println("  wrote " + written.picture());
      return ExitStatus.of(written.report().verdict());
    } catch (UserError e) {
      streams.err().println("leadlight: " + e.getMessage());
      return ExitStatus.UNUSABLE;
    }
  }

  private LegRequest request() {
    if ((connector == null) == (landSize == null) || (landSize == null) != (holeSize == null)) {
      throw new UserError("give --connector, or --land-size and --hole-size");
    }
    if (connector == null) {
      double[] land = size("--land-size", landSize);
      double[] hole = size("--hole-size", holeSize);
      if (hole[0] >= land[0] || hole[1] >= land[1]) {
        throw new UserError("--hole-size must be smaller than --land-size");
      }
      int number = leg == null ? 0 : leg;
      return new LegRequest(
          side,
          List.of(new LegRequest.Leg(number, 0, 0, land[0], land[1], hole[0], hole[1])),
          false,
          leadsAt);
    }
    List<LegRequest.Leg> legs = ConnectorLegs.of(ConnectorLibrary.builtIn().find(connector));
    if (leg == null) {
      return new LegRequest(side, legs, legs.size() > 1, leadsAt);
    }
    if (leg < 1 || leg > legs.size()) {
      throw new UserError("--leg must lie in 1 to " + legs.size() + ", is " + leg);
    }
    return new LegRequest(side, List.of(legs.get(leg - 1)), false, leadsAt);
  }

  private static double[] size(String option, String text) {
    return NumberList.of(text, 2)
        .filter(size -> size[0] > 0 && size[1] > 0 && size[0] < MOST_MM && size[1] < MOST_MM)
        .orElseThrow(
            () ->
                new UserError(
                    String.format(
                        Locale.ROOT,
                        "%s must be width,height in millimetres, as 1.0,1.9, is \"%s\"",
                        option,
                        text)));
  }
}
