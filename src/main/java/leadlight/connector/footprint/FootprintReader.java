package leadlight.connector.footprint;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlight.connector.footprint.Footprint.Box;
import leadlight.connector.footprint.Footprint.Kind;
import leadlight.connector.footprint.Footprint.LeftOut;
import leadlight.connector.footprint.Footprint.Pad;
import leadlight.connector.footprint.SExpression.Branch;
import leadlight.model.UserError;

/**
 * Reads {@code .kicad_mod} footprints, an openly specified S-expression format ("Footprint file
 * format", dev-docs.kicad.org), both {@code (footprint ..} and the older {@code (module ..}.
 */
final class FootprintReader {

  /** The longest footprint of the Debian package kicad-footprints 6.0.11-1 has about 1 MB. */
  private static final long LARGEST_BYTES = 32L << 20;

  /** Pads whose middles are nearer lie on one another. */
  private static final double STACKED_MM = 0.001;

  private int withoutCopper;
  private int backOnly;
  private int bareHoles;
  private int edgeContacts;
  private int merged;

  private FootprintReader() {}

  /**
   * The footprint in a file.
   *
   * @throws UserError with line and column if the file is none
   */
  static Footprint read(Path file) {
    try {
      if (Files.isDirectory(file) || !Files.exists(file)) {
        throw new UserError(file + " is no file; name a .kicad_mod footprint");
      }
      if (Files.size(file) > LARGEST_BYTES) {
        throw new UserError(file + " is over 32 MB: not a footprint");
      }
      String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
      return new FootprintReader().footprint(SExpressionParser.parse(text));
    } catch (FootprintError e) {
      throw new UserError(file + ", " + e.getMessage());
    } catch (IOException e) {
      throw new UserError(file + " cannot be read; check its permissions");
    }
  }

  private Footprint footprint(Branch root) {
    if (!root.head().equals("footprint") && !root.head().equals("module")) {
      throw new FootprintError(
          root.place(), "\"(footprint\" or \"(module\" is needed, not \"(" + root.head() + "\"");
    }
    List<Pad> pads = new ArrayList<>();
    root.branches("pad").forEach(pad -> take(pad, pads));
    Optional<Box> body = Outline.onLayer(root, "F.Fab").or(() -> Outline.onLayer(root, "F.CrtYd"));
    return new Footprint(
        root.word(1),
        pads,
        body,
        new LeftOut(withoutCopper, backOnly, bareHoles, edgeContacts, merged));
  }

  private void take(Branch branch, List<Pad> pads) {
    PadReader reader = new PadReader(branch);
    switch (reader.type()) {
      case "np_thru_hole" -> bareHoles++;
      case "connect" -> edgeContacts++;
      case "smd" -> surface(reader, pads);
      case "thru_hole" -> add(reader.read(Kind.PLATED_HOLE), pads);
      default ->
          throw new FootprintError(
              branch.place(), "\"" + reader.type() + "\" is no type of pad that is known");
    }
  }

  private void surface(PadReader reader, List<Pad> pads) {
    if (reader.frontCopper()) {
      add(reader.read(Kind.SURFACE), pads);
    } else if (reader.copper()) {
      backOnly++;
    } else {
      withoutCopper++;
    }
  }

  /** Merges a pad with one of its kind and place: the larger copper, the names of both. */
  private void add(Pad pad, List<Pad> pads) {
    for (int i = 0; i < pads.size(); i++) {
      Pad there = pads.get(i);
      if (there.kind() == pad.kind()
          && Math.hypot(there.xMm() - pad.xMm(), there.yMm() - pad.yMm()) < STACKED_MM) {
        pads.set(i, merge(there, pad));
        merged++;
        return;
      }
    }
    pads.add(pad);
  }

  private static Pad merge(Pad first, Pad second) {
    Set<String> names = new LinkedHashSet<>(first.names());
    names.addAll(second.names());
    boolean larger = second.widthMm() * second.heightMm() > first.widthMm() * first.heightMm();
    Pad kept = larger ? second : first;
    return new Pad(
        List.copyOf(names),
        kept.kind(),
        kept.xMm(),
        kept.yMm(),
        kept.widthMm(),
        kept.heightMm(),
        kept.straight(),
        kept.drill());
  }
}
