package leadlight.drill;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import leadlight.drill.pool.Level;
import leadlight.drill.pool.PoolJoint;
import leadlight.drill.set.MadeSet;
import leadlight.drill.set.OpenSet;
import leadlight.drill.set.Pools;
import leadlight.drill.set.PracticeSet;
import leadlight.drill.set.PracticeSet.Specimen;
import leadlight.drill.set.PracticeSet.Spot;
import leadlight.drill.set.SetDraw;
import leadlight.drill.set.SetRequest;
import leadlight.drill.sitting.Judging;
import leadlight.drill.sitting.PracticeSets;
import leadlight.drill.sitting.Refused;
import leadlight.drill.skill.DueAgain;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;
import leadlight.record.DrillRecord;
import leadlight.record.Sitting;
import leadlight.text.Messages;

/**
 * A trainee whose skill is known: misses 30 % of the defects and calls 10 % of the sound joints
 * faulty in the first set, a third of both in the last. Two findings are weak (1.8 times the mean
 * miss rate), four are not (0.6 times). One name in twenty is wrong.
 */
final class SimulatedTrainee {

  static final int SETS = 20;
  static final int SPECIMENS = 20;
  static final Set<FindingKind> WEAK = Set.of(FindingKind.OPEN, FindingKind.INSUFFICIENT);

  private static final List<FindingKind> FINDINGS =
      List.of(
          FindingKind.BRIDGE,
          FindingKind.OPEN,
          FindingKind.INSUFFICIENT,
          FindingKind.MISSING_LEAD,
          FindingKind.SIDE_OVERHANG,
          FindingKind.VOID);

  private static final double MISS = 0.3;
  private static final double FALSE_ALARM = 0.1;
  private static final double LEFT_AT_END = 1.0 / 3;
  private static final double WEAK_TIMES = 1.8;
  private static final double OTHER_TIMES = 0.6;
  private static final double WRONG_NAME = 0.05;

  private static final List<PoolJoint> POOL = pool();

  private final Random random;
  private final boolean scheduled;
  private final List<DrillAnswer> answers = new ArrayList<>();
  private final Set<String> seen = new HashSet<>();

  /**
   * Begins without any answer.
   *
   * @param scheduled true if each set is drawn by what was missed before
   */
  SimulatedTrainee(long seed, boolean scheduled) {
    this.random = new Random(seed);
    this.scheduled = scheduled;
  }

  /**
   * One set as it went.
   *
   * @param known mean chance of a miss over its defects
   * @param knownAlarm chance of a false alarm
   * @param weakShare share of the weak findings among its defects
   */
  record Went(List<DrillAnswer> answers, double known, double knownAlarm, double weakShare) {}

  /** A pool large enough that no joint need come twice. */
  private static List<PoolJoint> pool() {
    List<PoolJoint> pool = new ArrayList<>();
    for (int i = 0; i < 600; i++) {
      pool.add(Pools.joint(2 * i + 1, "ring", false, FINDINGS.get(i % FINDINGS.size())));
      pool.add(Pools.joint(2 * i + 2, "ring", false));
    }
    return pool;
  }

  private List<PoolJoint> draw() {
    SetRequest request =
        new SetRequest(
            "set",
            SPECIMENS,
            false,
            Level.MIXED,
            Set.of(),
            Set.of(),
            2,
            random.nextLong(),
            Messages.of("en"));
    return new SetDraw(request, scheduled ? DueAgain.after(answers) : new DueAgain(), seen)
        .joints(POOL);
  }

  private static double left(int set) {
    return 1 - (1 - LEFT_AT_END) * set / (SETS - 1.0);
  }

  private static double missChance(FindingKind finding, int set) {
    return MISS * left(set) * (WEAK.contains(finding) ? WEAK_TIMES : OTHER_TIMES);
  }

  /** Judges a joint: empty for sound, else what it is called. */
  private Optional<FindingKind> judge(PoolJoint joint, int set) {
    if (joint.finding().isEmpty()) {
      boolean alarm = random.nextDouble() < FALSE_ALARM * left(set);
      return alarm ? Optional.of(FindingKind.OPEN) : Optional.empty();
    }
    FindingKind finding = joint.finding().get();
    boolean missed = random.nextDouble() < missChance(finding, set);
    boolean misnamed = random.nextDouble() < WRONG_NAME;
    return missed ? Optional.empty() : Optional.of(misnamed ? FindingKind.EXCESS : finding);
  }

  /** Takes a set (numbered from 0) in memory. */
  Went take(int set) {
    List<PoolJoint> joints = draw();
    List<DrillAnswer> given = new ArrayList<>();
    for (PoolJoint joint : joints) {
      Optional<FindingKind> called = judge(joint, set);
      given.add(answer(given.size() + 1, joint, called));
    }
    return went(set, joints, given);
  }

  private Went went(int set, List<PoolJoint> joints, List<DrillAnswer> given) {
    answers.addAll(given);
    joints.forEach(joint -> seen.add(joint.item()));
    List<FindingKind> faults =
        joints.stream().map(PoolJoint::finding).flatMap(Optional::stream).toList();
    return new Went(
        given,
        faults.stream().mapToDouble(f -> missChance(f, set)).average().orElseThrow(),
        FALSE_ALARM * left(set),
        faults.stream().filter(WEAK::contains).count() / (double) faults.size());
  }

  private static DrillAnswer answer(int specimen, PoolJoint joint, Optional<FindingKind> called) {
    return new DrillAnswer(
        specimen,
        joint.pin(),
        joint.item(),
        called.isEmpty() ? Verdict.ACCEPTABLE : Verdict.DEFECT,
        called,
        Optional.of(joint.known().id()),
        joint.known().findings(),
        Optional.empty(),
        List.of(),
        1500,
        PracticeSets.NOON);
  }

  /** Takes a set as a person does: through a sitting into the record. */
  Went take(int set, DrillRecord record) throws Refused {
    List<PoolJoint> joints = draw();
    OpenSet open = open(set, joints);
    Judging judging =
        new Judging(
            open,
            record,
            "simulated",
            false,
            () -> PracticeSets.NOON.plusDays(set),
            Messages.of("en"));
    for (int specimen = 1; specimen <= joints.size(); specimen++) {
      PoolJoint joint = joints.get(specimen - 1);
      Optional<FindingKind> called = judge(joint, set);
      Verdict said = called.isEmpty() ? Verdict.ACCEPTABLE : Verdict.DEFECT;
      judging.answer(specimen, joint.pin(), said, called, 1500);
      judging.close(specimen);
    }
    return went(set, joints, judging.answers());
  }

  private static OpenSet open(int set, List<PoolJoint> joints) {
    List<Specimen> specimens = new ArrayList<>();
    Map<String, byte[]> pictures = new HashMap<>();
    for (PoolJoint joint : joints) {
      String picture = MadeSet.pictureName(specimens.size() + 1);
      Spot spot =
          new Spot(
              joint.pin(),
              joint.item(),
              500,
              100,
              Optional.of(joint.known()),
              Optional.empty(),
              List.of());
      specimens.add(new Specimen(picture, "", 1000, 1000, List.of(spot)));
      pictures.put(picture, new byte[0]);
    }
    String name = "set " + (set + 1);
    PracticeSet made = new PracticeSet(PracticeSet.FORMAT, name, "simulated", set, 2, specimens);
    String key = "%064x".formatted(set + 1);
    return new OpenSet(made, new Sitting.SetId(key, name, specimens.size(), false), pictures);
  }
}
