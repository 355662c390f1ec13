package leadlight.cli.scene;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import leadlight.app.output.OutputFolder;
import leadlight.app.trial.PatchRun;
import leadlight.cli.option.Limits;
import leadlight.cli.option.ThreadOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Progress;
import leadlight.cli.terminal.Streams;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.reader.PictureFiles;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight reader}: what the second reader is trained on. */
@Command(
    name = "reader",
    description = "Prepares the training of the second reader; using it needs none of this.",
    mixinStandardHelpOptions = true)
public final class ReaderCommand implements Callable<Integer> {

  @Override
  public Integer call() {
    throw new UserError("say what to do: leadlight reader patches FOLDER");
  }

  /** {@code leadlight reader patches}. */
  @Command(
      name = "patches",
      description = {
        "Cuts the joints out of photos whose truth is known, where Leadlight itself finds them.",
        "Writes joints.bin and typical.bin (pictures) and joints.csv (truth, and the chances by "
            + "measures) for models/reader/train.py."
      },
      mixinStandardHelpOptions = true)
  public static final class PatchesCommand implements Callable<Integer> {

    private final Streams streams;

    @Parameters(
        paramLabel = "FOLDER",
        description = "Photos with *.truth.json or *.row.json beside them.")
    private Path folder;

    @Option(
        names = "--out",
        paramLabel = "DIR",
        defaultValue = "patches",
        description = "Folder for the files (default: ${DEFAULT-VALUE}).")
    private Path out;

    @Option(
        names = "--astray",
        description = {
          "Cut every fourth row with truth once more at a wrong place, and note it as wrong:",
          "from such the reader learns what is no joint."
        })
    private boolean astray;

    @Mixin private ThreadOption threads;

    @Mixin private Limits limits;

    public PatchesCommand(Streams streams) {
      this.streams = streams;
    }

    @Override
    public Integer call() {
      List<TrialPhoto> photos = TruthFolder.read(folder);
      OutputFolder.make(out);
      Progress progress = new Progress(streams, photos.size());
      try (PictureFiles pictures = new PictureFiles(out)) {
        PatchRun run = new PatchRun(limits.load(), pictures, astray);
        run.cut(photos, threads.count(), progress::done);
        StringWriter csv = new StringWriter();
        run.joints().write(csv);
        WholeFile.write(out.resolve("joints.csv"), csv.toString().getBytes(StandardCharsets.UTF_8));
        pictures.finish();
      }
      streams.out().println("joints of " + photos.size() + " photos in " + out);
      return ExitStatus.GOOD.code();
    }
  }
}
