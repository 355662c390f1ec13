package leadlight.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** "help" as people say it: {@code leadlight help score} is {@code leadlight score --help}. */
final class HelpWords {

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
