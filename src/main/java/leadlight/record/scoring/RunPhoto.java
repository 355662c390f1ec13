package leadlight.record.scoring;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What became of one photo of a run.
 *
 * @param photo where it lies
 * @param subject what it is of
 * @param methodKey how it was to be scored, see {@link Method#key()}
 * @param outcome what became of it
 * @param scoring its scoring; empty if there is none
 * @param message why there is none; empty if there is one
 */
public record RunPhoto(
    Path photo,
    Subject subject,
    String methodKey,
    Outcome outcome,
    OptionalLong scoring,
    Optional<String> message) {

  /** What can become of a photo. */
  public enum Outcome {
    /** Scored by this run. */
    SCORED("scored"),
    /** An equal scoring was there already. */
    UNCHANGED("unchanged"),
    /** It cannot be used, and the message says why. */
    REFUSED("refused"),
    /** A fault of the program, and the message says where the details are. */
    FAULT("fault");

    private final String id;

    Outcome(String id) {
      this.id = id;
    }

    /** The name in the table. */
    public String id() {
      return id;
    }
  }
}
