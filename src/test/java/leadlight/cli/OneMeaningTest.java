package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlight.cli.terminal.Streams;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** One option name takes one kind of value, whichever command has it; each is described. */
class OneMeaningTest {

  /** Draws sets for contributors: its flags say which kind of set, in the words of the sets. */
  private static final String DRAWS_SETS = "leadlight scene set";

  private static final List<CommandLine> COMMANDS = all();

  private static List<CommandLine> all() {
    List<CommandLine> commands = new ArrayList<>();
    Streams streams = new Streams(InputStream.nullInputStream(), System.out, System.err, false);
    CommandLine root = new CommandLine(CommandSpec.create().name("leadlight"));
    new Commands(streams).askedFor("man").forEach(root::addSubcommand);
    root.getSubcommands().values().forEach(command -> add(command, commands));
    return commands;
  }

  private static void add(CommandLine command, List<CommandLine> commands) {
    commands.add(command);
    command.getSubcommands().values().forEach(under -> add(under, commands));
  }

  /** "ID" and "ID|FILE" are one kind: there is more to choose from. */
  private static String kind(OptionSpec option) {
    return option.arity().max() == 0 ? "flag" : option.paramLabel().replaceFirst("\\|FILE$", "");
  }

  @Test
  void anOptionTakesTheSameEverywhere() {
    Map<String, Set<String>> kinds = new TreeMap<>();
    for (CommandLine command : COMMANDS) {
      if (!command.getCommandSpec().qualifiedName().equals(DRAWS_SETS)) {
        command
            .getCommandSpec()
            .options()
            .forEach(
                option ->
                    kinds
                        .computeIfAbsent(option.longestName(), name -> new TreeSet<>())
                        .add(kind(option)));
      }
    }
    assertThat(kinds).hasSizeGreaterThan(80);
    kinds.values().removeIf(of -> of.size() == 1);
    assertThat(kinds).isEmpty();
  }

  @Test
  void everyCommandAndOptionIsDescribedByItself() {
    for (CommandLine command : COMMANDS) {
      String name = command.getCommandSpec().qualifiedName();
      assertThat(command.getCommandSpec().usageMessage().description()).as(name).isNotEmpty();
      for (OptionSpec option : command.getCommandSpec().options()) {
        String said = String.join(" ", option.description());
        // Options are listed by name: one that leans on another stands before or far behind it.
        assertThat(said)
            .as(name + " " + option.longestName())
            .isNotBlank()
            .doesNotStartWith("...")
            .doesNotEndWith("...")
            .doesNotContainPattern("^The same (of|from|as) ");
      }
    }
  }

  @Test
  void completionOffersTheWordsOfTheHelp() {
    String script = Run.of("completion").out();
    assertThat(script)
        .contains("(\"above\" \"below\" \"left\" \"right\")")
        .contains("(\"en\" \"de\")")
        .contains("(\"component\" \"solder\")")
        .doesNotContainPattern("option_args=\\(\"[A-Z]");
  }
}
