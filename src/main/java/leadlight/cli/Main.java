package leadlight.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.app.output.FaultLog;
import leadlight.app.output.Version;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.model.UserError;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The entry point. */
@Command(
    name = "leadlight",
    description = "Scores the solder joints of a fine-pitch connector row from a photo.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionLine.class,
    synopsisSubcommandLabel = "COMMAND",
    footer = {"", "leadlight COMMAND --help tells more. It never certifies a board."})
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
    for (Map.Entry<String, Object> asked : new Commands(streams).askedFor(args).entrySet()) {
      command.addSubcommand(asked.getKey(), asked.getValue());
    }
    command
        .setOut(out)
        .setErr(err)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .registerConverter(Double.class, new Numbers())
        .registerConverter(double.class, new Numbers())
        .registerConverter(LocalDate.class, new Days())
        .setParameterExceptionHandler(new WrongUsage())
        .setExecutionExceptionHandler(new Faults(streams));
    try {
      Slips.refuse(command, args);
      return command.execute(args);
    } catch (UserError | Error e) {
      // Also what the machine refuses, as memory or a library: no stack trace on the terminal
      // either.
      return failed(e, streams);
    }
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

  /** What cannot be understood. No lambda, nor is the next: docs/start-up.md. */
  private static final class WrongUsage implements IParameterExceptionHandler {

    @Override
    public int handleParseException(ParameterException e, String[] args) {
      e.getCommandLine().getErr().println("leadlight: " + line(Slips.line(e, args)));
      return ExitStatus.UNUSABLE.code();
    }
  }

  /** What cannot be done, or goes wrong. */
  private record Faults(Streams streams) implements IExecutionExceptionHandler {

    @Override
    public int handleExecutionException(Exception e, CommandLine ran, ParseResult parsed) {
      return failed(e, streams);
    }
  }

  /** "help" as people say it: {@code leadlight help score} is {@code leadlight score --help}. */
  private static final class HelpWords {

    private HelpWords() {}

    static String[] of(String... args) {
      if (args.length == 0 || !args[0].equals("help")) {
        return args;
      }
      List<String> asked = new ArrayList<>(Arrays.asList(args).subList(1, args.length));
      asked.add("--help");
      return asked.toArray(String[]::new);
    }
  }

  /**
   * Numbers as people write them: a decimal point or comma, and millimetres behind them or not. A
   * class, since a method reference in its place makes Java 17 fail while it archives classes.
   */
  private static final class Numbers implements ITypeConverter<Double> {

    private static final Pattern NUMBER =
        Pattern.compile("([+-]?\\d*[.,]?\\d+(?:[eE][+-]?\\d+)?)\\s*(?:mm)?");

    @Override
    public Double convert(String text) {
      Matcher matcher = NUMBER.matcher(text.strip());
      try {
        // What else Java takes for a number, as NaN, is refused by who knows the range.
        return Double.valueOf(matcher.matches() ? matcher.group(1).replace(',', '.') : text);
      } catch (NumberFormatException e) {
        throw new UserError("'" + text + "' is not a number, as 0.5, 0,5 or 0.5mm");
      }
    }
  }

  /** Days of the calendar. */
  private static final class Days implements ITypeConverter<LocalDate> {

    @Override
    public LocalDate convert(String text) {
      try {
        return LocalDate.parse(text.strip());
      } catch (DateTimeParseException e) {
        throw new UserError("'" + text + "' is not a day, as 2026-03-31");
      }
    }
  }
}
