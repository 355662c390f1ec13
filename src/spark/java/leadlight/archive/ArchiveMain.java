package leadlight.archive;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import leadlight.app.output.FaultLog;
import leadlight.app.output.Version;
import leadlight.cli.terminal.ExitStatus;
import leadlight.model.UserError;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The entry point: an archive read, counted, and compared between two versions. */
@Command(
    name = "leadlight-archive",
    mixinStandardHelpOptions = true,
    versionProvider = ArchiveMain.VersionLine.class,
    description = "Reads an archive of photos again, many at once. It never certifies a board.")
public final class ArchiveMain {

  /** Photos between two commits of results; what a killed run loses at most. No source. */
  private static final int WAVE = 5000;

  @Spec private CommandSpec spec;

  private ArchiveMain() {}

  /** What {@code --version} prints: the program's, and what its results are kept under. */
  static final class VersionLine implements IVersionProvider {

    @Override
    public String[] getVersion() {
      return new String[] {
        "leadlight-archive " + Version.number() + "; reads as version " + PhotoScoring.version()
      };
    }
  }

  /** Runs a command and leaves with its exit status. */
  public static void main(String[] args) {
    System.exit(run(System.out, System.err, args));
  }

  static int run(PrintStream out, PrintStream err, String... args) {
    Locale.setDefault(Locale.ROOT);
    ArchiveMain main = new ArchiveMain();
    CommandLine command = new CommandLine(main);
    command.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
    command.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
    command.setParameterExceptionHandler(ArchiveMain::misused);
    command.setExecutionExceptionHandler((e, line, parsed) -> failed(line, e));
    try {
      return command.execute(args);
    } catch (Error e) {
      // What the machine refuses, as memory or a library: no stack trace on the terminal either.
      return failed(command, e);
    }
  }

  private static int failed(CommandLine command, Throwable e) {
    if (e instanceof UserError) {
      command.getErr().println("leadlight-archive: " + e.getMessage());
      return ExitStatus.UNUSABLE.code();
    }
    command.getErr().println("leadlight-archive: " + FaultLog.write(e));
    return ExitStatus.FAULT.code();
  }

  private static int misused(ParameterException e, String[] args) {
    e.getCommandLine().getErr().println("leadlight-archive: " + e.getMessage() + "; try --help");
    return ExitStatus.UNUSABLE.code();
  }

  @Command(
      name = "read",
      mixinStandardHelpOptions = true,
      versionProvider = VersionLine.class,
      description = "Reads the photos of a table that were not read yet.")
  int read(
      @Parameters(paramLabel = "TABLE", description = "CSV: photo, connector or leads and pitch_mm")
          Path table,
      @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "The archive.")
          String archive,
      @Option(
              names = "--wave",
              paramLabel = "N",
              description = "Photos between two commits (default: 5000).")
          Integer wave) {
    if (!Files.isRegularFile(table) || !Files.isReadable(table)) {
      throw new UserError(table + " cannot be read; check the path");
    }
    Results.plain(table.toString());
    ReadRun.Counts counts =
        Session.with(
            spark ->
                new ReadRun(spark, archive, wave == null ? WAVE : wave)
                    .read(PhotoTable.read(spark, table), ArchiveMain::progress));
    say(counts.line());
    return counts.bad() > 0 ? ExitStatus.UNUSABLE.code() : ExitStatus.GOOD.code();
  }

  private static void progress(String line) {
    if (System.console() != null) {
      System.err.println(line);
    }
  }

  @Command(
      name = "rates",
      mixinStandardHelpOptions = true,
      versionProvider = VersionLine.class,
      description = "How many joints are defects, by what they share.")
  int rates(
      @Parameters(paramLabel = "FOLDER", description = "The archive.") String archive,
      @Option(
              names = "--by",
              required = true,
              paramLabel = "WHAT",
              description = "connector, pin, lamp, site or version.")
          String by,
      @Option(
              names = "--of",
              paramLabel = "V",
              description = "Of the opinions of one version (default: of each version).")
          String version) {
    Session.with(spark -> Rates.of(new Results(spark, archive), by, version)).forEach(this::say);
    return ExitStatus.GOOD.code();
  }

  @Command(
      name = "changes",
      mixinStandardHelpOptions = true,
      versionProvider = VersionLine.class,
      description = "What changed between two versions, and which joints to look at again.")
  int changes(
      @Parameters(paramLabel = "FOLDER", description = "The archive.") String archive,
      @Option(
              names = "--before",
              required = true,
              paramLabel = "V",
              description = "The one version.")
          String before,
      @Option(
              names = "--after",
              required = true,
              paramLabel = "V",
              description = "The other version.")
          String after,
      @Option(
              names = "--joints",
              paramLabel = "FOLDER",
              description = "Where to write the joints that changed, as CSV.")
          String joints) {
    Session.with(spark -> changes(new Results(spark, archive), before, after, joints))
        .forEach(this::say);
    return ExitStatus.GOOD.code();
  }

  private static List<String> changes(Results results, String before, String after, String joints) {
    Changes changes = new Changes(results, before, after);
    if (joints != null) {
      results.refuseExisting(joints);
      changes.write(joints);
    }
    return changes.lines();
  }

  private void say(String line) {
    spec.commandLine().getOut().println(line);
  }
}
