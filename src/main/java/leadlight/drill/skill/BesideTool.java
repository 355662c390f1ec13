package leadlight.drill.skill;

import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;

/** A trainee's verdict on their own joint beside the tool's; neither is the truth. */
public enum BesideTool {
  /** Both call it sound, or both a defect. */
  AGREED("Agreed", "You and Leadlight agree"),
  /** The tool sees a defect where the trainee saw none. */
  MISSED("Perhaps missed", "Leadlight sees a defect here"),
  /** The trainee sees a defect where the tool sees none. */
  OVER_CALLED("Perhaps over-called", "Leadlight sees no defect here"),
  /** One of them, or both, did not judge it. */
  NOT_JUDGED("Not judged", "Not judged from the photo");

  private final String name;
  private final String words;

  BesideTool(String name, String words) {
    this.name = name;
    this.words = words;
  }

  /** For a table. */
  public String title() {
    return name;
  }

  /** For one joint. */
  public String words() {
    return words;
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
