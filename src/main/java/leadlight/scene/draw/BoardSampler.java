package leadlight.scene.draw;

import java.util.ArrayList;
import java.util.List;
import leadlight.scene.chance.Dice;
import leadlight.scene.plan.BoardSpec;
import leadlight.scene.plan.BoardSpec.Neighbour;
import leadlight.scene.plan.BodySpec;
import leadlight.scene.plan.Dirt;
import leadlight.scene.plan.DirtKind;
import leadlight.scene.plan.Material;
import leadlight.scene.plan.MetalSpec;
import leadlight.scene.plan.PartSpec;

/** Draws the board, what stands and lies about on it, and the body behind the leads. */
final class BoardSampler {

  private static final double KEEP_CLEAR_MM = 0.7;
  private static final double APART_MM = 0.6;

  /** Radius of the largest ball that lies free in a gap, share of the gap. */
  private static final double ROOM = 0.42;

  private final SceneMix mix;
  private final Dice dice;
  private final PartSpec part;
  private final double end;

  BoardSampler(SceneMix mix, Dice dice, PartSpec part) {
    this.mix = mix;
    this.dice = dice;
    this.part = part;
    this.end = part.landsAtMm()[part.landsAtMm().length - 1];
  }

  BodySpec body(double tilt) {
    double gap = dice.chance(0.3) ? dice.even(0.45, 0.9) : dice.even(0.22, 0.5);
    double highest = gap / Math.max(0.05, Math.tan(tilt));
    double height = Math.min(highest, dice.even(0.9, 3.2));
    boolean shell = dice.chance(0.3) && height > 1;
    return new BodySpec(
        gap,
        height,
        Math.min(0.8 * height, dice.even(0.30, 0.75)),
        dice.even(0.5, 1.5),
        dice.pick(mix.body()),
        shell ? dice.even(0.5, 1.0) : -1,
        height * dice.even(1.15, 1.4),
        dice.chance(0.5) ? dice.even(0.3, 1) : 0);
  }

  BoardSpec board(BodySpec body) {
    return new BoardSpec(
        dice.pick(mix.mask()),
        dice.pick(mix.finish()),
        dice.even(0.03, 0.07),
        dice.chance(mix.gang()),
        dice.chance(0.8) ? dice.even(0.3, 1) : 0,
        Math.min(0.25, part.pitchMm() * dice.even(0.25, 0.5)),
        dice.chance(mix.pour()),
        dice.chance(mix.paired()) ? dice.even(0.1, 0.5) : 0,
        dice.chance(mix.print()),
        dice.chance(0.8) ? dice.even(0.1, 3) : 0,
        dice.chance(mix.crowd()) ? neighbours(body) : List.of());
  }

  private List<Neighbour> neighbours(BodySpec body) {
    List<Neighbour> out = new ArrayList<>();
    double ahead = part.landAheadMm() + KEEP_CLEAR_MM;
    for (int k = dice.below(4); k > 0; k--) {
      boolean lying = dice.chance(0.5);
      double length = dice.chance(0.5) ? 1.0 : 0.6;
      double u = dice.even(-0.5, end + 0.5);
      chip(out, lying, length, u, ahead + (lying ? 0.5 : 1) * length + dice.even(0, 1.2));
    }
    if (dice.chance(0.3)) {
      double size = dice.even(0.6, 1.0);
      double u = dice.even(0, end);
      double v = ahead + size / 2 + dice.even(0, 0.8);
      place(out, new Neighbour(Neighbour.Kind.TEST_LAND, u, v, size, size, 0.02));
    }
    if (dice.chance(0.5)) {
      double along = dice.even(0.9, 1.5);
      double across = dice.even(1.5, 2.6);
      double off = body.overEndMm() + 0.1 + along / 2 + 0.3;
      double v = dice.even(-1.6, 0) - 0.4;
      double high = dice.even(0.4, 0.9);
      out.add(new Neighbour(Neighbour.Kind.LEG, -off, v, along, across, high));
      out.add(new Neighbour(Neighbour.Kind.LEG, end + off, v, along, across, high));
    }
    return out;
  }

  private static void chip(List<Neighbour> out, boolean lying, double length, double u, double v) {
    double along = lying ? length : length / 2;
    double across = lying ? length / 2 : length;
    place(out, new Neighbour(Neighbour.Kind.CHIP, u, v, along, across, 0.35 * length + 0.1));
  }

