package leadlight.report.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import leadlight.model.joint.GradedJoint;
import leadlight.report.json.Scenes;
import leadlight.report.paint.Sheet;
import leadlight.report.words.PictureWords;
import leadlight.text.Messages;
import org.junit.jupiter.api.Test;

class CalloutsTest {

  private static final String[] WORDS = {"open", "insufficient", "side overhang, open", "void"};

  @Test
  void labels_never_collide_and_no_leader_crosses_a_label() {
    Random random = new Random(7);
    for (int round = 0; round < 200; round++) {
      List<Callouts.Label> labels = new ArrayList<>();
      for (int pin = 0; pin < 24; pin++) {
        if (random.nextInt(3) > 0) {
          double x = 50 * pin;
          labels.add(new Callouts.Label(x, x, 0, WORDS[random.nextInt(WORDS.length)], false));
        }
      }
      assertFree(new Callouts(labels));
    }
  }

  private static void assertFree(Callouts callouts) {
    List<Callouts.Label> labels = callouts.labels();
    for (int i = 0; i < labels.size(); i++) {
      double end = labels.get(i).leaderPx() + Callouts.STYLE.width(labels.get(i).text());
      for (int j = i + 1; j < labels.size() && labels.get(j).leaderPx() < end; j++) {
        assertThat(callouts.level(i))
            .as("a label lies deeper than every leader that comes down in front of it")
            .isGreaterThan(callouts.level(j));
      }
    }
  }

  @Test
  void a_few_findings_stay_level_and_a_crowd_is_slanted() {
    assertThat(row("open", 3).level()).isTrue();
    assertThat(row("insufficient, side overhang", 12).level()).isFalse();
  }

  private static Callouts row(String text, int count) {
    return new Callouts(
        IntStream.range(0, count)
            .mapToObj(i -> new Callouts.Label(46.0 * i, 46.0 * i, 0, text, false))
            .toList());
  }

  @Test
  void no_label_runs_over_the_sheet_s_edge() {
    double last = Sheet.CONTENT_PX - 180;
    Callouts callouts =
        new Callouts(
            List.of(
                new Callouts.Label(last - 60, last - 60, 0, "open joint", false),
                new Callouts.Label(
                    last, last, 0, "lead beside its land, lead turned on its land", false)));
    assertThat(callouts.lines(1)).hasSizeGreaterThan(1);
    assertThat(callouts.lines(1))
        .allMatch(
            line ->
                last + Callouts.BESIDE_LEADER_PX + Callouts.STYLE.width(line) <= Sheet.CONTENT_PX);
    assertThat(callouts.level(0))
        .as("below all lines of the label whose leader it crosses")
        .isEqualTo(callouts.lines(1).size());
    assertThat(last + Math.cos(0.87) * Callouts.STYLE.width(callouts.cut(1, 0.87)))
        .isLessThanOrEqualTo(Sheet.CONTENT_PX);
  }

  @Test
  void bridged_neighbours_share_one_label_and_so_do_runs_of_one_finding() {
    assertThat(words("en", "dev-902", 0, 20))
        .containsExactly(
            "open joint",
            "too little solder",
            "solder bridge",
            "too little solder",
            "open joint",
            "too little solder",
            "open joint",
            "too much solder",
            "open joint",
            "not judged",
            "open joint");
  }

  @Test
  void a_bridge_over_the_edge_of_a_strip_is_named_at_the_pin() {
    assertThat(words("en", "dev-902", 0, 3))
        .containsExactly("open joint", "too little solder", "solder bridge 3-4");
  }

  @Test
  void labels_speak_the_language_of_the_pages() {
    assertThat(words("de", "dev-902", 0, 3))
        .containsExactly("offene Lötstelle", "zu wenig Lot", "Lotbrücke 3-4");
  }

  private static List<String> words(String language, String id, int from, int to) {
    List<GradedJoint> joints = Scenes.scored(id).joints();
    List<Integer> strip = IntStream.range(from, to).boxed().toList();
    return Callouts.of(
            joints, strip, index -> 60.0 * index, new PictureWords(Messages.of(language)))
        .labels()
        .stream()
        .map(Callouts.Label::text)
        .toList();
  }
}
