package leadlight.drill;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import leadlight.drill.Deck.Card;
import leadlight.drill.Deck.Spot;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;
import leadlight.record.DrillRecord;
import leadlight.record.Sitting;

/**
 * A trainee whose skill is known: misses 30 % of the defects and calls 10 % of the sound joints
 * faulty in the first deck, a third of both in the last. Two findings are weak (1.8 times the mean
 * miss rate), four are not (0.6 times). One name in twenty is wrong.
 */
final class SimulatedTrainee {

  static final int DECKS = 20;
  static final int CARDS = 20;
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
   * @param scheduled true if each deck is drawn by what was missed before
   */
  SimulatedTrainee(long seed, boolean scheduled) {
    this.random = new Random(seed);
    this.scheduled = scheduled;
  }

  /**
   * One deck as it went.
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
    DeckRequest request =
        new DeckRequest(
            "deck", CARDS, false, Level.MIXED, Set.of(), Set.of(), 2, random.nextLong());
    return new DeckDraw(request, scheduled ? Boxes.after(answers) : new Boxes(), seen).joints(POOL);
  }

  private static double left(int deck) {
    return 1 - (1 - LEFT_AT_END) * deck / (DECKS - 1.0);
  }

  private static double missChance(FindingKind finding, int deck) {
    return MISS * left(deck) * (WEAK.contains(finding) ? WEAK_TIMES : OTHER_TIMES);
  }

  /** Judges a joint: empty for sound, else what it is called. */
  private Optional<FindingKind> judge(PoolJoint joint, int deck) {
    if (joint.finding().isEmpty()) {
      boolean alarm = random.nextDouble() < FALSE_ALARM * left(deck);
      return alarm ? Optional.of(FindingKind.OPEN) : Optional.empty();
    }
    FindingKind finding = joint.finding().get();
    boolean missed = random.nextDouble() < missChance(finding, deck);
    boolean misnamed = random.nextDouble() < WRONG_NAME;
    return missed ? Optional.empty() : Optional.of(misnamed ? FindingKind.EXCESS : finding);
  }

  /** Takes a deck (numbered from 0) in memory. */
  Went take(int deck) {
    List<PoolJoint> joints = draw();
    List<DrillAnswer> given = new ArrayList<>();
    for (PoolJoint joint : joints) {
      Optional<FindingKind> called = judge(joint, deck);
      given.add(answer(given.size() + 1, joint, called));
    }
    return went(deck, joints, given);
  }

  private Went went(int deck, List<PoolJoint> joints, List<DrillAnswer> given) {
    answers.addAll(given);
    joints.forEach(joint -> seen.add(joint.item()));
    List<FindingKind> faults =
        joints.stream().map(PoolJoint::finding).flatMap(Optional::stream).toList();
    return new Went(
        given,
        faults.stream().mapToDouble(f -> missChance(f, deck)).average().orElseThrow(),
        FALSE_ALARM * left(deck),
        faults.stream().filter(WEAK::contains).count() / (double) faults.size());
  }

  private static DrillAnswer answer(int card, PoolJoint joint, Optional<FindingKind> called) {
    return new DrillAnswer(
        card,
        joint.pin(),
        joint.item(),
        called.isEmpty() ? Verdict.ACCEPTABLE : Verdict.DEFECT,
        called,
        Optional.of(joint.known().id()),
        joint.known().findings(),
        Optional.empty(),
        List.of(),
        1500,
        Decks.NOON);
  }

  /** Takes a deck as a person does: through a sitting into the record. */
  Went take(int deck, DrillRecord record) throws Refused {
    List<PoolJoint> joints = draw();
    OpenDeck open = open(deck, joints);
    Taking taking = new Taking(open, record, "simulated", false, () -> Decks.NOON.plusDays(deck));
    for (int card = 1; card <= joints.size(); card++) {
      PoolJoint joint = joints.get(card - 1);
      Optional<FindingKind> called = judge(joint, deck);
      Verdict said = called.isEmpty() ? Verdict.ACCEPTABLE : Verdict.DEFECT;
      taking.answer(card, joint.pin(), said, called, 1500);
      taking.close(card);
    }
    return went(deck, joints, taking.answers());
  }

  private static OpenDeck open(int deck, List<PoolJoint> joints) {
    List<Card> cards = new ArrayList<>();
    Map<String, byte[]> pictures = new HashMap<>();
    for (PoolJoint joint : joints) {
      String picture = MadeDeck.pictureName(cards.size() + 1);
      Spot spot =
          new Spot(
              joint.pin(),
              joint.item(),
              500,
              100,
              Optional.of(joint.known()),
              Optional.empty(),
              List.of());
      cards.add(new Card(picture, "", 1000, 1000, List.of(spot)));
      pictures.put(picture, new byte[0]);
    }
    String name = "deck " + (deck + 1);
    Deck made = new Deck(Deck.FORMAT, name, "simulated", deck, 2, cards);
    String key = "%064x".formatted(deck + 1);
    return new OpenDeck(made, new Sitting.DeckId(key, name, cards.size(), false), pictures);
  }
}
