package leadlight.record;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;

/**
 * What a trainee said of one joint, with what is true of it.
 *
 * @param specimen number of the specimen in its set, from 1
 * @param pin place in the row, from 1
 * @param item the joint, as "board.jpg pin 3"
 * @param said acceptable, defect, or unjudged: the photo does not decide it
 * @param finding what the trainee saw, if a defect of a kind that has a name
 * @param truth "acceptable", "defect" or "limit" (close to a limit, never counted); empty for own
 *     work, of which nobody knows it
 * @param truthFindings what is truly wrong
 * @param tool the tool's verdict; empty if it found no row
 * @param toolFindings what the tool saw
 * @param tookMs time from seeing the joint to the answer
 * @param at when
 */
public record DrillAnswer(
    int specimen,
    int pin,
    String item,
    Verdict said,
    Optional<FindingKind> finding,
    Optional<String> truth,
    List<FindingKind> truthFindings,
    Optional<Verdict> tool,
    List<FindingKind> toolFindings,
    long tookMs,
    ZonedDateTime at) {

  /** Copies the lists; refuses a process indicator, and a finding at what is called good. */
  public DrillAnswer {
    truthFindings = List.copyOf(truthFindings);
    toolFindings = List.copyOf(toolFindings);
    if (said == Verdict.PROCESS_INDICATOR) {
      throw new IllegalArgumentException("a trainee says acceptable, defect or unjudged");
    }
    if (finding.isPresent() && said != Verdict.DEFECT) {
      throw new IllegalArgumentException("only a defect has a finding");
    }
  }
}
