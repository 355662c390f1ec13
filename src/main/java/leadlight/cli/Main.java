package leadlight.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import leadlight.app.output.FaultLog;
import leadlight.app.output.Version;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.model.UserError;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.ParameterException;

/** The entry point. */
@Command(
    name = "leadlight",
    description = "Scores the solder joints of a fine-pitch connector row from a photo.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionLine.class,
    synopsisSubcommandLabel = "COMMAND",
    footer = {"", "LEADLIGHT COMMAND --help tells more. It never certifies a board."})
public final class Main {

  /** More than two of the longest paths; common practice, no source. */
  private static final int LONGEST_LINE = 8192;

  private Main() {}

  /** What {@code --version} prints. */
  static final class VersionLine implements IVersionProvider {

    @Override
    public String[] getVersion() {
      return new String[] {"leadlight " + Version.number()};
    }
  }

  /** Runs a command and leaves with its exit status. */
  public static void main(String[] args) {
    System.exit(
        run(new Streams(System.in, System.out, System.err, System.console() != null), args));
  }

  /** Runs a command as in a pipe (no progress) and gives its exit status. */
  public static int run(InputStream in, PrintStream out, PrintStream err, String... args) {
    return run(new Streams(in, out, err, false), args);
  }

  private static int run(Streams streams, String... args) {
    // What is written is the same on every machine; words for people come from the message files.
    Locale.setDefault(Locale.ROOT);
    int status = execute(streams, args);
    if (streams.out().checkError()) {
      streams
          .err()
          .println("leadlight: the output cannot be written, its disk is full or it is closed");
      return ExitStatus.UNUSABLE.code();
    }
    return status;
  }

  private static int execute(Streams streams, String... given) {
    String[] args = HelpWords.of(given);
    PrintWriter out = new PrintWriter(streams.out(), true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(streams.err(), true, StandardCharsets.UTF_8);
    CommandLine command = new CommandLine(new Main());
    new Commands(streams).askedFor(args).forEach(command::addSubcommand);
    command
        .setOut(out)
        .setErr(err)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .registerConverter(Double.class, new Numbers())
        .registerConverter(double.class, new Numbers())
        .setParameterExceptionHandler((e, arguments) -> usage(e))
        .setExecutionExceptionHandler((e, ran, parsed) -> failed(e, streams));
    try {
      return command.execute(args);
    } catch (Error e) {
      // What the machine refuses, as memory or a library: no stack trace on the terminal either.
      return failed(e, streams);
    }
  }

  private static int usage(ParameterException e) {
    CommandLine command = e.getCommandLine();
    String first = e.getMessage().lines().findFirst().orElse("wrong usage");
    String name = command.getCommandSpec().qualifiedName();
    String meant = Suggestions.of(e).map(near -> "; did you mean " + near + "?").orElse("");
    command.getErr().println("leadlight: " + line(first) + meant + " (see " + name + " --help)");
    return ExitStatus.UNUSABLE.code();
  }

  /** One line that no name of a file can turn into commands to the terminal, and that ends. */
  private static String line(String message) {
    String plain = message.replaceAll("\\p{Cntrl}", "?");
    return plain.length() <= LONGEST_LINE ? plain : plain.substring(0, LONGEST_LINE) + " ...";
  }

  private static int failed(Throwable e, Streams streams) {
    if (e instanceof UserError) {
      streams.err().println("leadlight: " + line(e.getMessage()));
      return ExitStatus.UNUSABLE.code();
    }
    streams.err().println("leadlight: " + FaultLog.write(e));
    return ExitStatus.FAULT.code();
  }
}
