package leadlight.record.said;

import java.util.List;

/** How a joint was settled at the bench. */
public enum BenchTest {
  /** The lead was pushed with a probe. */
  PROD("prod", List.of("firm", "moves")),
  /** A meter was put to the joint, or to it and a neighbour. */
  METER("meter", List.of("open", "short", "ok"));

  private final String id;
  private final List<String> results;

  BenchTest(String id, List<String> results) {
    this.id = id;
    this.results = results;
  }

  /** The name in files and tables. */
  public String id() {
    return id;
  }

  /** What it can come to. */
  public List<String> results() {
    return results;
  }
}
