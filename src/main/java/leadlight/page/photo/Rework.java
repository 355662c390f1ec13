package leadlight.page.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlight.connector.BridgeHarm;
import leadlight.connector.Connector;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.row.RowSpec;
import leadlight.report.words.Task;

/**
 * What to touch up, in the order of {@link Task#byTool}.
 *
 * @param steps what to do, in order
 * @param settle pins that the photo does not decide
 * @param leave pins to leave alone
 * @param meter neighbour pairs to meter first because a hidden bridge there does most harm
 * @param meterTouched further pairs beside what is touched
 */
record Rework(
    List<Step> steps,
    List<Integer> settle,
    List<Integer> leave,
    List<Pair> meter,
    List<Pair> meterTouched) {

  /** Leads at most this far apart are done in one pass of the iron. */
  private static final int PASS_REACH = 2;

  /**
   * One kind of work.
   *
   * @param task what
   * @param passes pins of each pass, ascending
   * @param pairs for bridges: the pairs, worst first; empty otherwise
   */
  record Step(Task task, List<List<Integer>> passes, List<Pair> pairs) {}

  /**
   * Two neighbours.
   *
   * @param harm what a bridge there does; empty if the connector's file does not say
   */
  record Pair(int pin, int other, Optional<BridgeHarm> harm) {}

  static Rework of(List<GradedJoint> joints, RowSpec row, Optional<Connector> connector) {
    Harm harm = new Harm(row, connector);
    Map<Task, Set<Integer>> work = new TreeMap<>(Task.byTool());
    for (GradedJoint joint : joints) {
      work.computeIfAbsent(Task.of(joint), task -> new TreeSet<>()).add(joint.pin());
    }
    List<Step> steps = new ArrayList<>();
    Set<Integer> touched = new TreeSet<>();
    work.forEach(
        (task, pins) -> {
          if (task.touches()) {
            steps.add(
                new Step(
                    task, passes(pins), task == Task.BRIDGES ? bridges(joints, harm) : List.of()));
            touched.addAll(pins);
          }
        });
    List<Pair> first = harm.all();
    return new Rework(
        steps,
        List.copyOf(work.getOrDefault(Task.SETTLE, Set.of())),
        List.copyOf(work.getOrDefault(Task.LEAVE, Set.of())),
        first,
        beside(touched, row.leads(), first));
  }

  private static List<List<Integer>> passes(Set<Integer> pins) {
    List<List<Integer>> passes = new ArrayList<>();
    int last = Integer.MIN_VALUE;
    for (int pin : pins) {
      if (passes.isEmpty() || pin - last > PASS_REACH) {
        passes.add(new ArrayList<>());
      }
      passes.get(passes.size() - 1).add(pin);
      last = pin;
    }
    return passes;
  }

  private static List<Pair> bridges(List<GradedJoint> joints, Harm harm) {
    Set<Pair> pairs = new LinkedHashSet<>();
    for (GradedJoint joint : joints) {
      for (Finding f : joint.findings()) {
        if (f.kind() == FindingKind.BRIDGE && f.verdict() == Verdict.DEFECT) {
          int other = f.pins().size() > 1 ? f.pins().get(1) : joint.pin();
          pairs.add(harm.pair(Math.min(joint.pin(), other), Math.max(joint.pin(), other)));
        }
      }
    }
    return pairs.stream().sorted(harm.worstFirst()).toList();
  }

  private static List<Pair> beside(Set<Integer> touched, int leads, List<Pair> but) {
    Set<Pair> pairs = new LinkedHashSet<>();
    for (int pin = 1; pin < leads; pin++) {
      int at = pin;
      boolean named = but.stream().anyMatch(p -> p.pin() == at && p.other() == at + 1);
      if (!named && (touched.contains(pin) || touched.contains(pin + 1))) {
        pairs.add(new Pair(pin, pin + 1, Optional.empty()));
      }
    }
    return List.copyOf(pairs);
  }

  /** How much harm a bridge does, by the connector's file. */
  private record Harm(RowSpec row, Optional<Connector> connector) {

    Pair pair(int pin, int other) {
      return new Pair(pin, other, connector.flatMap(c -> c.bridgeHarm(name(pin), name(other))));
    }

    private String name(int pin) {
      return row.lands().get(pin - 1).name();
    }

    /** Pairs of this row that the file names, worst first. */
    List<Pair> all() {
      List<Pair> pairs = new ArrayList<>();
      for (int pin = 1; pin < row.leads(); pin++) {
        Pair pair = pair(pin, pin + 1);
        if (pair.harm().isPresent()) {
          pairs.add(pair);
        }
      }
      pairs.sort(worstFirst());
      return pairs;
    }

    Comparator<Pair> worstFirst() {
      return Comparator.comparingInt(this::rank).thenComparing(Pair::pin);
    }

    private int rank(Pair pair) {
      return connector
          .flatMap(
              c ->
                  c.bridgeHarm(name(pair.pin()), name(pair.other()))
                      .map(harm -> c.bridges().indexOf(harm)))
          .orElse(Integer.MAX_VALUE);
    }
  }
}
