package leadlight.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.FindingKind;
import leadlight.model.Opinions;
import leadlight.model.Question;
import leadlight.model.Verdict;
import leadlight.model.joint.Chances;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.model.picture.Region;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
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
        .contains(
            "möglicherweise offene Lötstelle (40 % wahrscheinlich): das Bein mit einem Holz-");
  }

  /** Pin 7 with these doubts. */
  private static ScoredPhoto doubted(Doubt... why) {
    List<GradedJoint> joints = new ArrayList<>(ScoredRow.SCORED.joints());
    ScoredRow.set(joints, 7, Verdict.UNJUDGED, List.of(), why);
    return ScoredRow.with(ScoredRow.SCORED.photo(), joints);
  }

  @Test
  void eachDoubtIsSaidInThePagesLanguage() {
    ScoredPhoto scored =
        doubted(
            new Doubt.UnlikeKnown(),
            new Doubt.Possible(
                FindingKind.BRIDGE, 8, 0.39, OptionalDouble.of(0.02), OptionalDouble.of(0.5)),
            new Doubt.LimitUndecided(FindingKind.SIDE_OVERHANG, 0.117, 0.039, 0.1, 0.33));
    assertThat(html(scored, "en", LengthUnit.MM))
        .contains(
            "unjudged\">unlike known joints: the second reader has seen nothing like it;",
            "unjudged\">possibly solder bridge to pin 8 (chance 39 %; measures 2 %, second reader"
                + " 50 %): measure between the two pins",
            "unjudged\">lead beside its land: 0.117 mm (u 0.039 mm) against a limit of 0.100 mm"
                + " cannot be decided, it is kept with 33 % probability; measure it");
    assertThat(html(scored, "de", LengthUnit.MM))
        .contains(
            "unjudged\">anders als bekannte Lötstellen: der Zweitleser hat nichts Ähnliches",
            "unjudged\">möglicherweise Lotbrücke zu Pin 8 (39 % wahrscheinlich; Maße 2 %,",
            "unjudged\">Bein neben der Lötfläche: 0,117 mm (u 0,039 mm) gegen einen Grenzwert");
  }

  /** Pin 7 by measures 2 % and by the reader 64 % without fillet, whatever the photo shows. */
  private static ScoredPhoto differing(boolean unlike) {
    List<GradedJoint> joints = new ArrayList<>(ScoredRow.SCORED.joints());
    GradedJoint old = joints.get(6);
    Joint joint =
        new Joint(
            old.joint().lead(),
            old.joint().measures(),
            List.of(),
            Optional.empty(),
            Optional.of(unwetted(0.025)),
            Optional.of(
                new Reading(
                    unwetted(unlike ? 0 : 0.645),
                    unlike ? 0.9 : 0,
                    unlike,
                    unlike ? Optional.empty() : Optional.of(new Region(-1, -0.5, 0, 0.5)))));
    joints.set(
        6, new GradedJoint(joint, Verdict.ACCEPTABLE, List.of(), List.of(), List.of(), List.of()));
    return ScoredRow.with(ScoredRow.SCORED.photo(), joints);
  }

  private static Chances unwetted(double chance) {
    return Chances.of(question -> 0).with(Question.UNWETTED, chance);
  }

  private static String pin7(String page) {
    int from = page.indexOf("id=\"pin-7\"");
    return page.substring(from, page.indexOf("id=\"pin-8\"", from));
  }

  @Test
  void bothOpinionsAreShownWithWhereTheReaderLookedAndThatTheyDiffer() {
    assertThat(pin7(html(differing(false), "en", LengthUnit.MM)))
        .contains("<th scope=\"row\">no fillet at the toe</th><td>2 %</td><td>64 %</td>")
        .contains("They differ.", "class=\"moved\"", "what moved the second reader most")
        .doesNotContain("agree", "bridge to pin");
    assertThat(pin7(html(differing(false), "de", LengthUnit.MM)))
        .contains("keine Kehle an der Spitze</th><td>2 %</td><td>64 %</td>", "Sie sind uneins.");
  }

  @Test
  void aJointUnlikeAnyOtherIsNotSaidToBeAgreedOn() {
    assertThat(pin7(html(differing(true), "en", LengthUnit.MM)))
        .contains("The second reader knows nothing like this joint")
        .doesNotContain("agree", "class=\"moved\"");
  }

  @Test
  void measuresAloneShowNoSecondOpinion() {
    String alone = html(ScoredRow.score(Opinions.MEASURES), "en", LengthUnit.MM);
    assertThat(english()).contains("Two opinions");
    assertThat(alone)
        .contains("What was found")
        .doesNotContain("Two opinions", "second reader", "<rect class=\"moved");
  }

  @Test
  void aPhotoWithoutARowSaysWhyAndShowsThePhoto() {
    ScoredPhoto found = ScoredRow.SCORED;
    ScoredPhoto none =
        new ScoredPhoto(
            found.photo(),
            found.settings(),
            new RowOutcome.NotFound(new NoteOfRow.BodySideUnknown(), List.of()),
            Optional.empty(),
            List.of(),
            Verdict.UNJUDGED,
            List.of(),
            List.of(),
            found.notVisible(),
            found.cautions());
    assertThat(html(none, "en", LengthUnit.MM))
        .contains(
            "No row was found in this photo",
            "a row shows, but not on which side of it",
            "id=\"whole-title\"")
        .doesNotContain("role=\"tab\"", "What to touch up");
  }
}
