package leadlight.page.photo;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.result.LegSet;
import leadlight.page.look.Assets;
import leadlight.page.words.LegNames;
import leadlight.page.words.SafeText;
import leadlight.report.picture.LegPhotos;
import leadlight.report.picture.LegsPicture;
import leadlight.report.words.LegSentences;
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
              SafeText.of(LegSentences.of(leg, words, sentences))));
    }
    return new LegsView(photos, each, LegNames.todo(legs.set(), words));
  }
}
