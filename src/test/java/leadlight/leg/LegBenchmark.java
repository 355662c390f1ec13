package leadlight.leg;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.leg.find.FoundLeg;
import leadlight.leg.find.LandPlace;
import leadlight.leg.find.LegFinder;
import leadlight.leg.find.LegRequest;
import leadlight.leg.find.LegTuning;
import leadlight.leg.measure.LegCut;
import leadlight.leg.measure.LegSectors;
import leadlight.leg.measure.PartingTuning;
import leadlight.leg.measure.RingCells;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.model.result.GradedLeg;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Counts what is said of anchor legs whose truth is known, and writes the signals that {@code
 * models/legs/fit.py} learns from: {@code mvn test -Dtest=LegBenchmark -Dlegs=FOLDER
 * [-Dlegs.signals=DIR]}. Figures are kept in {@code docs/legs.md}.
 */
@EnabledIfSystemProperty(named = "legs", matches = ".+")
class LegBenchmark {

  private static final List<String> WAYS = List.of("connector", "size");

  private final Map<String, Integer> counts = new TreeMap<>();

  @Test
  void verdictsAgainstTruth() {
    LegScorer scorer = new LegScorer(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2);
    for (LegTruth truth : LegTruth.of(Path.of(System.getProperty("legs")))) {
      try (Photo photo = new PhotoReader().read(truth.photo())) {
        List<GradedLeg> legs = scorer.score(photo.frame(), truth.byConnector());
        count(truth, legs);
      }
    }
    counts.forEach((what, count) -> System.out.println(what + ": " + count));
  }

  /** What is said of component sides that are told to be solder sides. */
  @Test
  void wrongSidesAgainstTruth() {
    LegScorer scorer = new LegScorer(AcceptanceSet.load(AcceptanceSet.DEFAULT_ID), 2);
    for (LegTruth truth : LegTruth.of(Path.of(System.getProperty("legs")))) {
      if (truth.side() == BoardSide.SOLDER) {
        continue;
      }
      LegTruth told = new LegTruth(truth.photo(), BoardSide.SOLDER, truth.part(), truth.json());
      try (Photo photo = new PhotoReader().read(truth.photo())) {
        for (LegRequest request : List.of(told.byConnector(), told.bySize(0))) {
          List<GradedLeg> legs = scorer.score(photo.frame(), request);
          String start =
              "truly "
                  + truth.side().id()
                  + " side, told solder, "
                  + (request.pattern() ? "connector" : "sizes")
                  + ": ";
          add(start + (legs.isEmpty() ? "pictures without legs" : "pictures with legs"));
          legs.forEach(leg -> add(start + "legs said " + leg.verdict().id()));
          legs.stream()
              .flatMap(leg -> leg.doubts().stream())
              .forEach(doubt -> add(start + "doubt " + doubt.code()));
        }
      }
    }
    counts.forEach((what, count) -> System.out.println(what + ": " + count));
  }

  private void add(String what) {
    counts.merge(what, 1, Integer::sum);
  }

  private void count(LegTruth truth, List<GradedLeg> legs) {
    String side = truth.side().id() + " side, ";
    int right = 0;
    for (LegTruth.TrueLeg leg : truth.legs()) {
      Optional<GradedLeg> found = truth.at(leg, legs, GradedLeg::centre);
      add(side + "legs " + (found.isPresent() ? "found" : "not found"));
      if (found.isEmpty()) {
        continue;
      }
      right++;
      GradedLeg said = found.get();
      if (said.number().isPresent()) {
        add(side + "numbers " + (said.number().getAsInt() == leg.number() ? "right" : "wrong"));
      } else {
        add(side + "numbers not told");
      }
      if (leg.cut()) {
        continue;
      }
      add(side + "truly " + leg.verdict() + ", said " + said.verdict().id());
      double off = Math.abs(said.wetted().value() - leg.wettedDeg());
      add(side + "wetted degrees " + (off <= 20 ? "within" : "beyond") + " 20");
      add(side + "wetted degrees " + (off <= 2 * said.wetted().u() ? "within" : "beyond") + " 2 u");
      if (leg.verdict().equals("defect") && said.verdict() == Verdict.ACCEPTABLE) {
        System.out.println("passed: " + truth.photo().getFileName() + " " + leg);
      }
    }
    for (int i = right; i < legs.size(); i++) {
      add(side + "legs where there are none");
    }
  }

