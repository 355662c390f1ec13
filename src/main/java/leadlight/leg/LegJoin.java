package leadlight.leg;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.DoubtOfLeg;
import leadlight.model.result.GradedLeg;
import leadlight.model.result.LegSet;

/**
 * Joins what photos of both sides say of a connector's legs. A fault seen from either side stands;
 * a leg is sound only if the solder side says so, for nothing is vouched for from the component
 * side; a leg that no photo shows is not judged.
 */
public final class LegJoin {

  private LegJoin() {}

  /**
   * The legs of the part.
   *
   * @param photos photos of legs; those of one side must each have numbers, or none
   * @param legs how many the part has
   */
  public static LegSet of(List<LegSet.Shown> photos, int legs) {
    boolean numbered =
        photos.stream().flatMap(it -> it.legs().stream()).allMatch(it -> it.number().isPresent());
    List<LegSet.Joined> joined = new ArrayList<>();
    if (numbered) {
      for (int number = 1; number <= legs; number++) {
        joined.add(joined(OptionalInt.of(number), seen(photos, number)));
      }
    } else {
      unnamed(photos, legs, joined);
    }
    return new LegSet(photos, joined);
  }

  private static List<LegSet.Seen> seen(List<LegSet.Shown> photos, int number) {
    List<LegSet.Seen> seen = new ArrayList<>();
    for (LegSet.Shown photo : photos) {
      for (GradedLeg leg : photo.legs()) {
        if (leg.number().orElse(0) == number) {
          seen.add(new LegSet.Seen(photo.photo().file(), photo.side(), leg));
        }
      }
    }
    return seen;
  }

  /**
   * Which leg is which is not told: what each photo of one side shows stands by itself. Two photos
   * may show the same legs, so that no more are surely seen than one photo shows; the others are
   * not judged.
   */
  private static void unnamed(List<LegSet.Shown> photos, int legs, List<LegSet.Joined> joined) {
    List<LegSet.Seen> solder = of(photos, BoardSide.SOLDER);
    List<LegSet.Seen> component = of(photos, BoardSide.COMPONENT);
    for (LegSet.Seen seen : solder.isEmpty() ? component : solder) {
      joined.add(joined(OptionalInt.empty(), List.of(seen)));
    }
    if (!solder.isEmpty()) {
      component.stream()
          .filter(it -> it.leg().verdict() == Verdict.DEFECT)
          .forEach(it -> joined.add(joined(OptionalInt.empty(), List.of(it))));
    }
    BoardSide side = solder.isEmpty() ? BoardSide.COMPONENT : BoardSide.SOLDER;
    int surelySeen =
        photos.stream()
            .filter(it -> it.side() == side)
            .mapToInt(it -> it.legs().size())
            .max()
            .orElse(0);
    for (int unseen = surelySeen; unseen < legs; unseen++) {
      joined.add(joined(OptionalInt.empty(), List.of()));
    }
  }

  private static List<LegSet.Seen> of(List<LegSet.Shown> photos, BoardSide side) {
    return photos.stream()
        .filter(it -> it.side() == side)
        .flatMap(it -> it.legs().stream().map(leg -> new LegSet.Seen(it.photo().file(), side, leg)))
        .toList();
  }

  /** Another photo settles what one did not show, not what one saw. */
  private static boolean speaksAgainst(Doubt doubt) {
    return doubt instanceof DoubtOfLeg.WettingUndecided
        || doubt instanceof DoubtOfLeg.CoverUndecided
        || doubt instanceof DoubtOfLeg.ShellInView;
  }

  private static LegSet.Joined joined(OptionalInt number, List<LegSet.Seen> seen) {
    if (seen.stream().anyMatch(it -> it.leg().verdict() == Verdict.DEFECT)) {
      return new LegSet.Joined(number, Verdict.DEFECT, seen, List.of());
    }
    List<LegSet.Seen> solder = seen.stream().filter(it -> it.side() == BoardSide.SOLDER).toList();
    if (solder.isEmpty()) {
      return new LegSet.Joined(
          number, Verdict.UNJUDGED, seen, List.of(new DoubtOfLeg.LegNotShown()));
    }
    List<Doubt> doubts =
        solder.stream()
            .map(LegSet.Seen::leg)
            .flatMap(leg -> leg.doubts().stream())
            .distinct()
            .toList();
    boolean judged =
        solder.stream().anyMatch(it -> it.leg().verdict() != Verdict.UNJUDGED)
            && doubts.stream().noneMatch(LegJoin::speaksAgainst);
    return judged
        ? new LegSet.Joined(number, Verdict.ACCEPTABLE, seen, List.of())
        : new LegSet.Joined(number, Verdict.UNJUDGED, seen, doubts);
  }
}
