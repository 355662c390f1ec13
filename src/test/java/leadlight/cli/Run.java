package leadlight.cli;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A command that has run.
 *
 * @param status exit status
 * @param out what it printed as result
 * @param err what it printed as message
 */
public record Run(int status, String out, String err) {

  public static Run of(Object... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    String[] words = new String[args.length];
    for (int i = 0; i < args.length; i++) {
      words[i] = args[i].toString();
    }
    int status = Main.run(InputStream.nullInputStream(), stream(out), stream(err), words);
    return new Run(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private static PrintStream stream(ByteArrayOutputStream to) {
    return new PrintStream(to, true, StandardCharsets.UTF_8);
  }

  public List<String> errLines() {
    return err.lines().toList();
  }
}
