package leadlight.scene.render;

import java.util.Optional;
import leadlight.scene.board.BoardFace;
import leadlight.scene.board.Clutter;
import leadlight.scene.board.Dust;
import leadlight.scene.chance.Grain;
import leadlight.scene.light.Blotches;
import leadlight.scene.light.Hit;
import leadlight.scene.light.Shader;
import leadlight.scene.light.Sight;
import leadlight.scene.plan.Material;
import leadlight.scene.plan.MetalSpec;
import leadlight.scene.solids.BodyBox;
import leadlight.scene.solids.LeadSolid;
import leadlight.scene.solids.LiftFrame;
import leadlight.scene.solids.PickSolid;
import leadlight.scene.solids.RowLayout;
import leadlight.scene.solids.SolderField;

/** Finds what each line of sight meets first: the highest of body, leads, solder and board. */
public final class Tracer implements Sight {

  private final RowLayout row;
  private final SolderField solder;
  private final LeadSolid[] leads;
  private final BodyBox body;
  private final BoardFace board;
  private final Dust dust;
  private final Clutter clutter;
  private final MetalSpec metal;
  private final Blotches blotches;
  private final Optional<PickSolid> pick;
  private final double zone;
  private final Hit raised = new Hit();
  private final Hit over = new Hit();
  private final Hit aside = new Hit();
  private final double[] own = new double[4];

  public Tracer(RowLayout row, SolderField solder, LeadSolid[] leads, BodyBox body) {
    this.row = row;
    this.solder = solder;
    this.leads = leads;
    this.body = body;
    this.board = new BoardFace(row);
    this.dust = new Dust(Optional.of(row), row.spec.dirt(), row.spec.seed() + 60);
    this.clutter = new Clutter(row.spec);
    this.metal = row.spec.metal();
    this.blotches = new Blotches(metal.uneven(), board.bumps(), row.spec.seed() + 110);
    this.pick = PickSolid.of(row.spec);
    this.zone = row.part.pitchMm() * 1.2;
  }

  /** Height of the highest surface at a place. */
  public double heightAt(double u, double v) {
    double h = Math.max(body.heightAt(u, v), dust.heightAt(u, v));
    h = Math.max(h, clutter.heightAt(u, v));
    if (!nearRow(u, v)) {
      return h;
    }
    int i = row.nearest(u);
    for (int k = Math.max(0, i - 1); k <= Math.min(leads.length - 1, i + 1); k++) {
      double lead = row.frame(k) == null ? leads[k].heightAt(u, v) : raisedAt(k, u, v);
      h = lead > h ? lead : h;
    }
    return row.frame(i) == null && isSolder(i, u, v) ? Math.max(h, solder.heightAt(u, v)) : h;
  }

  /** Height of a raised land and what it carries, below 0 beside it. */
  private double raisedAt(int k, double u, double v) {
    over.z = -1;
    meetRaised(k, new double[] {u, v, 0, 0}, over, aside);
    return over.z;
  }

  /** True if a neighbour of the row is within reach. */
  boolean crowded(double u, double v, double reachMm) {
    return clutter.near(u, v, reachMm);
  }

  private boolean nearRow(double u, double v) {
    double end = row.part.landsAtMm()[leads.length - 1];
    return u > -zone && u < end + zone && v < row.part.landAheadMm() + 0.3;
  }

  private boolean isSolder(int i, double u, double v) {
    boolean there = row.wetted(i, u, v) || row.bridgeAt(u, v) != null;
    return there && !solder.underLead(i, u, v) && !dust.pitted(i, u, v);
  }

  @Override
  public void trace(double[] ray, Hit best, Hit spare) {
    best.aloft = false;
    traceBoard(ray, best, spare);
    if (pick.isPresent()) {
      pick.get().meet(ray, best);
    }
  }

  private void traceBoard(double[] ray, Hit best, Hit spare) {
    best.z = -1;
    best.plain = false;
    best.film = 0;
    best.pool = 0;
    if (body.meet(ray, best) && best.z > row.spec.body().exitMm() + 0.05) {
      dust.stain(best);
      board.dust(best);
      return;
    }
    if (nearRow(ray[0], ray[1])) {
      meetLeads(ray, best, spare);
      meetSolder(ray, best, null);
    }
    if (best.z < 0 && !clutter.meet(ray, best)) {
      best.u = ray[0];
      best.v = ray[1];
      best.z = 0;
      board.meet(best);
      best.plain &= !clutter.near(ray[0], ray[1], 0.1);
    }
    dust.meet(ray, best);
    dust.stain(best);
    board.dust(best);
  }

  private void meetLeads(double[] ray, Hit best, Hit spare) {
    int i = row.nearest(ray[0]);
    for (int k = Math.max(0, i - 1); k <= Math.min(leads.length - 1, i + 1); k++) {
      if (row.frame(k) == null) {
        meetLead(k, ray, best, spare);
      } else {
        meetRaised(k, ray, best, spare);
      }
    }
  }

  private void meetLead(int k, double[] ray, Hit best, Hit spare) {
    if (leads[k].meet(ray, spare) && spare.z > best.z) {
      best.take(spare);
      paintLead(k, best);
    }
  }

  /** Lead, solder and land of a raised joint, each in the joint's own frame. */
  private void meetRaised(int k, double[] ray, Hit best, Hit spare) {
    LiftFrame frame = row.frame(k);
    frame.toOwn(ray, own);
    raised.z = -1;
    meetLead(k, own, raised, spare);
    meetSolder(own, raised, frame);
    if (raised.z < 0 && !board.meetFoil(k, own, raised)) {
      return;
    }
    frame.back(raised);
    if (raised.z > best.z) {
      best.take(raised);
    }
  }

  private void paintLead(int k, Hit hit) {
    boolean cut = row.along(k, hit.u, hit.v) > row.part.footLengthMm() - 0.004;
    hit.paint(cut && hit.nz < 0.3 ? Material.COPPER : metal.lead());
    hit.surface = Shader.LEAD;
    board.bump(hit, 0.10 * metal.leadRoughness() + 0.01, 0.012);
    board.bump(hit, 0.02, 0.16);
    double worn =
        1 - 0.10 * (0.5 + 0.5 * Grain.cloud(row.spec.seed() + 40 + k, 4 * hit.u, 5 * hit.v));
    hit.scale(worn, worn, worn);
    blotches.lead(hit, k);
  }

  /** Solder of the joints that lie on the board, or of the one that has a frame of its own. */
  private void meetSolder(double[] ray, Hit best, LiftFrame of) {
    double z = 0;
    for (int k = 0; k < 3; k++) {
      z = Math.max(0, solder.heightAt(ray[0] + ray[2] * z, ray[1] + ray[3] * z));
    }
    double u = ray[0] + ray[2] * z;
    double v = ray[1] + ray[3] * z;
    int i = row.nearest(u);
    if (z < best.z || row.frame(i) != of || !isSolder(i, u, v)) {
      return;
    }
    best.u = u;
    best.v = v;
    best.z = z;
    best.normal(-solder.slopeUAt(u, v), -solder.slopeVAt(u, v), 1);
    best.paint(Material.SOLDER);
    best.surface = Shader.SOLDER;
    board.bump(best, metal.solderGrain() + 0.004, 0.014);
    board.bump(best, 0.5 * metal.solderGrain() + 0.012, 0.06);
    blotches.solder(best, i);
  }
}
