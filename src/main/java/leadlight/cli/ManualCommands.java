package leadlight.cli;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shell completion and manual pages, made from the commands themselves. */
final class ManualCommands {

  /** Commands that speak of all others. */
  static final Set<String> NEED_ALL = Set.of("completion", "man");

  private ManualCommands() {}

  /** Completion for bash, and for zsh by its bashcompinit. */
  @Command(
      name = "completion",
      description = "Prints shell completion; put it to use by: source <(leadlight completion)",
      mixinStandardHelpOptions = true)
  static final class CompletionCommand implements Callable<Integer> {

    /** As "above|below|left|right". */
    private static final Pattern CHOICE = Pattern.compile("[a-z0-9-]+(\\|[a-z0-9-]+)+");

    private final Streams streams;

    @Spec private CommandSpec spec;

    CompletionCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      CommandLine root = spec.root().commandLine();
      offer(root);
      streams.out().print(AutoComplete.bash("leadlight", root));
      return ExitStatus.GOOD.code();
    }

    /** The words that an option's label has to choose from are offered as the help writes them. */
    private static void offer(CommandLine command) {
      CommandSpec spec = command.getCommandSpec();
      for (OptionSpec option : List.copyOf(spec.options())) {
        if (CHOICE.matcher(option.paramLabel()).matches()) {
          spec.remove(option);
          spec.addOption(
              OptionSpec.builder(option)
                  .completionCandidates(List.of(option.paramLabel().split("\\|", -1)))
                  .build());
        }
      }
      command.getSubcommands().values().forEach(CompletionCommand::offer);
    }
  }

  /** A page for man(1). */
  @Command(
      name = "man",
      description = "Prints a manual page; read it by: leadlight man score | man -l -",
      mixinStandardHelpOptions = true)
  static final class ManCommand implements Callable<Integer> {

    private final Streams streams;

    @Spec private CommandSpec spec;

    @Parameters(paramLabel = "COMMAND", arity = "0..*", description = "Of which command.")
    private List<String> path = List.of();

    ManCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      CommandLine asked = spec.root().commandLine();
      for (String name : path) {
        asked = Slips.under(asked, name);
      }
      streams.out().print(page(asked));
      return ExitStatus.GOOD.code();
    }

    private static String page(CommandLine command) {
      Help help = command.getHelp();
      String name = command.getCommandSpec().qualifiedName("-");
      String[] says = command.getCommandSpec().usageMessage().description();
      StringBuilder page = new StringBuilder();
      page.append(".TH ").append(name.toUpperCase(Locale.ROOT)).append(" 1\n");
      page.append(".SH NAME\n").append(name).append(" \\- ");
      page.append(escaped(says.length == 0 ? "" : says[0])).append("\n");
      section(page, "SYNOPSIS", help.synopsis(0));
      section(page, "DESCRIPTION", help.description());
      section(page, "PARAMETERS", help.parameterList());
      section(page, "OPTIONS", help.optionList());
      section(page, "COMMANDS", help.commandList());
      section(page, "EXIT STATUS", help.exitCodeList());
      return page.toString();
    }

    private static void section(StringBuilder page, String title, String text) {
      if (!text.isBlank()) {
        page.append(".SH ").append(title).append("\n.nf\n").append(escaped(text.stripTrailing()));
        page.append("\n.fi\n");
      }
    }

    /** Backslashes, and dots and quotes at the begin of a line, mean something to roff. */
    private static String escaped(String text) {
      return text.replace("\\", "\\e").replace("-", "\\-").replaceAll("(?m)^([.'])", "\\\\&$1");
    }
  }
}
