package leadlight.summary.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.record.said.LegsSeen;
import leadlight.record.said.LifeEvent;

/**
 * A connector's anchor legs as they stand after all that was noted of one side. A leg with a number
 * is as it was seen last. A leg without one is taken for another than those before, unless a photo
 * shows as many legs as were known: a fault is not forgotten because a photo shows other legs, or
 * none. Of photos of the same work none is the later word: a fault or a doubt that one shows
 * stands. A photo that is judged anew stands as it was judged last, in the place that it had.
 */
public final class LegsStanding {

  private final Map<Integer, Verdict> numbered = new TreeMap<>();
  private final List<Verdict> others = new ArrayList<>();
  private boolean lastShowsNone;
  private Optional<LegsSeen> last = Optional.empty();

  private LegsStanding() {}

  /**
   * By connector and side. From the component side nothing is ever vouched for, so that its legs
   * count as not judged only where no photo shows the solder side.
   */
  public static List<LegsSeen> of(List<LifeEvent> events) {
    Map<String, Map<String, LegsStanding>> byPort = new TreeMap<>();
    lastJudged(events)
        .forEach(
            seen ->
                byPort
                    .computeIfAbsent(seen.port().orElse(""), port -> new TreeMap<>())
                    .computeIfAbsent(seen.side(), side -> new LegsStanding())
                    .add(seen));
    List<LegsSeen> standing = new ArrayList<>();
    byPort
        .values()
        .forEach(
            sides ->
                sides.forEach(
                    (side, legs) -> {
                      boolean vouched =
                          !side.equals(BoardSide.SOLDER.id())
                              && sides.containsKey(BoardSide.SOLDER.id());
                      LegsSeen seen = legs.seen();
                      if (!vouched || !seen.numbers(Verdict.DEFECT).isEmpty()) {
                        standing.add(seen);
                      }
                    }));
    return standing;
  }

  private static List<LegsSeen> lastJudged(List<LifeEvent> events) {
    List<LegsSeen> all = new ArrayList<>();
    for (LifeEvent event : events) {
      if (event.kind() == LifeEvent.Kind.LEGS) {
        LegsSeen seen = LegsSeen.of(event);
        int former = 0;
        while (former < all.size() && !all.get(former).isJudgedAnewBy(seen)) {
          former++;
        }
        if (former < all.size()) {
          all.set(former, seen);
        } else {
          all.add(seen);
        }
      }
    }
    return all;
  }

  private void add(LegsSeen seen) {
    if (last.filter(seen::isOfSameWork).isPresent()) {
      addBeside(seen);
    } else {
      addAfter(seen);
    }
    last = Optional.of(seen);
  }

  /** Legs without a number are taken for those seen before, worst for worst. */
  private void addBeside(LegsSeen seen) {
    List<Verdict> unnamed = new ArrayList<>();
    for (LegsSeen.Leg leg : seen.legs()) {
      if (leg.leg().isPresent()) {
        numbered.merge(leg.leg().getAsInt(), leg.verdict(), Verdict::worse);
      } else {
        unnamed.add(leg.verdict());
      }
    }
    unnamed.sort(Comparator.reverseOrder());
    others.sort(Comparator.reverseOrder());
    for (int i = 0; i < unnamed.size(); i++) {
      if (i < others.size()) {
        others.set(i, others.get(i).worse(unnamed.get(i)));
      } else {
        others.add(unnamed.get(i));
      }
    }
    lastShowsNone &= seen.legs().isEmpty();
  }

  private void addAfter(LegsSeen seen) {
    int known = numbered.size() + others.size();
    if (!seen.legs().isEmpty() && seen.legs().size() >= known) {
      others.clear();
      if (seen.legs().stream().anyMatch(leg -> leg.leg().isEmpty())) {
        numbered.clear();
      }
    }
    for (LegsSeen.Leg leg : seen.legs()) {
      if (leg.leg().isPresent()) {
        numbered.put(leg.leg().getAsInt(), leg.verdict());
      } else {
        others.add(leg.verdict());
      }
    }
    lastShowsNone = seen.legs().isEmpty();
  }

  private LegsSeen seen() {
    List<LegsSeen.Leg> legs = new ArrayList<>();
    numbered.forEach((leg, verdict) -> legs.add(new LegsSeen.Leg(OptionalInt.of(leg), verdict)));
    others.forEach(verdict -> legs.add(new LegsSeen.Leg(OptionalInt.empty(), verdict)));
    if (lastShowsNone && !legs.isEmpty()) {
      legs.add(new LegsSeen.Leg(OptionalInt.empty(), Verdict.UNJUDGED));
    }
    LegsSeen of = last.orElseThrow();
    return new LegsSeen(
        of.photo(), of.sha256(), of.side(), legs, of.port(), of.picture(), of.work());
  }
}
