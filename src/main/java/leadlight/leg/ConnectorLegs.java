package leadlight.leg;

import java.util.ArrayList;
import java.util.List;
import leadlight.connector.AnchorLegs;
import leadlight.connector.Connector;
import leadlight.connector.Leg;
import leadlight.leg.find.LegRequest;
import leadlight.model.UserError;

/** The legs in plated holes that a connector has. */
public final class ConnectorLegs {

  private ConnectorLegs() {}

  /**
   * The legs by their numbers. The connector's own frame has the body above, so the leads below; it
   * is turned half round here.
   *
   * @throws UserError if it has none
   */
  public static List<LegRequest.Leg> of(Connector part) {
    List<Leg> held = part.legs().map(AnchorLegs::numbered).orElse(List.of());
    if (held.isEmpty()) {
      throw new UserError(
          part.id() + " has no legs in plated holes; give --land-size and --hole-size");
    }
    List<LegRequest.Leg> legs = new ArrayList<>();
    for (Leg each : held) {
      legs.add(
          new LegRequest.Leg(
              legs.size() + 1,
              each.xMm(),
              each.yMm(),
              each.land().widthMm(),
              each.land().heightMm(),
              each.opening().orElseThrow().widthMm(),
              each.opening().orElseThrow().heightMm()));
    }
    return legs;
  }
}
