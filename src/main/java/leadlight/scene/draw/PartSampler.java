package leadlight.scene.draw;

import java.util.List;
import java.util.OptionalInt;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorLibrary;
import leadlight.connector.ConnectorRow;
import leadlight.connector.LeadShape;
import leadlight.model.row.LandSpec;
import leadlight.model.row.RowSpec;
import leadlight.scene.chance.Dice;
import leadlight.scene.plan.PartSpec;

/** Draws rows of leads and lands: made-up even ones, and first rows of known connectors. */
final class PartSampler {

  /** In a mix's choice of connectors: a row of none. */
  static final String NONE = "none";

  private static final double LEAST_AHEAD_MM = 0.15;

  private final SceneMix mix;
  private final Dice dice;

  PartSampler(SceneMix mix, Dice dice) {
    this.mix = mix;
    this.dice = dice;
  }

  PartSpec draw() {
    String id = dice.pick(mix.connector());
    return id.equals(NONE) ? even() : known(id);
  }

  private PartSpec even() {
    int leads = Integer.parseInt(dice.pick(mix.leads()));
    double pitch = Double.parseDouble(dice.pick(mix.pitchMm()));
    double[] places = new double[leads];
    double[] widths = new double[leads];
    double landWidth = pitch * dice.even(0.50, 0.64);
    for (int i = 0; i < leads; i++) {
      places[i] = i * pitch;
      widths[i] = landWidth;
    }
    double foot = Math.min(1.5, pitch * dice.even(1.05, 2.6));
    double ahead = dice.even(0.16, 0.46);
    double leadWidth = Math.min(pitch * dice.even(0.36, 0.52), landWidth * 0.95);
    return new PartSpec(
        null,
        false,
        pitch,
        places,
        widths,
        foot + ahead + dice.even(0.02, 0.25),
        ahead,
        corner(landWidth),
        leadWidth,
        dice.even(0.10, 0.17),
        foot,
        dice.even(0.006, 0.035));
  }

  private double corner(double landWidth) {
    return dice.chance(0.4) ? landWidth * dice.even(0.1, 0.45) : 0.012;
  }

  private PartSpec known(String id) {
    Connector connector = ConnectorLibrary.builtIn().find(id);
    ConnectorRow row = connector.rows().get(0);
    RowSpec spec = connector.rowSpec(0, OptionalInt.empty());
    List<LandSpec> lands = spec.lands();
    boolean right = row.pin1() == ConnectorRow.End.RIGHT;
    int n = lands.size();
    double[] places = new double[n];
    double[] widths = new double[n];
    double narrowest = 9;
    for (int i = 0; i < n; i++) {
      LandSpec land = lands.get(right ? n - 1 - i : i);
      places[i] = right ? lands.get(n - 1).uMm() - land.uMm() : land.uMm();
      widths[i] = land.widthMm().orElseThrow();
      narrowest = Math.min(narrowest, widths[i]);
    }
    double length = lands.get(n / 2).lengthMm().orElseThrow();
    double ahead = ahead(row, length);
    double foot = Math.min(length - ahead, foot(row, spec.pitchMm()));
    return new PartSpec(
        id,
        right,
        spec.pitchMm(),
        places,
        widths,
        length,
        ahead,
        corner(narrowest),
        row.lead().flatMap(l -> box(l.widthMm())).orElse(narrowest * dice.even(0.65, 0.85)),
        row.lead().flatMap(l -> box(l.thicknessMm())).orElse(dice.even(0.10, 0.17)),
        foot,
        dice.even(0.006, 0.035));
  }

  private double ahead(ConnectorRow row, double length) {
    double drawn = Math.max(LEAST_AHEAD_MM, length * dice.even(0.2, 0.34));
    return row.lead().flatMap(l -> box(l.landAheadOfToeMm())).orElse(drawn);
  }

  private double foot(ConnectorRow row, double pitch) {
    double drawn = pitch * dice.even(1.05, 2.4);
    return row.lead().map(PartSampler::visible).filter(mm -> mm > 0).orElse(drawn);
  }

  private static double visible(LeadShape lead) {
    return lead.visibleLengthMm().orElse(lead.footLengthMm().orElse(0));
  }

  private static java.util.Optional<Double> box(java.util.OptionalDouble value) {
    return value.isPresent()
        ? java.util.Optional.of(value.getAsDouble())
        : java.util.Optional.empty();
  }
}
