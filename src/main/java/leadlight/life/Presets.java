package leadlight.life;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import leadlight.connector.RowRequest;
import leadlight.data.DataFile;
import leadlight.model.UserError;
import leadlight.text.Likeness;

/**
 * Words of the shop's own for what it works on, as "our-video-port": connector, class, and the lamp
 * to switch on. One file, {@code presets.json} of the record's folder, that the shop writes:
 *
 * <pre>
 * {"presets": [{"word": "our-video-port", "connector": "usb-c-16", "class": 2, "lamp": "ring"}]}
 * </pre>
 *
 * @param presets the words
 */
public record Presets(@JsonProperty(required = true) List<Preset> presets) {

  /**
   * One word.
   *
   * @param word the word
   * @param connector the connector's id; or leads and pitch of a plain row
   * @param row which row of a connector that has several
   * @param leads leads of a plain row
   * @param pitchMm pitch of a plain row
   * @param productClass 1, 2 or 3
   * @param lamp which lamp to switch on, in words; shown on the bench page
   * @param port which of several equal rows of a board it is
   */
  public record Preset(
      @JsonProperty(required = true) String word,
      Optional<String> connector,
      OptionalInt row,
      OptionalInt leads,
      OptionalDouble pitchMm,
      @JsonProperty(value = "class", required = true) int productClass,
      Optional<String> lamp,
      Optional<String> port) {

    /** Refuses a word that is none and a class that there is not. */
    public Preset {
      if (word == null || word.isBlank()) {
        throw new IllegalArgumentException("a preset has no word");
      }
      if (productClass < 1 || productClass > 3) {
        throw new IllegalArgumentException(
            "class of \"" + word + "\" must be 1, 2 or 3, is " + productClass);
      }
    }

    /** What to look for. */
    public RowRequest asked() {
      return new RowRequest(
          connector,
          row,
          leads,
          pitchMm,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          false,
          false);
    }
  }

  /** Copies the list; refuses an empty place in it and a word that is there twice. */
  public Presets {
    if (presets == null || presets.stream().anyMatch(Objects::isNull)) {
      throw new IllegalArgumentException("\"presets\" must be a list of presets");
    }
    presets = List.copyOf(presets);
    Set<String> words = new HashSet<>();
    for (Preset preset : presets) {
      if (!words.add(preset.word())) {
        throw new IllegalArgumentException("\"" + preset.word() + "\" is there twice");
      }
    }
  }

  /**
   * The words of a file; none if it is not there.
   *
   * @throws UserError if it is no such file
   */
  public static Presets read(Path file) {
    return Files.exists(file) ? DataFile.at(file).read(Presets.class) : new Presets(List.of());
  }

  /**
   * What a word stands for.
   *
   * @throws UserError if it is not known, naming the nearest
   */
  public Preset of(String word) {
    Map<String, Preset> byWord = new TreeMap<>();
    presets.forEach(preset -> byWord.put(preset.word(), preset));
    if (byWord.containsKey(word)) {
      return byWord.get(word);
    }
    String known =
        byWord.isEmpty()
            ? "; there are none yet: docs/bench.md says how to write presets.json"
            : "; there are " + String.join(", ", byWord.keySet());
    throw new UserError(
        "no preset is called "
            + word
            + Likeness.nearest(word, byWord.keySet())
                .map(near -> "; did you mean " + near + "?")
                .orElse(known));
  }
}
