package leadlight.rowcheck;

import static org.assertj.core.api.Assertions.assertThat;

import leadlight.model.Opinions;
import leadlight.model.row.RowOutcome;
import leadlight.trial.outcome.RowResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scenes whose rows are hard to tell: what the reader sees of them decides. */
class RowCheckTest {

  @Test
  void aRowThatShowsNoJointsIsLookedForHalfAPitchAside() {
    RowScene bareLaminateMoreLikeLeads = RowScene.named("strips");
    assertThat(bareLaminateMoreLikeLeads.row(Opinions.BOTH)).isEqualTo(RowResult.RIGHT);
  }

  @Test
  void aRowWhoseEndsDoNotShowIsTakenIfItsJointsEndThere() {
    RowScene bentEnd = RowScene.named("bent-end");
    assertThat(bentEnd.row(Opinions.MEASURES)).isNotEqualTo(RowResult.WRONG);
    assertThat(bentEnd.row(Opinions.BOTH)).isEqualTo(RowResult.RIGHT);
  }

  /**
   * The bracket is printed on the board about the row, so near its end that it looks like a lead.
   */
  @Test
  void aRowBesidePrintThatLooksLikeALeadIsNotCountedByGuess() {
    assertThat(RowScene.named("bracket").row(Opinions.BOTH)).isNotEqualTo(RowResult.WRONG);
  }

  @ParameterizedTest
  @CsvSource({"bent-end,1", "bracket,-1"})
  void aRowOfAnotherNumberOfLeadsIsStillRefused(String scene, int more) {
    assertThat(RowScene.named(scene).toldMore(more)).isInstanceOf(RowOutcome.NotFound.class);
  }

  @Test
  void shadowsThatWanderAlongTheLeadsDoNotMoveTheRow() {
    assertThat(RowScene.named("leaning").row(Opinions.MEASURES)).isEqualTo(RowResult.RIGHT);
  }

  @Test
  void anUnevenRowWhoseBodyLiesTheOtherWayIsFoundAndCountedRight() {
    assertThat(RowScene.named("uneven").row(Opinions.BOTH)).isEqualTo(RowResult.RIGHT);
  }
}
