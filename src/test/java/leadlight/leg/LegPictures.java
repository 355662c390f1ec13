package leadlight.leg;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import leadlight.leg.find.FoundLeg;
import leadlight.leg.find.LandPlace;
import leadlight.leg.find.LegFinder;
import leadlight.leg.find.LegTuning;
import leadlight.leg.read.LegPicture;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.trial.truth.LegsTruth;

/**
 * Cuts legs whose truth is known, for {@code models/legs/train.py}: {@code legs.bin} has a picture
 * a line of {@code legs.csv}. Of scenes each leg is cut {@code MOVED} times, at its true place and
 * a little beside it, as far as the search errs; with 0, and of others, once where the program
 * finds it.
 *
 * <p>{@code mvn -q test-compile exec:java -Dexec.classpathScope=test
 * -Dexec.mainClass=leadlight.leg.LegPictures -Dexec.args="FOLDER OUT MOVED"}
 */
public final class LegPictures {

  private static final double SHIFT_MM = 0.03;
  private static final double STRETCH = 0.02;

  private final PrintWriter table;
  private final OutputStream pictures;
  private final int moved;

  private LegPictures(PrintWriter table, OutputStream pictures, int moved) {
    this.table = table;
    this.pictures = pictures;
    this.moved = moved;
  }

  public static void main(String[] args) throws IOException {
    Path out = Path.of(args[1]);
    Files.createDirectories(out);
    try (PrintWriter table =
            new PrintWriter(
                Files.newBufferedWriter(out.resolve("legs.csv"), StandardCharsets.UTF_8));
        OutputStream pictures =
            new BufferedOutputStream(Files.newOutputStream(out.resolve("legs.bin")))) {
      table.println(
          "photo,way,variant,leg,side,lamp,condition,wetted_deg,land_covered,hole_open,class2,hidden,wet_sectors,covered_reach");
      LegPictures run = new LegPictures(table, pictures, Integer.parseInt(args[2]));
      for (LegTruth truth : LegTruth.of(Path.of(args[0]))) {
        run.cut(truth);
      }
    }
  }

  private void cut(LegTruth truth) throws IOException {
    Random random = new Random(truth.photo().getFileName().toString().hashCode());
    try (Photo photo = new PhotoReader().read(truth.photo())) {
      boolean known = truth.exact() && moved > 0;
      List<FoundLeg> found =
          known
              ? List.of()
              : new LegFinder(photo.frame(), LegTuning.builtIn(), truth.side())
                  .find(truth.byConnector());
      List<FoundLeg> exact = known ? truth.places() : List.of();
      for (LegsTruth.Leg leg : truth.legs()) {
        if (leg.cut()) {
          continue;
        }
        Optional<FoundLeg> at = truth.at(leg, found, it -> it.place().centre());
        if (at.isPresent()) {
          add(photo, truth, "found", 0, leg, at.get());
        }
        Optional<FoundLeg> place = truth.at(leg, exact, it -> it.place().centre());
        for (int variant = 0; place.isPresent() && variant < moved; variant++) {
          add(
              photo,
              truth,
              "truth",
              variant,
              leg,
              variant == 0 ? place.get() : beside(place.get(), random));
        }
      }
    }
  }

  private static FoundLeg beside(FoundLeg leg, Random random) {
    double px = leg.place().pxPerMm();
    LandPlace place =
        leg.place()
            .moved(random.nextGaussian() * SHIFT_MM * px, random.nextGaussian() * SHIFT_MM * px)
            .stretched(1 + random.nextGaussian() * STRETCH, 1 + random.nextGaussian() * STRETCH);
    return new FoundLeg(leg.leg(), leg.number(), place, leg.match());
  }

  private void add(
      Photo photo, LegTruth truth, String way, int variant, LegsTruth.Leg leg, FoundLeg at)
      throws IOException {
    pictures.write(LegPicture.of(photo.frame(), at));
    StringBuilder wet = new StringBuilder();
    StringBuilder reach = new StringBuilder();
    for (int i = 0; truth.exact() && i < 72; i++) {
      wet.append(truth.wet(leg, i));
      reach.append(i == 0 ? "" : " ").append(truth.reach(leg, i));
    }
    table.println(
        String.format(
            Locale.ROOT,
            "%s,%s,%d,%d,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s",
            truth.photo().getFileName(),
            way,
            variant,
            leg.number(),
            truth.side().id(),
            truth.json().path("lamp").asText(),
            leg.condition(),
            leg.wettedDeg(),
            leg.covered(),
            leg.open(),
            leg.class2(),
            truth.hidden(leg),
            wet,
            reach));
  }
}
