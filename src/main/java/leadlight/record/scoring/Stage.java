package leadlight.record.scoring;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** When in a board's way through the shop a photo was taken, in the order of that way. */
public enum Stage {
  AS_RECEIVED("as-received"),
  AFTER_REWORK("after-rework"),
  FINAL("final");

  private final String id;

  Stage(String id) {
    this.id = id;
  }

  /** The name in files, tables and folder names. */
  public String id() {
    return id;
  }

  /** The names of all. */
  public static List<String> ids() {
    return Arrays.stream(values()).map(Stage::id).toList();
  }

  /** As people read it. */
  public String words() {
    return id.replace('-', ' ');
  }

  /** A stage by its name; case does not matter, blank, hyphen and underscore are alike. */
  public static Optional<Stage> of(String name) {
    String like = name.strip().replaceAll("[\\s_-]+", "-");
    for (Stage stage : values()) {
      if (stage.id.equalsIgnoreCase(like)) {
        return Optional.of(stage);
      }
    }
    return Optional.empty();
  }
}
