package leadlight.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.text.Likeness;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What somebody may have meant by a word that no command knows. */
final class Suggestions {

  private Suggestions() {}

  /** The likest option or command; empty if nothing is like it. */
  static Optional<String> of(ParameterException e) {
    if (!(e instanceof UnmatchedArgumentException unmatched)
        || unmatched.getUnmatched().isEmpty()) {
      return Optional.empty();
    }
    String word = unmatched.getUnmatched().get(0);
    CommandLine command = e.getCommandLine();
    List<String> known = new ArrayList<>();
    if (word.startsWith("-")) {
      command.getCommandSpec().options().forEach(option -> known.addAll(List.of(option.names())));
    } else {
      known.addAll(command.getSubcommands().keySet());
    }
    return Likeness.nearest(word.split("=", 2)[0], known);
  }
}
