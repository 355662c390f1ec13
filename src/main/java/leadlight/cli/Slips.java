package leadlight.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.model.UserError;
import leadlight.text.Likeness;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is said of a line that no command understands: what is wrong with it, in plain words. */
final class Slips {

  private static final Pattern LONG_DASH = Pattern.compile("[\u2013\u2014]-?([a-z][a-z-]*.*)");

  /** What the parser says, and how we say it. */
  private record Plainer(Pattern parser, String ours) {

    static Plainer of(String parser, String ours) {
      return new Plainer(Pattern.compile(parser), ours);
    }
  }

  private static final List<Plainer> PLAINER =
      List.of(
          Plainer.of("Invalid value for option '(--?[a-z0-9-]+)'(?: \\(.*?\\))?: ", "$1: "),
          Plainer.of("Invalid value for positional parameter at index \\S+ \\((.*?)\\): ", "$1: "),
          Plainer.of("positional parameter at index \\S+ \\((.*?)\\)", "$1"),
          Plainer.of(
              " requires at least (\\d+) values, but (?:only )?(\\S+) were .*",
              " needs at least $1, not $2"),
          Plainer.of(
              "Missing required parameter for option '(.*?)'", "a value is missing behind $1"),
          Plainer.of("Missing required (?:parameter|option)s?: (.*)", "$1 is missing"),
          Plainer.of("' is not an? (?:int|long)$", "' is not a whole number"));

  private static final Pattern ONE_OF =
      Pattern.compile("expected one of \\[(.*)\\] \\(case-insensitive\\) but was (.*)");

  private Slips() {}

  /**
   * Refuses what the parser would take for something else.
   *
   * @throws UserError for a long dash where an option begins, and for a command that is none, also
   *     where its help is asked for
   */
  static void refuse(CommandLine root, String... args) {
    for (String word : args) {
      Matcher dash = LONG_DASH.matcher(word);
      if (dash.matches()) {
        throw new UserError(
            word
                + " begins with a long dash; an option begins with two short ones: --"
                + dash.group(1));
      }
    }
    CommandLine command = root;
    for (String word : args) {
      if (word.startsWith("-")
          || command.getSubcommands().isEmpty()
          || !command.getCommandSpec().positionalParameters().isEmpty()) {
        return;
      }
      command = under(command, word);
    }
  }

  /**
   * The command of that name.
   *
   * @throws UserError if there is none, naming the likest
   */
  static CommandLine under(CommandLine command, String name) {
    CommandLine found = command.getSubcommands().get(name);
    if (found == null) {
      throw new UserError(
          "no command is called "
              + name
              + meant(name, command.getSubcommands().keySet())
              + see(command));
    }
    return found;
  }

  /** The line of what the parser refuses. */
  static String line(ParameterException e) {
    return said(e) + see(e.getCommandLine());
  }

  private static String said(ParameterException e) {
    CommandLine command = e.getCommandLine();
    if (e instanceof UnmatchedArgumentException unmatched && !unmatched.getUnmatched().isEmpty()) {
      return unmatched(command, unmatched.getUnmatched().get(0));
    }
    if (e.getClass() == ParameterException.class
        && e.getArgSpec() == null
        && !command.getSubcommands().isEmpty()) {
      return "name a command of " + command.getCommandSpec().qualifiedName();
    }
    String first = e.getMessage().lines().findFirst().orElse("wrong usage");
    for (Plainer plainer : PLAINER) {
      first = plainer.parser().matcher(first).replaceAll(plainer.ours());
    }
    return oneOf(first);
  }

  private static String unmatched(CommandLine command, String word) {
    if (!word.startsWith("-")) {
      return "nothing is known of " + word + " at this place";
    }
    List<String> known = new ArrayList<>();
    command
        .getCommandSpec()
        .options()
        .forEach(option -> known.addAll(Arrays.asList(option.names())));
    String name = word.split("=", 2)[0];
    boolean first = command.getCommandSpec().parent() == null;
    return "no option is called "
        + name
        + (first ? "; a command stands before its options" : meant(name, known));
  }

  private static String oneOf(String said) {
    Matcher choice = ONE_OF.matcher(said);
    return choice.find()
        ? said.substring(0, choice.start())
            + choice.group(2)
            + " is none of "
            + choice.group(1).toLowerCase(Locale.ROOT)
        : said;
  }

  private static String meant(String word, Collection<String> known) {
    return Likeness.nearest(word, known).map(near -> "; did you mean " + near + "?").orElse("");
  }

  private static String see(CommandLine command) {
    return " (see " + command.getCommandSpec().qualifiedName() + " --help)";
  }
}
