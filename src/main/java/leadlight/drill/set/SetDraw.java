package leadlight.drill.set;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import leadlight.drill.pool.PoolJoint;
import leadlight.drill.pool.PoolRow;
import leadlight.drill.skill.DrillRules;
import leadlight.drill.skill.DueAgain;
import leadlight.model.FindingKind;
import leadlight.model.UserError;

/**
 * Draws joints or rows from a pool. Depends on pool, request, schedule and what was seen alone
 * ({@code java.util.Random}, whose numbers the JDK fixes for a seed); the pool's order does not
 * matter.
 */
public final class SetDraw {

  private final SetRequest request;
  private final DueAgain due;
  private final Set<String> seen;
  private final Random random;

  /**
   * Prepares a draw.
   *
   * @param due which findings are to come up more often
   * @param seen joints that come last, because the trainee knows them
   */
  public SetDraw(SetRequest request, DueAgain due, Set<String> seen) {
    this.request = request;
    this.due = due;
    this.seen = Set.copyOf(seen);
    this.random = new Random(request.seed());
  }

  /**
   * So many joints in a random order.
   *
   * @throws UserError if the pool has too few of them
   */
  public List<PoolJoint> joints(List<PoolJoint> pool) {
    List<PoolJoint> usable =
        shuffled(pool.stream().filter(this::lit).filter(request.level()::takes).toList());
    int sound = (int) Math.round(request.specimens() * DrillRules.builtIn().soundShare().value());
    List<PoolJoint> drawn = new ArrayList<>(faulty(usable, request.specimens() - sound));
    List<PoolJoint> fine = usable.stream().filter(j -> j.finding().isEmpty()).toList();
    enough(fine.size(), sound, "sound joints");
    drawn.addAll(fine.subList(0, sound));
    Collections.shuffle(drawn, random);
    return drawn;
  }

  private List<PoolJoint> faulty(List<PoolJoint> usable, int count) {
    Map<FindingKind, List<PoolJoint>> byFinding = new EnumMap<>(FindingKind.class);
    for (PoolJoint joint : usable) {
      joint
          .finding()
          .filter(f -> request.findings().isEmpty() || request.findings().contains(f))
          .ifPresent(f -> byFinding.computeIfAbsent(f, k -> new ArrayList<>()).add(joint));
    }
    List<PoolJoint> drawn = new ArrayList<>();
    while (drawn.size() < count && !byFinding.isEmpty()) {
      FindingKind finding = pick(byFinding.keySet());
      List<PoolJoint> joints = byFinding.get(finding);
      PoolJoint joint = joints.remove(0);
      drawn.add(joint);
      joints.removeIf(other -> sameBridge(joint, other));
      byFinding.values().removeIf(List::isEmpty);
    }
    enough(drawn.size(), count, "faulty joints");
    return drawn;
  }

  /** The other end of a bridge is not asked for again: its answer was told with the first. */
  private static boolean sameBridge(PoolJoint joint, PoolJoint other) {
    return joint.row().equals(other.row())
        && joint.known().bridgeTo().isPresent()
        && joint.known().bridgeTo().getAsInt() == other.pin();
  }

  private FindingKind pick(Set<FindingKind> findings) {
    double left = random.nextDouble() * findings.stream().mapToDouble(due::weight).sum();
    FindingKind last = null;
    for (FindingKind finding : findings) {
      last = finding;
      left -= due.weight(finding);
      if (left < 0) {
        return finding;
      }
    }
    return last;
  }

  /**
   * So many rows, in a random order; those with a joint of the level and findings that are asked.
   *
   * @throws UserError if the pool has too few of them
   */
  List<PoolRow> rows(List<PoolJoint> pool) {
    List<PoolRow> rows =
        shuffled(pool.stream().filter(this::lit).filter(this::asked).toList()).stream()
            .map(PoolJoint::row)
            .distinct()
            .toList();
    enough(rows.size(), request.specimens(), "rows");
    return rows.subList(0, request.specimens());
  }

  private boolean asked(PoolJoint joint) {
    return request.level().takes(joint)
        && (request.findings().isEmpty()
            || joint.finding().filter(request.findings()::contains).isPresent());
  }

  private boolean lit(PoolJoint joint) {
    return request.lamps().isEmpty()
        || joint.row().lamp().filter(request.lamps()::contains).isPresent();
  }

  /** A random order that the pool's own does not change; what was seen goes last. */
  private List<PoolJoint> shuffled(List<PoolJoint> joints) {
    List<PoolJoint> order = new ArrayList<>(joints);
    order.sort(
        Comparator.comparing((PoolJoint j) -> j.row().file()).thenComparingInt(PoolJoint::pin));
    Collections.shuffle(order, random);
    order.sort(Comparator.comparing(j -> seen.contains(j.item())));
    return order;
  }

  private void enough(int there, int wanted, String what) {
    if (there < wanted) {
      throw new UserError(
          "there are %d %s for this set, %d are wanted; ask for fewer, another level, or add"
                  .formatted(there, what, wanted)
              + " pictures");
    }
  }
}
