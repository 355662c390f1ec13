package leadlight.cli.option;

import java.util.Optional;
import leadlight.model.BodySide;
import picocli.CommandLine.Option;

/** On which side of the leads the body lies, where the photo does not show it. */
public final class BodyOption {

  @Option(
      names = "--body",
      paramLabel = "above|below|left|right",
      description =
          "Where the connector's body lies, seen from its leads in the upright photo; needed only "
              + "where the photo does not show it.")
  private BodySide body;

  public Optional<BodySide> side() {
    return Optional.ofNullable(body);
  }
}
