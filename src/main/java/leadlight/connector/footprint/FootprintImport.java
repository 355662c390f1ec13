package leadlight.connector.footprint;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import leadlight.connector.AnchorLegs;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorRow;
import leadlight.connector.Leg;
import leadlight.connector.Mm;
import leadlight.connector.footprint.Footprint.Box;
import leadlight.connector.footprint.Footprint.Kind;
import leadlight.connector.footprint.Footprint.LeftOut;
import leadlight.connector.footprint.Footprint.Pad;
import leadlight.data.Basis;
import leadlight.data.Provenance;
import leadlight.model.UserError;

/**
 * Makes a connector of a footprint. Rows and legs are told by their geometry; leads, signals and
 * what a fault does are not in a footprint and stay open.
 */
public final class FootprintImport {

  /** A row nearer to the body's middle, over half its depth, does not tell its open end. */
  private static final double TELLING = 0.1;

  private final String fileName;
  private final Footprint footprint;
  private final Basis basis;
  private final List<String> remarks = new ArrayList<>();

  private FootprintImport(String fileName, Footprint footprint) {
    this.fileName = fileName;
    this.footprint = footprint;
    this.basis =
        new Basis(
            "footprint " + footprint.name(),
            Optional.empty(),
            Provenance.IMPORTED,
            Optional.empty());
  }

  /**
   * What an import gave.
   *
   * @param connector the connector; {@link leadlight.data.DataFile#write} saves it
   * @param remarks what was guessed or left out, for the user to check
   */
  public record Imported(Connector connector, List<String> remarks) {

    /** Copies the list. */
    public Imported {
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * Imports a footprint.
   *
   * @param file a {@code .kicad_mod} file
   * @param id of the connector; made of the footprint's name if absent
   * @throws UserError if the file is no footprint, or has no row of three or more surface lands
   */
  public static Imported of(Path file, Optional<String> id) {
    id.filter(given -> !Connector.isId(given))
        .ifPresent(
            given -> {
              throw new UserError(Connector.ID_RULE + ", is \"" + given + "\"");
            });
    Footprint footprint = FootprintReader.read(file);
    try {
      return new FootprintImport(file.toString(), footprint)
          .connector(id.orElseGet(() -> idOf(footprint.name())));
    } catch (Mm.NoSuchLength e) {
      throw new UserError(file + ": a size that no connector has; " + e.getMessage());
    }
  }

  private static String idOf(String name) {
    String id = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]+", "-");
    return id.replaceAll("^[.-]+|[.-]+$", "").isEmpty() ? "imported" : id.replaceAll("^[.-]+", "");
  }

  private Imported connector(String id) {
    List<LandRun> runs = RowSearch.rows(footprint.pads());
    if (runs.isEmpty()) {
      throw new UserError(fileName + ": no row of three or more surface lands; " + inventory());
    }
    Box body = body();
    runs = outermostFirst(runs, body);
    Turn turn = new Turn(runs.get(0).awayFrom(body));
    RowBuilder builder = new RowBuilder(basis, remarks);
    List<ConnectorRow> rows = new ArrayList<>();
    for (LandRun run : runs) {
      String rowId = Integer.toString(rows.size() + 1);
      boolean under = hidden(run, runs, body);
      remarkOnSide(rowId, run, body);
      remarkOnHidden(rowId, under);
      rows.add(builder.row(rowId, run, run.awayFrom(body), turn, under));
    }
    double originX = rows.get(0).xMm();
    double originY = rows.get(0).yMm();
    List<Leg> legs = legs(runs, new LegSearch(turn), originX, originY);
    remarkOnLeftOut();
    return new Imported(
        new Connector(
            Connector.SCHEMA,
            id,
            footprint.name(),
            List.of(),
            rows.stream().map(row -> moved(row, originX, originY)).toList(),
            legs.isEmpty() ? Optional.empty() : Optional.of(new AnchorLegs(legs, basis)),
            List.of(),
            List.of()),
        remarks);
  }

  private static List<LandRun> outermostFirst(List<LandRun> runs, Box body) {
    return runs.stream()
        .sorted(
            Comparator.comparing((LandRun run) -> hidden(run, runs, body))
                .thenComparing(FootprintImport::lowestPin, PinOrder.BY_NAME)
                .thenComparing(LandRun.LONGEST_FIRST))
        .toList();
  }

  private static boolean hidden(LandRun run, List<LandRun> runs, Box body) {
    return runs.stream().anyMatch(other -> run.behind(other, body));
  }

  private static ConnectorRow moved(ConnectorRow row, double originX, double originY) {
    return new ConnectorRow(
        row.id(),
        Mm.tidy(row.xMm() - originX),
        Mm.tidy(row.yMm() - originY),
        row.openEnd(),
        row.pin1(),
        row.underBody(),
        row.lands(),
        row.lead(),
        row.basis());
  }

  private static String lowestPin(LandRun run) {
    return run.lands().stream().map(Pad::name).min(PinOrder.BY_NAME).orElseThrow();
  }

  private Box body() {
    if (footprint.body().isPresent()) {
      return footprint.body().get();
    }
    remarks.add("the drawing has no body outline; the side of the body is guessed from the pads");
    return footprint.pads().stream()
        .map(p -> new Box(p.xMm(), p.yMm(), p.xMm(), p.yMm()))
        .reduce(Box::join)
        .orElseThrow();
  }

  private void remarkOnHidden(String id, boolean under) {
    if (under) {
      remarks.add("row " + id + " stands behind another: taken as hidden under the body");
    }
  }

  private void remarkOnSide(String id, LandRun run, Box body) {
    if (run.offCentre(body) < TELLING) {
      remarks.add(
          "row " + id + " runs under the middle of the body: check open_end, it is a guess");
    }
  }

  private List<Leg> legs(List<LandRun> runs, LegSearch search, double originX, double originY) {
    List<Pad> rest = new ArrayList<>(footprint.pads());
    runs.forEach(run -> rest.removeAll(run.lands()));
    List<Pad> legs = rest.stream().filter(pad -> LegSearch.isLeg(pad, runs)).toList();
    remark(rest.size() - legs.size(), "pads that are in no row and no legs left out");
    return legs.stream().map(pad -> search.leg(pad, originX, originY)).toList();
  }

  private void remarkOnLeftOut() {
    LeftOut out = footprint.leftOut();
    remark(out.merged(), "pads that lay on another merged with it");
    remark(out.withoutCopper(), "paste or mask openings without copper left out");
    remark(out.backOnly(), "lands of the back left out");
    remark(out.bareHoles(), "holes without copper left out");
    remark(out.edgeContacts(), "contacts of the card's edge left out");
  }

  private void remark(int count, String what) {
    if (count > 0) {
      remarks.add(count + " " + what);
    }
  }

  private String inventory() {
    long holes = footprint.pads().stream().filter(p -> p.kind() == Kind.PLATED_HOLE).count();
    return "it has "
        + holes
        + " plated holes and "
        + (footprint.pads().size() - holes)
        + " lands on the front";
  }
}
