package leadlight.app.output;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/** Keeps the details of a fault of ours out of the terminal and in a file. */
public final class FaultLog {

  private FaultLog() {}

  /** Writes the details to a file of the system's temporary folder; the line to print. */
  public static String write(Throwable fault) {
    StringWriter details = new StringWriter();
    fault.printStackTrace(new PrintWriter(details));
    String what = "a fault of ours, not of your input: " + fault.getClass().getSimpleName();
    try {
      Path log = Files.createTempFile("leadlight-fault-", ".log");
      Files.writeString(log, details.toString());
      return what + "; details in " + log;
    } catch (IOException e) {
      return what
          + "; the details could not be written: "
          + String.valueOf(fault.getMessage()).lines().findFirst().orElse("");
    }
  }
}
