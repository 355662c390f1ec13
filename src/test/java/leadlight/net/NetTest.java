package leadlight.net;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.InOrder;
import leadlight.pipeline.PhotoScorer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The whole way from picture to verdict, on pictures whose truth is known: what is said may get
 * better, but not worse. The bands stand in bands.csv; what was counted lies in target/net.csv.
 */
class NetTest {

  private static final int PRODUCT_CLASS = 2;
  private static final int THREADS = 2;
  private static final AcceptanceSet LIMITS = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);

  private static final Map<String, Map<String, Double>> FIGURES = new TreeMap<>();

  @BeforeAll
  static void scoreEveryPictureOnce() throws IOException {
    List<NetPicture> pictures = NetPicture.all();
    List<ScoredPhoto> scored = new ArrayList<>();
    InOrder.each(pictures, THREADS, NetTest::score, scored::add);
    Map<String, List<Integer>> kinds = new LinkedHashMap<>();
    for (int i = 0; i < pictures.size(); i++) {
      kinds.computeIfAbsent(pictures.get(i).kind(), kind -> new ArrayList<>()).add(i);
    }
    kinds.forEach(
        (kind, which) ->
            FIGURES.put(
                kind,
                Catch.of(
                        which.stream().map(pictures::get).toList(),
                        which.stream().map(scored::get).toList())
                    .figures()));
    keep();
  }

  private static ScoredPhoto score(NetPicture picture) {
    Settings settings =
        new Settings(picture.told(), PRODUCT_CLASS, LIMITS.id(), Optional.empty(), Opinions.BOTH);
    try (Photo photo = new PhotoReader().read(picture.file())) {
      return new PhotoScorer(settings, LIMITS).score(photo);
    }
  }

  private static void keep() throws IOException {
    StringBuilder table = new StringBuilder("kind,figure,value\n");
    FIGURES.forEach(
        (kind, figures) ->
            figures.forEach(
                (figure, value) ->
                    table.append(String.format(Locale.ROOT, "%s,%s,%.2f%n", kind, figure, value))));
    Files.writeString(Path.of("target", "net.csv"), table);
  }

  @ParameterizedTest
  @MethodSource("bands")
  void staysWithinItsBand(Band band) {
    Double figure = FIGURES.get(band.kind()).get(band.figure());
    assertThat(figure).as(band + ": " + band.why()).isBetween(band.least(), band.most());
  }

  static List<Band> bands() {
    return Band.all();
  }

  /** A kind without a band would be scored for nothing. */
  @Test
  void ofEveryKindItIsSaidHowManyBadJointsMayBeCalledGood() {
    assertThat(
            Band.all().stream()
                .filter(band -> band.figure().equals("good-said-of-bad"))
                .map(Band::kind))
        .containsExactlyInAnyOrderElementsOf(new TreeSet<>(FIGURES.keySet()));
  }
}
