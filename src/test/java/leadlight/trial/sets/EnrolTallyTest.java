package leadlight.trial.sets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leadlight.model.Verdict;
import org.junit.jupiter.api.Test;

/** What of enrolled benches is counted, and as what. */
class EnrolTallyTest {

  private final EnrolTally tally = new EnrolTally();

  private void add(int shown, String photo, int pin, String truth, Verdict general, Verdict bench) {
    tally.add(
        new EnrolTally.Judged(
            "ring",
            shown,
            photo,
            pin,
            truth,
            general,
            bench,
            "as-enrolled",
            "",
            "SOLDERED",
            0.25,
            -1.5,
            0.08,
            ""));
  }

  private List<String> row(String name) {
    return tally.lines().stream()
        .filter(it -> it.startsWith("| " + name))
        .map(it -> List.of(it.split("\\|")))
        .findFirst()
        .orElseThrow()
        .stream()
        .map(String::strip)
        .toList();
  }

  @Test
  void aBadJointThatPassesIsWrongGoodAlsoAsAProcessIndicator() {
    add(2, "a.jpg", 1, "open", Verdict.UNJUDGED, Verdict.ACCEPTABLE);
    add(2, "a.jpg", 2, "open", Verdict.UNJUDGED, Verdict.PROCESS_INDICATOR);
    add(2, "a.jpg", 3, "starved", Verdict.DEFECT, Verdict.DEFECT);
    add(2, "b.jpg", 1, "open", Verdict.UNJUDGED, Verdict.UNJUDGED);
    List<String> bench = row("2, enrolled");
    assertThat(bench.get(4)).as("wrong good").startsWith("2/4");
    assertThat(bench.get(5)).as("of photos").startsWith("1/2");
    assertThat(bench.get(6)).as("called").startsWith("1/4");
    assertThat(bench.get(9)).as("unjudged").startsWith("1/4");
    assertThat(row("2, general rules").get(4)).startsWith("0/4");
  }

  @Test
  void aSoundJointThatIsCalledIsAFalseCallAndNoMiss() {
    add(4, "a.jpg", 1, "sound", Verdict.ACCEPTABLE, Verdict.DEFECT);
    add(4, "a.jpg", 2, "sound", Verdict.DEFECT, Verdict.ACCEPTABLE);
    add(4, "a.jpg", 3, "open", Verdict.DEFECT, Verdict.DEFECT);
    List<String> bench = row("4, enrolled");
    assertThat(bench.get(4)).startsWith("0/1");
    assertThat(bench.get(7)).as("false calls").startsWith("1/2");
    assertThat(bench.get(8)).as("of photos").startsWith("1/1");
    assertThat(row("4, general rules").get(7)).startsWith("1/2");
  }

  @Test
  void numbersOfPhotosShownAreCountedApartAndWhatWasLostIsSaid() {
    add(1, "a.jpg", 1, "sound", Verdict.ACCEPTABLE, Verdict.ACCEPTABLE);
    add(2, "a.jpg", 1, "sound", Verdict.ACCEPTABLE, Verdict.DEFECT);
    tally.lost("c.jpg");
    tally.lost("c.jpg");
    tally.refused("b.jpg shows the same as a.jpg");
    assertThat(row("1, enrolled").get(7)).startsWith("0/1");
    assertThat(row("2, enrolled").get(7)).startsWith("1/1");
    assertThat(tally.lines())
        .contains("rows not found or wrong: 1", "refused: b.jpg shows the same as a.jpg");
  }

  @Test
  void theTableOfJointsHasALineEach() {
    add(2, "a.jpg", 7, "open", Verdict.UNJUDGED, Verdict.DEFECT);
    assertThat(tally.csv())
        .element(1)
        .isEqualTo(
            "ring,2,a.jpg,7,open,unjudged,defect,as-enrolled,,SOLDERED,0.25000,-1.5000,0.0800,");
    assertThat(tally.csv().get(0).split(",")).hasSameSizeAs(tally.csv().get(1).split(",", -1));
  }
}
