package leadlight.cli.option;

import java.util.Optional;
import leadlight.grade.limits.AcceptanceSet;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The limits to judge by, and how sure it must be that they are kept. */
public final class GuardedLimits {

  @Mixin private Limits limits;

  @Option(
      names = "--guard-band",
      paramLabel = "PERCENT",
      description =
          "How sure it must be that a limit is kept, or passed: up to 99, never less than by the"
              + " limits (95).")
  private Optional<String> guardBand = Optional.empty();

  public AcceptanceSet load() {
    return guardBand.map(limits::load).orElseGet(limits::load);
  }
}
