package leadlight.report.paint;

import java.util.List;

/**
 * A glyph, sizes in ems.
 *
 * @param advance distance to the next glyph
 * @param outlines closed outlines as x0, y0, x1, y1 ...; y points down from the base line
 */
record Glyph(double advance, List<double[]> outlines) {}
