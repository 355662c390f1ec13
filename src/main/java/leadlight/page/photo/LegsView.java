package leadlight.page.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.model.result.GradedLeg;
import leadlight.model.result.LegSet;
import leadlight.page.look.Assets;
import leadlight.page.words.LegNames;
import leadlight.page.words.SafeText;
import leadlight.report.picture.LegPhotos;
import leadlight.report.picture.LegsPicture;
import leadlight.text.Messages;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;

/**
 * The anchor legs of a connector, ready to be put in.
 *
 * @param photos the photos with their marks
 * @param legs one line a leg
 * @param todo what to do about faulty legs; empty if there are none
 */
public record LegsView(List<Photo> photos, List<Leg> legs, String todo) {

  private static final int MOST_PX = 1100;
  private static final int QUALITY = 82;

  /** A photo; its words say which side it shows. */
  public record Photo(String uri, String words) {}

  /** A leg: its verdict's id, its name, what is said. */
  public record Leg(String verdict, String name, String text) {}

  static LegsView of(LegPhotos legs, Messages words, Sentences sentences) {
    List<Photo> photos = new ArrayList<>();
    for (int i = 0; i < legs.pictures().size(); i++) {
      LegSet.Shown shown = legs.set().photos().get(i);
      byte[] jpeg = LegsPicture.jpeg(legs.pictures().get(i), shown.legs(), MOST_PX, QUALITY);
      photos.add(
          new Photo(
              Assets.dataUri("image/jpeg", jpeg),
              words.get(
                  "legs.photo." + shown.side().id(),
                  SafeText.of(shown.photo().file()),
                  shown.legs().size())));
    }
    List<Leg> each = new ArrayList<>();
    for (LegSet.Joined leg : legs.set().legs()) {
      each.add(
          new Leg(
              leg.verdict().id(),
              LegNames.of(leg, words) + ": " + VerdictWords.of(leg.verdict(), words),
              SafeText.of(text(leg, words, sentences))));
    }
    return new LegsView(photos, each, LegNames.todo(legs.set(), words));
  }

  private static String text(LegSet.Joined leg, Messages words, Sentences sentences) {
    String seen =
        leg.seen().stream()
            .map(it -> words.get("legs.seen." + it.side().id(), seen(it, words)))
            .collect(Collectors.joining("; "));
    String why = sentences.joined(leg.doubts());
    return seen.isEmpty() ? why : why.isEmpty() ? seen : seen + "; " + why;
  }

  private static String seen(LegSet.Seen from, Messages words) {
    GradedLeg leg = from.leg();
    if (from.side() == BoardSide.COMPONENT && leg.verdict() == Verdict.UNJUDGED) {
      return words.get("legs.seen.unread");
    }
    String kinds =
        leg.findings().stream()
            .map(kind -> words.get("kind." + kind.id()))
            .collect(Collectors.joining(", "));
    String what = kinds.isEmpty() ? VerdictWords.of(leg.verdict(), words) : kinds;
    return words.get(
        "legs.measured",
        what,
        words.number(leg.wetted().value(), 0),
        words.number(leg.wetted().u(), 0),
        words.number(100 * leg.covered().value(), 0));
  }
}
