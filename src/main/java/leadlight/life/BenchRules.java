package leadlight.life;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.data.DataFile;

/**
 * Figures of the bench, with their sources: {@code models/bench/bench.json}.
 *
 * @param mostHeats how often a joint may be heated
 * @param glanceMs how often the page looks at the camera's picture while it is focused
 * @param shownPx the longer side of photos on the page
 * @param nearPxPerPitch pixels a pitch from which the camera is near enough
 * @param twiceMs within how long the same word on the same joint is one press, not two
 * @param firstGuesses leads that a row is first taken to have while they are counted
 */
public record BenchRules(
    @JsonProperty(required = true) Count mostHeats,
    @JsonProperty(required = true) Count glanceMs,
    @JsonProperty(required = true) Count shownPx,
    @JsonProperty(required = true) Count nearPxPerPitch,
    @JsonProperty(required = true) Count twiceMs,
    @JsonProperty(required = true) Counts firstGuesses) {

  /** A number of things. */
  public record Count(
      @JsonProperty(required = true) int value, @JsonProperty(required = true) String source) {}

  /** Several numbers, in their order. */
  public record Counts(
      @JsonProperty(required = true) List<Integer> counts,
      @JsonProperty(required = true) String source) {

    /** Copies the list. */
    public Counts {
      counts = List.copyOf(counts);
    }
  }

  private static final BenchRules BUILT_IN =
      DataFile.builtIn("bench/bench.json").read(BenchRules.class);

  /** The figures packed into the program. */
  public static BenchRules builtIn() {
    return BUILT_IN;
  }
}
