package leadlight.release;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.spi.ToolProvider;

/** Programs that the release is made with. */
final class Tool {

  private Tool() {}

  /** What a tool of the JDK prints. */
  static String ofTheJdk(String name, List<String> arguments) {
    StringWriter out = new StringWriter();
    PrintWriter writer = new PrintWriter(out);
    int status =
        ToolProvider.findFirst(name)
            .orElseThrow(() -> new IllegalStateException("no " + name + "; a whole JDK is needed"))
            .run(writer, writer, arguments.toArray(String[]::new));
    if (status != 0) {
      throw new IllegalStateException(name + " ended with " + status + ": " + out);
    }
    return out.toString();
  }

  /** What another program prints; it must end with 0, 3 or 4, as a scored photo does. */
  static String run(String program, List<String> arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of(program));
    command.addAll(arguments);
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    try {
      int status = process.waitFor();
      if (status != 0 && status != 3 && status != 4) {
        throw new IllegalStateException(String.join(" ", command) + ": " + status + "\n" + out);
      }
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
    return out;
  }
}
