package leadlight.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import leadlight.model.UserError;
import leadlight.text.Likeness;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is said of a line that no command understands: what is wrong with it, in plain words. */
final class Slips {

  private static final Pattern LONG_DASH = Pattern.compile("[\u2013\u2014]-?([a-z][a-z-]*.*)");

  private static final Set<Class<?>> WHOLE =
      Set.of(int.class, Integer.class, long.class, Long.class);

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

  /** The line of what the parser refuses, by what it knows; its own sentences are not read. */
  static String line(ParameterException e, String... args) {
    return said(e, args) + see(e.getCommandLine());
  }

  private static String said(ParameterException e, String... args) {
    CommandLine command = e.getCommandLine();
    if (e instanceof UnmatchedArgumentException unmatched && !unmatched.getUnmatched().isEmpty()) {
      return unmatched(command, unmatched.getUnmatched().get(0));
    }
    if (e instanceof MissingParameterException lack && !lack.getMissing().isEmpty()) {
      return missing(lack.getMissing(), args);
    }
    if (e.getArgSpec() != null && e.getValue() != null) {
      return name(e.getArgSpec()) + ": " + wrong(e);
    }
    if (e.getClass() == ParameterException.class
        && e.getArgSpec() == null
        && !command.getSubcommands().isEmpty()) {
      return "name a command of " + command.getCommandSpec().qualifiedName();
    }
    return first(e);
  }

  private static String first(ParameterException e) {
    return e.getMessage().lines().findFirst().orElse("wrong usage");
  }

  private static String name(ArgSpec arg) {
    return arg instanceof OptionSpec option ? option.longestName() : arg.paramLabel();
  }

  private static String missing(List<ArgSpec> lack, String... args) {
    ArgSpec first = lack.get(0);
    List<String> typed = Arrays.asList(args);
    if (first instanceof OptionSpec option
        && Arrays.stream(option.names()).anyMatch(typed::contains)) {
      return "a value is missing behind " + name(first);
    }
    return first.arity().min() > 1
        ? name(first) + " needs at least " + first.arity().min()
        : lack.stream().map(Slips::name).collect(Collectors.joining(", ")) + " is missing";
  }

  /** What is wrong with a value: as its converter has it, or by what it should have been. */
  private static String wrong(ParameterException e) {
    if (e.getCause() instanceof UserError told) {
      return told.getMessage();
    }
    Class<?> type = e.getArgSpec().auxiliaryTypes()[0];
    String value = "'" + e.getValue() + "'";
    if (type.isEnum()) {
      return value
          + " is none of "
          + Arrays.stream(type.getEnumConstants())
              .map(it -> it.toString().toLowerCase(Locale.ROOT))
              .collect(Collectors.joining(", "));
    }
    if (WHOLE.contains(type)) {
      return value + " is not a whole number";
    }
    return type == boolean.class ? "takes no value, as " + value : first(e);
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

  private static String meant(String word, Collection<String> known) {
    return Likeness.nearest(word, known).map(near -> "; did you mean " + near + "?").orElse("");
  }

  private static String see(CommandLine command) {
    return " (see " + command.getCommandSpec().qualifiedName() + " --help)";
  }
}
