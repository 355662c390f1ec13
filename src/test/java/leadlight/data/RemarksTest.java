package leadlight.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import leadlight.model.EveryRemark;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.remark.Remark;
import org.junit.jupiter.api.Test;

class RemarksTest {

  @Test
  void everyDoubtAndNoteComesBackAsItWas() {
    List<Remark> samples = EveryRemark.samples();
    assertThat(EveryRemark.kinds()).hasSizeGreaterThan(40);
    for (Remark remark : samples) {
      Class<? extends Remark> type = remark instanceof Doubt ? Doubt.class : Note.class;
      assertThat(JsonText.read(JsonText.of(remark), type)).isEqualTo(remark);
    }
  }

  @Test
  void codesTellKindsApart() {
    assertThat(
            EveryRemark.kinds().stream().filter(Doubt.class::isAssignableFrom).map(Remark::codeOf))
        .doesNotHaveDuplicates();
    assertThat(
            EveryRemark.kinds().stream().filter(Note.class::isAssignableFrom).map(Remark::codeOf))
        .doesNotHaveDuplicates();
  }

  @Test
  void codeAndArgumentsStandInTheText() {
    assertThat(JsonText.of(new NoteOfRow.OtherCount(19, 20)))
        .isEqualTo("{\"code\":\"other-count\",\"args\":{\"leads\":19,\"shown\":20}}");
  }

  @Test
  void anUnknownCodeAndALackingArgumentAreRefused() {
    assertThatThrownBy(() -> JsonText.read("{\"code\":\"sunspots\",\"args\":{}}", Doubt.class))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> JsonText.read("{\"code\":\"glare\",\"args\":{}}", Doubt.class))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void chancesGoByTheQuestionsIdsAndKnowWhatWasNotAsked() {
    Chances chances = new Chances(Map.of(Question.BALL, 0.25, Question.MISSING, 0.5));
    assertThat(JsonText.of(chances)).isEqualTo("{\"missing\":0.5,\"ball\":0.25}");
    assertThat(JsonText.read(JsonText.of(chances), Chances.class)).isEqualTo(chances);
  }
}
