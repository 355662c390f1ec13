package leadlight.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import leadlight.model.GradedLeg;
import leadlight.model.LegSet;
import leadlight.report.LegPhotos;
import leadlight.report.LegsPicture;
import leadlight.text.Messages;
import leadlight.text.Sentences;

/**
 * The anchor legs of a connector, ready to be put in.
 *
 * @param photos the photos with their marks
 * @param legs one line a leg
 */
record LegsView(List<Photo> photos, List<Leg> legs) {

  private static final int MOST_PX = 1100;
  private static final int QUALITY = 82;

  /** A photo; its words say which side it shows. */
  record Photo(String uri, String words) {}

  /** A leg: its verdict's id, its name, what is said. */
  record Leg(String verdict, String name, String text) {}

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
      String name =
          leg.number().isPresent()
              ? words.get("legs.name", leg.number().getAsInt())
              : words.get("legs.unnamed");
      each.add(
          new Leg(
              leg.verdict().id(),
              name + ": " + words.get("verdict." + leg.verdict().id()),
              SafeText.of(text(leg, words, sentences))));
    }
    return new LegsView(photos, each);
  }

  private static String text(LegSet.Joined leg, Messages words, Sentences sentences) {
    String seen =
        leg.seen().stream()
            .map(it -> words.get("legs.seen." + it.side().id(), seen(it.leg(), words)))
            .collect(Collectors.joining("; "));
    String why = sentences.joined(leg.doubts());
    return seen.isEmpty() ? why : why.isEmpty() ? seen : seen + "; " + why;
  }

  private static String seen(GradedLeg leg, Messages words) {
    String kinds =
        leg.findings().stream()
            .map(kind -> words.get("kind." + kind.id()))
            .collect(Collectors.joining(", "));
    String what = kinds.isEmpty() ? words.get("verdict." + leg.verdict().id()) : kinds;
    return words.get(
        "legs.measured",
        what,
        words.number(leg.wetted().value(), 0),
        words.number(leg.wetted().u(), 0),
        words.number(100 * leg.covered().value(), 0));
  }
}