  /** What would touch another is left out. */
  private static void place(List<Neighbour> out, Neighbour next) {
    for (Neighbour n : out) {
      double alongRow = (n.alongMm() + next.alongMm()) / 2 + APART_MM;
      double alongLead = (n.acrossMm() + next.acrossMm()) / 2 + APART_MM;
      if (Math.abs(n.uMm() - next.uMm()) < alongRow && Math.abs(n.vMm() - next.vMm()) < alongLead) {
        return;
      }
    }
    out.add(next);
  }

  MetalSpec metal() {
    boolean dull = dice.chance(mix.dull());
    double solder = dull ? dice.even(0.22, 0.38) : dice.even(0.07, 0.18);
    Material lead = dice.pick(mix.lead());
    boolean dipped = lead == Material.SOLDER;
    return new MetalSpec(
        lead,
        dipped ? solder : dice.even(0.12, 0.38),
        dipped ? dice.even(0.2, 0.9) : dice.even(0, 0.35),
        solder,
        dull ? dice.even(0.05, 0.16) : dice.even(0, 0.03),
        dice.even(0.16, 0.34),
        mix.rough().filter(r -> dice.chance(r.uneven())).map(r -> uneven()).orElse(null));
  }

  private MetalSpec.Uneven uneven() {
    return new MetalSpec.Uneven(
        dice.even(0.04, 0.35),
        dice.even(0, 0.8),
        dice.even(0, 0.6),
        dice.even(0, 0.25),
        dice.even(0, 0.7));
  }

  List<Dirt> dirt(BodySpec body) {
    List<Dirt> out = new ArrayList<>();
    double face = -part.footLengthMm() - body.gapMm();
    for (int k = dice.chance(mix.residue()) ? 1 + dice.below(8) : 0; k > 0; k--) {
      double size = dice.even(0.08, 0.4);
      out.add(dirt(DirtKind.RESIDUE, -1, 0.6, size, dice.even(0.15, 1)));
    }
    for (int k = dice.chance(mix.fibre()) ? 1 + dice.below(2) : 0; k > 0; k--) {
      out.add(dirt(DirtKind.FIBRE, -1, 0.9, dice.even(0.3, 1.2), dice.even(0, 0.6)));
    }
    if (dice.chance(mix.ball())) {
      out.add(ball());
    }
    if (dice.chance(mix.scorch())) {
      double size = dice.even(0.3, 0.8);
      out.add(dirt(DirtKind.SCORCH, face, face, size, dice.even(0.4, 1)));
    }
    mix.rough().filter(r -> dice.chance(r.pool())).ifPresent(r -> pools(out));
    return out;
  }

  /** Flux stands on lands and in gaps, from a speck to a film over several joints. */
  private void pools(List<Dirt> out) {
    for (int k = 1 + dice.below(6); k > 0; k--) {
      double size = part.pitchMm() * (dice.chance(0.3) ? dice.even(0.8, 3) : dice.even(0.2, 0.8));
      out.add(
          dirt(
              DirtKind.POOL,
              -part.footLengthMm(),
              part.landAheadMm() + 0.2,
              size,
              dice.even(0.2, 1)));
    }
  }

  /** Ahead of the lands, or in a gap between two of them. */
  private Dirt ball() {
    double size = dice.even(0.03, 0.09);
    if (dice.chance(0.5)) {
      double v = part.landAheadMm() + dice.even(0.05, 0.5);
      return dirt(DirtKind.BALL, v, v, size, 1);
    }
    int gap = dice.below(part.landsAtMm().length - 1);
    double middle = (part.landsAtMm()[gap] + part.landsAtMm()[gap + 1]) / 2;
    double v = dice.even(-part.footLengthMm(), part.landAheadMm());
    return new Dirt(DirtKind.BALL, middle, v, Math.min(size, ROOM * gapMm(gap)), 1);
  }

  private double gapMm(int gap) {
    double apart = part.landsAtMm()[gap + 1] - part.landsAtMm()[gap];
    return apart - (part.landWidthMm()[gap] + part.landWidthMm()[gap + 1]) / 2;
  }

  private Dirt dirt(DirtKind kind, double from, double to, double size, double strength) {
    return new Dirt(kind, dice.even(0, end), dice.even(from, to), size, strength);
  }
}
