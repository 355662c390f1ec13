package leadlight.cli.score;

import java.nio.file.Path;
import leadlight.connector.RowRequest;
import leadlight.life.Presets;
import leadlight.model.UserError;
import leadlight.record.scoring.Subject;
import picocli.CommandLine.Option;

/** A word that stands for connector and class. */
final class PresetOption {

  @Option(
      names = "--preset",
      paramLabel = "WORD",
      description = "A word of yours for connector and class, from presets.json of the record.")
  private String word;

  @Option(
      names = "--presets",
      paramLabel = "FILE",
      defaultValue = "reports/record/presets.json",
      description = "The file that says what the words stand for (default: ${DEFAULT-VALUE}).")
  private Path file;

  /** The row: that of the preset, or the one asked for. */
  RowRequest row(RowRequest asked) {
    if (word == null) {
      return asked;
    }
    if (!asked.isEmpty()) {
      throw new UserError("--preset says the row; leave out --connector, --leads and --pitch");
    }
    return preset().asked();
  }

  /** The class: that of the preset, or the one asked for. */
  int productClass(int asked) {
    return word == null ? asked : preset().productClass();
  }

  /** What is scored, with the preset's port unless one was named. */
  Subject of(Subject subject) {
    return word == null || subject.port().isPresent() ? subject : subject.at(preset().port());
  }

  private Presets.Preset preset() {
    return Presets.read(file).of(word);
  }
}