  @Test
  @EnabledIfSystemProperty(named = "legs.signals", matches = ".+")
  void signals() throws IOException {
    Path out = Path.of(System.getProperty("legs.signals"));
    Files.createDirectories(out);
    try (PrintWriter sectors = writer(out.resolve("sectors.csv"));
        PrintWriter cells = writer(out.resolve("cells.csv"))) {
      boolean named = false;
      for (LegTruth truth : LegTruth.of(Path.of(System.getProperty("legs")))) {
        try (Photo photo = new PhotoReader().read(truth.photo())) {
          for (String way : truth.exact() ? List.of("truth") : WAYS) {
            LegRequest request = way.equals("size") ? truth.bySize(0) : truth.byConnector();
            List<FoundLeg> legs =
                truth.exact()
                    ? truth.places()
                    : new LegFinder(photo.frame(), LegTuning.builtIn(), truth.side()).find(request);
            for (LegTruth.TrueLeg leg : truth.legs()) {
              Optional<FoundLeg> found = truth.at(leg, legs, it -> it.place().centre());
              if (found.isPresent() && !leg.cut()) {
                named = write(photo, truth, way, leg, found.get(), sectors, cells, named);
              }
            }
          }
        }
      }
    }
  }

  private static boolean write(
      Photo photo,
      LegTruth truth,
      String way,
      LegTruth.TrueLeg leg,
      FoundLeg found,
      PrintWriter sectors,
      PrintWriter cells,
      boolean named) {
    Random random = new Random(7);
    boolean header = named;
    for (int variant = 0; variant < 2; variant++) {
      LandPlace place = found.place();
      if (variant > 0) {
        double px = place.pxPerMm();
        place =
            place
                .moved(
                    (random.nextDouble() - 0.5) * 0.08 * px,
                    (random.nextDouble() - 0.5) * 0.08 * px)
                .stretched(
                    1 + (random.nextDouble() - 0.5) * 0.06, 1 + (random.nextDouble() - 0.5) * 0.06);
      }
      FoundLeg at = new FoundLeg(found.leg(), found.number(), place, found.match());
      LegSectors signals =
          new LegSectors(new LegCut(photo.frame(), at), at.leg(), PartingTuning.builtIn());
      String start =
          truth.photo().getFileName() + "," + way + "," + variant + "," + leg.number() + ",";
      String known =
          String.join(
              ",",
              truth.side().id(),
              leg.condition(),
              "" + leg.wettedDeg(),
              "" + leg.covered(),
              "" + leg.open(),
              leg.verdict());
      List<Map<String, Double>> own = signals.signals();
      List<Map<String, Double>> ring = new RingCells(signals).signals(own);
      if (!header) {
        sectors.println(
            "photo,way,variant,leg,side,condition,wetted_deg,land_covered,hole_open,class2,sector,wet,"
                + String.join(",", own.get(0).keySet()));
        cells.println(
            "photo,way,variant,leg,land_covered,sector,reach,"
                + String.join(",", ring.get(0).keySet()));
        header = true;
      }
      for (int i = 0; i < own.size(); i++) {
        sectors.println(
            start + known + "," + i + "," + truth.wet(leg, i) + "," + values(own.get(i)));
      }
      int perSector = ring.size() / own.size();
      for (int i = 0; i < ring.size(); i++) {
        int sector = i / perSector;
        cells.println(
            start
                + leg.covered()
                + ","
                + sector
                + ","
                + truth.reach(leg, sector)
                + ","
                + values(ring.get(i)));
      }
    }
    return header;
  }

  private static String values(Map<String, Double> signals) {
    return signals.values().stream()
        .map(value -> String.format(Locale.ROOT, "%.4f", value))
        .collect(Collectors.joining(","));
  }

  private static PrintWriter writer(Path file) throws IOException {
    return new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8));
  }
}
