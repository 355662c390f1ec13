package leadlight.cli.connector;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.cli.terminal.ExitStatus;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorLibrary;
import leadlight.connector.footprint.FootprintImport;
import leadlight.data.DataFile;
import leadlight.model.UserError;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code leadlight connector}: the connectors that are known, and new ones from footprints. */
@Command(
    name = "connector",
    description = "Lists and shows the connectors that are known; imports new ones.",
    synopsisSubcommandLabel = "(list | show | import)",
    mixinStandardHelpOptions = true)
public final class ConnectorCommand {

  @Spec private CommandSpec spec;

  @Command(
      name = "list",
      description = "Lists the built-in connectors.",
      mixinStandardHelpOptions = true)
  int list() {
    ConnectorLibrary library = ConnectorLibrary.builtIn();
    print(ConnectorList.of(library.ids().stream().map(library::find).toList()));
    return ExitStatus.GOOD.code();
  }

  @Command(
      name = "show",
      description = "Shows one connector: rows, lands, legs, pins, what their faults do.",
      mixinStandardHelpOptions = true)
  int show(
      @Parameters(
              paramLabel = "ID|FILE",
              description = "A built-in connector, or the path of a connector's .json file.")
          String id,
      @Option(
              names = "--leads",
              paramLabel = "N",
              description = "Number of leads, where the connector leaves it open.")
          Integer leads) {
    Connector connector = ConnectorLibrary.builtIn().find(id);
    print(
        ConnectorDetails.of(
            connector, leads == null ? OptionalInt.empty() : OptionalInt.of(leads)));
    return ExitStatus.GOOD.code();
  }

  @Command(
      name = "import",
      description = {
        "Makes a connector file of an open footprint (.kicad_mod).",
        "Rows, lands and legs are read; leads, signals and harm are yours to add. Check every"
            + " figure against your part's drawing."
      },
      mixinStandardHelpOptions = true)
  int importFootprint(
      @Parameters(paramLabel = "FOOTPRINT", description = "The .kicad_mod file.") Path footprint,
      @Option(
              names = "--id",
              paramLabel = "ID",
              description = "Id of the connector (default: made of the footprint's name).")
          String id,
      @Option(
              names = "--file",
              paramLabel = "FILE.json",
              description = "Where to write (default: ID.json in this folder).")
          Path out) {
    FootprintImport.Imported imported = FootprintImport.of(footprint, Optional.ofNullable(id));
    Connector connector = imported.connector();
    Path file = out == null ? Path.of(connector.id() + ".json") : out;
    if (Files.exists(file)) {
      throw new UserError(file + " exists and is kept; name another with --out");
    }
    DataFile.write(file, connector);
    print(ConnectorList.of(List.of(connector)));
    PrintWriter console = spec.commandLine().getOut();
    imported.remarks().forEach(remark -> console.println("check: " + remark));
    console.println("written: " + file);
    console.println("use it:  leadlight score PHOTO --connector " + file);
    return ExitStatus.GOOD.code();
  }

  private void print(String text) {
    PrintWriter out = spec.commandLine().getOut();
    out.print(text);
    out.flush();
  }
}
