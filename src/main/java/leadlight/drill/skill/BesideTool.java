package leadlight.drill.skill;

import java.util.Locale;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;

/** A trainee's verdict on their own joint beside the tool's; neither is the truth. */
public enum BesideTool {
  /** Both call it sound, or both a defect. */
  AGREED,
  /** The tool sees a defect where the trainee saw none. */
  MISSED,
  /** The trainee sees a defect where the tool sees none. */
  OVER_CALLED,
  /** One of them, or both, did not judge it. */
  NOT_JUDGED;

  /** Its name in files and as key of its words. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static BesideTool of(DrillAnswer answer) {
    Verdict tool = answer.tool().orElse(Verdict.UNJUDGED);
    if (tool == Verdict.UNJUDGED || answer.said() == Verdict.UNJUDGED) {
      return NOT_JUDGED;
    }
    boolean toolCalls = tool == Verdict.DEFECT;
    boolean personCalls = answer.said() == Verdict.DEFECT;
    if (toolCalls == personCalls) {
      return AGREED;
    }
    return toolCalls ? MISSED : OVER_CALLED;
  }
}
