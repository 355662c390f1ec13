package leadlight.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import leadlight.model.RowOutcome;
import leadlight.model.ScoredPhoto;
import leadlight.model.Verdict;
import leadlight.text.LengthUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

class PhotoPageTest {

  @AfterAll
  static void release() {
    ScoredRow.closeAll();
  }

  private static String html(ScoredPhoto scored, String language, LengthUnit unit) {
    byte[] page = new PhotoPage(ScoredRow.context(language, unit)).html(scored, ScoredRow.frame());
    return new String(page, StandardCharsets.UTF_8);
  }

  private static String english() {
    return html(ScoredRow.SCORED, "en", LengthUnit.MM);
  }

  @Test
  void samePhotoSameBytesBelowThreeMegabytes() {
    String page = english();
    assertThat(page).isEqualTo(english());
    assertThat(page.getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(3_000_000);
  }

  @Test
  void thePolicyAllowsNothingFromOutside() {
    assertThat(english())
        .contains("default-src &#39;none&#39;; img-src data:;")
        .doesNotContain("unsafe-inline", "<link", "@import", "http://", "https://");
  }

  @Test
  void aNameFromOutsideIsShownAndNeverObeyed() {
    assertThat(html(ScoredRow.named(ScoredRow.HOSTILE), "en", LengthUnit.MM))
        .contains("&lt;img src=x onerror=", "\u27e8202E\u27e9gpj.exe\u27e80007\u27e9")
        .doesNotContain("<img src=x", "\u202e", "\u0007", "<script>window.hacked");
  }

  @Test
  void lengthsFollowUnitAndLanguage() {
    assertThat(english()).contains("0.500 mm pitch");
    // 0.5 mm / 25.4 mm = 0.019685 in = 19.685 mil.
    assertThat(html(ScoredRow.SCORED, "en", LengthUnit.MIL)).contains("19.7 mil pitch");
    assertThat(html(ScoredRow.SCORED, "en", LengthUnit.INCH)).contains("0.0197 in pitch");
    assertThat(html(ScoredRow.SCORED, "de", LengthUnit.MM)).contains("Teilung 0,500 mm");
  }

  @Test
  void signalsAreSaidInPlainWords() {
    String page = english();
    ScoredRow.SCORED.joints().stream()
        .flatMap(joint -> joint.joint().evidence().stream())
        .flatMap(evidence -> evidence.reasons().stream())
        .forEach(
            reason -> assertThat(page).doesNotContain(reason.signal().replace('_', ' ') + " "));
  }

  @Test
  void aDoubtIsSaidInThePagesLanguage() {
    assertThat(html(ScoredRow.withAllVerdicts(), "de", LengthUnit.MM))
        .contains("möglicherweise offene Lötstelle (40 % wahrscheinlich): schräg fotografieren");
  }

  @Test
  void aPhotoWithoutARowSaysWhyAndShowsThePhoto() {
    ScoredPhoto found = ScoredRow.SCORED;
    ScoredPhoto none =
        new ScoredPhoto(
            found.photo(),
            found.settings(),
            new RowOutcome.NotFound("Too dark; add light.", List.of()),
            Optional.empty(),
            List.of(),
            Verdict.UNJUDGED,
            List.of(),
            found.notVisible(),
            found.cautions());
    assertThat(html(none, "en", LengthUnit.MM))
        .contains("No row was found in this photo", "Too dark; add light.", "id=\"whole-title\"")
        .doesNotContain("role=\"tab\"", "What to touch up");
  }
}
