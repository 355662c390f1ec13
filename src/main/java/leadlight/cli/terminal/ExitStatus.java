package leadlight.cli.terminal;

import java.util.LinkedHashMap;
import java.util.Map;
import leadlight.model.Verdict;

/**
 * What a command's exit status means, worst first: of several photos the worst wins, in the order
 * of these constants.
 */
public enum ExitStatus {
  FAULT(70, "a fault of ours; where the details are is said"),
  UNUSABLE(2, "usage, or an input or output that cannot be used"),
  DEFECT(3, "at least one joint or anchor leg is a defect"),
  UNJUDGED(4, "no defect, but a joint or leg is not judged or the row was not found"),
  GOOD(0, "every joint and leg is acceptable or a process indicator");

  private final int code;
  private final String meaning;

  ExitStatus(int code, String meaning) {
    this.code = code;
    this.meaning = meaning;
  }

  public int code() {
    return code;
  }

  /** Codes and meanings in their order, for the help. */
  public static Map<String, String> help() {
    Map<String, String> lines = new LinkedHashMap<>();
    for (ExitStatus status : values()) {
      lines.put(String.format("%2d", status.code), status.meaning);
    }
    return lines;
  }

  /** What a photo's verdict comes to. */
  public static ExitStatus of(Verdict verdict) {
    return switch (verdict) {
      case DEFECT -> DEFECT;
      case UNJUDGED -> UNJUDGED;
      case ACCEPTABLE, PROCESS_INDICATOR -> GOOD;
    };
  }

  public ExitStatus worse(ExitStatus other) {
    return compareTo(other) <= 0 ? this : other;
  }
}
