package leadlight.cli.record;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.model.UserError;
import leadlight.record.JobRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code leadlight record import}: a record made anew from a complete export. */
@Command(
    name = "import",
    description = "Makes a record from what \"record export FILE.jsonl\" wrote, in a new folder.",
    mixinStandardHelpOptions = true)
public final class ImportCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "FILE.jsonl", description = "The complete export.")
  private Path file;

  @Mixin private RecordOption record;

  public ImportCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      streams
          .out()
          .println(
              "imported into "
                  + record.place()
                  + ", seal "
                  + JobRecord.importInto(record.place(), lines, file.toString()));
    } catch (IOException e) {
      throw new UserError(file + " cannot be read; name what \"record export\" wrote");
    }
    return ExitStatus.GOOD.code();
  }
}
