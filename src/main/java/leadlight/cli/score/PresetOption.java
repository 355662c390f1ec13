package leadlight.cli.score;

import java.nio.file.Path;
import java.util.Optional;
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
      description =
          "The file that says what the words stand for (default: presets.json beside the record).")
  private Optional<Path> file = Optional.empty();

  /**
   * What the word stands for, and what else was asked for.
   *
   * @param beside the folder of what lies beside the record
   */
  Meant in(Path beside) {
    return new Meant(
        Optional.ofNullable(word)
            .map(it -> Presets.read(file.orElse(beside.resolve("presets.json"))).of(it)));
  }

  /** A preset, if one was named, and what it says in place of other options. */
  record Meant(Optional<Presets.Preset> preset) {

    /** The row: that of the preset, or the one asked for. */
    RowRequest row(RowRequest asked) {
      if (preset.isPresent() && !asked.isEmpty()) {
        throw new UserError("--preset says the row; leave out --connector, --leads and --pitch");
      }
      return preset.map(Presets.Preset::asked).orElse(asked);
    }

    /** The class: that of the preset, or the one asked for. */
    int productClass(int asked) {
      return preset.map(Presets.Preset::productClass).orElse(asked);
    }

    /** What is scored, with the preset's port unless one was named. */
    Subject of(Subject subject) {
      return preset.isEmpty() || subject.port().isPresent()
          ? subject
          : subject.at(preset.get().port());
    }
  }
}
