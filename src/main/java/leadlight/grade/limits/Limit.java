package leadlight.grade.limits;

import leadlight.data.Basis;
import leadlight.model.Unit;

/**
 * A limit worked out for one joint.
 *
 * @param value the limit, in {@code unit}; absolute, never rounded (ASTM E29)
 * @param unit its unit
 * @param bound whether it is a greatest or a least value
 * @param basis clause, source and provenance
 */
public record Limit(double value, Unit unit, Bound bound, Basis basis) {}
