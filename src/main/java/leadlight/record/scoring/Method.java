package leadlight.record.scoring;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import leadlight.data.Hash;
import leadlight.data.JsonText;
import leadlight.model.result.Settings;

/**
 * How a photo is scored. Equal methods give equal results for the same photo, so it need not be
 * scored again.
 *
 * @param settings what was asked for
 * @param limitsSha256 hash of the limits file, lower-case hex
 * @param toolVersion version of Leadlight
 * @param reader version of the second reader; empty if it is not asked
 * @param bench name, version and hash of the enrolled bench that judges; empty if none does
 */
public record Method(
    Settings settings,
    String limitsSha256,
    String toolVersion,
    Optional<String> reader,
    Optional<String> bench) {

  /** Without an enrolled bench. */
  public Method(
      Settings settings, String limitsSha256, String toolVersion, Optional<String> reader) {
    this(settings, limitsSha256, toolVersion, reader, Optional.empty());
  }

  /** A hash of all of it, lower-case hex. */
  public String key() {
    String all =
        JsonText.of(settings)
            + "\n"
            + limitsSha256
            + "\n"
            + toolVersion
            + "\n"
            + reader.orElse("")
            + bench.map(it -> "\n" + it).orElse("");
    return Hash.sha256(all.getBytes(StandardCharsets.UTF_8));
  }
}
