package leadlight.text;

import leadlight.model.Verdict;

/** What verdicts are called, alone and counted. */
public final class VerdictWords {

  private VerdictWords() {}

  /** In lines of plain English, on the terminal and in tables. */
  public static String plain(Verdict verdict) {
    return switch (verdict) {
      case ACCEPTABLE -> "acceptable";
      case PROCESS_INDICATOR -> "process indicator";
      case UNJUDGED -> "not judged";
      case DEFECT -> "defect";
    };
  }

  /** On a page. */
  public static String of(Verdict verdict, Messages words) {
    return words.get("verdict." + verdict.id());
  }

  /** "2 defects", "12 sound", on a page. */
  public static String counted(Verdict verdict, int count, Messages words) {
    String key = "count." + verdict.id();
    return verdict == Verdict.DEFECT ? words.counted(key, count) : words.get(key, count);
  }
}
